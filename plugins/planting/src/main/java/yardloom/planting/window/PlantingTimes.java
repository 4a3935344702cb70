package yardloom.planting.window;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.FrostDates;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;

/** When each kind may be planted, and as what, by the usual frost dates. */
public final class PlantingTimes implements TableMaker {
  @Override
  public String id() {
    return "planting-times";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
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
            .column(Column.text("how", "As"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"));
    Optional<FrostDates> frost = facts.find(YardFacts.FROST);
    List<PlantingWindow> windows = facts.all(YardFacts.PLANTING_WINDOWS);
    if (frost.isEmpty() || windows.isEmpty()) {
      return table.build();
    }
    Set<String> sources = new TreeSet<>();
    for (PlantingWindow w : windows) {
      for (PlantingWindow.Period p : w.periods()) {
        table.row(Cell.text(w.plant()), Cell.text(p.how()), Cell.of(p.from()), Cell.of(p.until()));
        sources.add(p.from().source().cite());
      }
    }
    table.note(
        "By usual frost from "
            + TableFormat.day(frost.get().firstOfFall().value())
            + " to "
            + TableFormat.day(frost.get().lastOfSpring().value())
            + " ("
            + frost.get().lastOfSpring().source().cite()
            + "): half of the years have frost outside these days. Rules: "
            + String.join("; ", sources)
            + ".");
    return table.build();
  }
}
