package yardloom.soil.texture;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Choices;
import yardloom.soil.texture.formula.ProfileWater;

/** Texture and water of the soil. */
public final class SoilTable implements TableMaker {
  @Override
  public String id() {
    return "materials-soil";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL, SoilGiven.FACT);
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
    Optional<SoilGiven> given = facts.find(SoilGiven.FACT);
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
            "Tables and formulas give the mean of many soils; yours may hold a third more or less."
                + " Intake is what the wet soil goes on taking in, for design: "
                + soil.intakePerHour().map(i -> i.source().cite()).orElse("not known")
                + ".")
        .build();
  }
}
