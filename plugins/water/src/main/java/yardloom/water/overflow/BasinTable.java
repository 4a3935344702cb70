package yardloom.water.overflow;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.overflow.formula.RainGarden;

/** Whether the basins of the plan hold their storms, and how soon they are dry again. */
public final class BasinTable implements TableMaker {
  private static final String ID = "basins";
  private static final Source SINKS = Source.commonPractice("ponded depth over what soil takes");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Basins for roof water")
            .column(Column.text("basin", "Basin"))
            .column(Column.text("roof", "Takes the water of"))
            .column(Column.of("storm", "Storm", Measure.RAIN))
            .column(Column.of("runoff", "Runoff of the storm", Measure.WATER))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.of("depth", "Depth when full", Measure.DEPTH))
            .column(Column.of("holds", "Holds", Measure.WATER))
            .column(Column.of("share", "Of the runoff", Measure.PERCENT))
            .column(Column.of("dry-after", "Sinks in within", Measure.HOURS))
            .column(Column.of("from-building", "From the nearest building", Measure.LENGTH));
    boolean any = false;
    for (Entry<Basin> entry : plan.attributes().all(Basin.KEY)) {
      Optional<Element.Roof> roof = entry.value().roof(plan);
      if (roof.isPresent()) {
        table.row(row(plan, facts, entry, roof.get()));
        any = true;
      }
    }
    if (any) {
      table.note(
          "Runoff by curve number (TR-55), the tank full before the storm: the basin takes all of it."
              + " A level floor, a spillway of stone at the low side that leads away from buildings and"
              + " neighbours, no mulch that floats. Water that stands longer than a day drowns roots;"
              + " from a week on mosquitoes hatch (7 to 12 days from egg to wing).");
    }
    return table.build();
  }

  private static Cell[] row(Plan plan, Facts facts, Entry<Basin> entry, Element.Roof roof) {
    Basin basin = entry.value();
    Derived<Volume> runoff = Storms.roofRunoff(roof, basin.storm(), entry.place(), intake(facts));
    Derived<Volume> holds = holds(entry);
    return new Cell[] {
      Cell.text(basin.name()),
      Cell.text(basin.drains()),
      Cell.of(basin.storm()),
      Cell.of(runoff),
      Cell.of(basin.shape().area()),
      Cell.of(basin.depth()),
      Cell.of(holds),
      Cell.of(
          Derived.by("holds / runoff", SINKS)
              .from("holds", holds)
              .from("runoff", runoff)
              .gives(holds.value().ratioTo(runoff.value()))),
      intake(facts).map(i -> Cell.of(dryAfter(entry, i))).orElse(Cell.BLANK),
      basin.fromBuilding(plan).map(Cell::of).orElse(Cell.BLANK)
    };
  }

  static Optional<Derived<Length>> intake(Facts facts) {
    return facts.find(YardFacts.SOIL).flatMap(SoilProfile::intakePerHour);
  }

  static Derived<Volume> holds(Entry<Basin> entry) {
    Basin basin = entry.value();
    return Derived.by("area × depth", SINKS)
        .from("area", basin.shape().area(), entry.place())
        .from("depth", basin.depth(), entry.place())
        .gives(basin.shape().area().deep(basin.depth()));
  }

  static Derived<TimeSpan> dryAfter(Entry<Basin> entry, Derived<Length> intake) {
    return Derived.by("hours = depth / soil takes in an hour", SINKS)
        .from("depth", entry.value().depth(), entry.place())
        .from("soil takes in an hour", intake)
        .gives(RainGarden.drawdown(entry.value().depth(), intake.value()));
  }
}
