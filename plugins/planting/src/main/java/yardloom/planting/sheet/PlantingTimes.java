package yardloom.planting.sheet;

import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import yardloom.facts.FrostDates;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.calc.PlantingTime;
import yardloom.planting.model.Plant;
import yardloom.planting.work.Layout;

/** When to set out each kind, by the usual frost dates. */
public final class PlantingTimes implements TableMaker {
  @Override
  public String id() {
    return "planting-times";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.FROST, Layout.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "When to plant")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("from", "Spring, from"))
            .column(Column.text("until", "Fall, until"));
    Optional<FrostDates> frost = facts.find(YardFacts.FROST);
    SortedMap<String, Plant> kinds = facts.get(Layout.KEY).toPlant();
    if (frost.isEmpty() || kinds.isEmpty()) {
      return table.build();
    }
    kinds.values().forEach(p -> row(table, p, frost.get()));
    table.note(
        "By usual frost from "
            + TableFormat.day(frost.get().firstOfFall().value())
            + " to "
            + TableFormat.day(frost.get().lastOfSpring().value())
            + " ("
            + frost.get().lastOfSpring().source().cite()
            + "): half of the years have frost outside these days. Rule: "
            + PlantingTime.SOURCE.cite()
            + ".");
    return table.build();
  }

  private static void row(Table.Builder table, Plant plant, FrostDates frost) {
    PlantingTime.Times times =
        PlantingTime.of(plant.season(), frost.lastOfSpring().value(), frost.firstOfFall().value());
    Derived.Builder why =
        Derived.by("days before or after usual frost", PlantingTime.SOURCE)
            .from("last frost of spring", frost.lastOfSpring())
            .from("first frost of fall", frost.firstOfFall());
    table.row(
        Cell.text(plant.name()),
        Cell.of(why.gives(TableFormat.day(times.springFrom()))),
        times.fallUntil().map(d -> Cell.of(why.gives(TableFormat.day(d)))).orElse(Cell.BLANK));
  }
}
