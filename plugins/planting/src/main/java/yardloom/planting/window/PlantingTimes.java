package yardloom.planting.window;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.FrostDates;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.window.formula.PlantingTime;

/** When to set out each kind, by the usual frost dates. */
public final class PlantingTimes implements TableMaker {
  @Override
  public String id() {
    return "planting-times";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.FROST, YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "When to plant")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("from", "Spring, from"))
            .column(Column.text("until", "Fall, until"));
    Optional<FrostDates> frost = facts.find(YardFacts.FROST);
    List<PlantingWindow> windows = facts.all(YardFacts.PLANTING_WINDOWS);
    if (frost.isEmpty() || windows.isEmpty()) {
      return table.build();
    }
    for (PlantingWindow w : windows) {
      table.row(
          Cell.text(w.plant()),
          Cell.of(w.springFrom().map(TableFormat::day)),
          w.fallUntil().map(d -> Cell.of(d.map(TableFormat::day))).orElse(Cell.BLANK));
    }
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
}
