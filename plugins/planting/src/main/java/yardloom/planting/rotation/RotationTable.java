package yardloom.planting.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** The annuals of each plot, year by year. */
public final class RotationTable implements TableMaker {
  @Override
  public String id() {
    return "rotation";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(RotationPlan.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Rotation of the annuals").column(Column.text("plot", "Plot"));
    Optional<RotationPlan> found = facts.find(RotationPlan.KEY);
    int years = found.map(RotationPlan::years).orElse(1);
    for (int year = 1; year <= years; year++) {
      table.column(Column.text("year-" + year, "Year " + year));
    }
    List<String> early = new ArrayList<>();
    for (RotationPlan.Plot plot : found.map(RotationPlan::plots).orElse(List.of())) {
      List<Cell> cells = new ArrayList<>();
      cells.add(Cell.text(plot.name()));
      plot.kinds().forEach(kind -> cells.add(Cell.text(kind)));
      table.row(cells.toArray(Cell[]::new));
      plot.early().forEach(year -> early.add(plot.name() + " in year " + year));
    }
    if (found.isPresent() && !found.get().plots().isEmpty()) {
      table.note(
          "A family stays away from its plot for two years (Cornell Cooperative Extension, 2021);"
              + " perennials stay where they are. Spacing follows the kind, not the plot.");
      if (!early.isEmpty()) {
        table.note(
            "A family is back too soon on "
                + String.join(", ", early)
                + ": it has too much of the ground. Grow another family there, or a cover crop.");
      }
    }
    return table.build();
  }
}
