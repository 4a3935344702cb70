package yardloom.work.cost;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Money;

/** The inputs that make the total uncertain. */
public final class DriverTable implements TableMaker {
  private static final int MOST = 8;

  @Override
  public String id() {
    return "materials-cost-drivers";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CostEstimate.FACT);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), CostTable.title("What drives the cost range", facts))
            .column(Column.text("item", "Item"))
            .column(Column.text("cause", "Cause"))
            .column(Column.of("low", "Total if low", Measure.MONEY))
            .column(Column.of("high", "Total if high", Measure.MONEY))
            .column(Column.of("swing", "Swing", Measure.MONEY));
    facts
        .find(CostEstimate.FACT)
        .ifPresent(
            cost -> {
              Money likely = cost.total().likely().value();
              table.row(
                  Cell.text("everything likely"),
                  Cell.BLANK,
                  Cell.of(likely),
                  Cell.of(likely),
                  Cell.of(Money.amount(0)));
              cost.drivers().stream()
                  .limit(MOST)
                  .forEach(
                      d ->
                          table.row(
                              Cell.text(d.name()),
                              Cell.text(d.cause()),
                              Cell.of(d.low()),
                              Cell.of(d.high()),
                              Cell.of(d.swing())));
            });
    return table
        .note(
            "Each alone at its low and high value, all others likely, from the same run as the cost"
                + " range.")
        .build();
  }
}
