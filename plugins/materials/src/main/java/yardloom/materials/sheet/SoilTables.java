package yardloom.materials.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.LocalRule;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Choices;
import yardloom.materials.calc.ProfileWater;
import yardloom.materials.model.AmendmentDose;
import yardloom.materials.model.SoilGiven;
import yardloom.materials.work.MaterialFacts;

/** Tables of soil, amendments and local rules. */
public final class SoilTables {
  private SoilTables() {}

  /** All of them. */
  public static List<TableMaker> all() {
    return List.of(new Soil(), new Amendments(), new Rules());
  }

  /** Texture and water of the soil. */
  private static final class Soil implements TableMaker {
    @Override
    public String id() {
      return "materials-soil";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(YardFacts.SOIL, MaterialFacts.GIVEN_SOIL);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Soil")
              .column(Column.text("texture", "Texture"))
              .column(Column.of("sand", "Sand", Measure.PERCENT))
              .column(Column.of("clay", "Clay", Measure.PERCENT))
              .column(Column.of("available", "Available water", Measure.PERCENT))
              .column(Column.of("depth", "Root depth", Measure.DEPTH))
              .column(Column.of("stored", "Stored water", Measure.RAIN))
              .column(Column.text("class", "Storage"))
              .column(Column.of("intake", "Intake per hour", Measure.RAIN))
              .column(Column.text("intake-class", "Intake"));
      Optional<SoilProfile> found = facts.find(YardFacts.SOIL);
      Optional<SoilGiven> given = facts.find(MaterialFacts.GIVEN_SOIL);
      if (found.isEmpty() || given.isEmpty()) {
        return table.build();
      }
      SoilProfile soil = found.get();
      return table
          .row(
              Cell.text(soil.texture()),
              Cell.number(given.get().sand() / 100),
              Cell.number(given.get().clay() / 100),
              Cell.of(soil.available()),
              Cell.of(soil.depth()),
              Cell.of(soil.stored()),
              Cell.text(Choices.text(ProfileWater.storageClass(soil.stored().value()))),
              soil.intakePerHour().map(Cell::of).orElse(Cell.BLANK),
              soil.intakePerHour()
                  .map(i -> ProfileWater.intakeClass(i.value().millimetres()))
                  .map(c -> Cell.text(Choices.text(c)))
                  .orElse(Cell.BLANK))
          .note("Sand and clay: " + given.get().how().cite() + ".")
          .note(
              "Tables and formulas give the mean of many soils; yours may hold a third more or less.")
          .build();
    }
  }

  /** What to spread on the beds. */
  private static final class Amendments implements TableMaker {
    @Override
    public String id() {
      return "materials-amendments";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.AMENDMENTS);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Amendments")
              .column(Column.text("item", "Item"))
              .column(Column.text("amount", "Amount"))
              .column(Column.text("when", "When"));
      for (AmendmentDose dose : facts.all(MaterialFacts.AMENDMENTS)) {
        table.row(
            Cell.text(dose.item()), Amounts.cell(plan, dose.amount()), Cell.text(dose.when()));
      }
      return table
          .note("Starting points for the beds together; a laboratory's advice goes before them.")
          .build();
    }
  }

  /** What to check where the yard lies. */
  private static final class Rules implements TableMaker {
    @Override
    public String id() {
      return "materials-local-rules";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(YardFacts.LOCAL_RULES, YardFacts.REGION, YardFacts.SURFACES);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Local rules to check")
              .column(Column.text("topic", "Topic"))
              .column(Column.text("rule", "Rule"))
              .column(Column.text("where", "Holds in"))
              .column(Column.text("source", "Source"));
      if (facts.all(YardFacts.SURFACES).isEmpty()) {
        return table.build();
      }
      for (LocalRule rule : facts.all(YardFacts.LOCAL_RULES)) {
        table.row(
            Cell.text(rule.topic()),
            Cell.text(rule.text()),
            Cell.text(rule.region()),
            Cell.text(rule.source().cite()));
      }
      facts
          .find(YardFacts.REGION)
          .ifPresent(r -> table.note("Region: " + r.name() + ". " + r.about()));
      return table.note("Codes differ by town; ask before you build.").build();
    }
  }
}
