package yardloom.work.cost;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.AddingUp;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;

/** Cost of every priced line. */
public final class CostTable implements TableMaker {
  /** Printed beside invented prices. */
  static final String DEMO =
      "Demonstration prices: invented, they say nothing about yours. Put your own into the"
          + " plan.";

  private static final String SKEWED =
      "The total with everything likely lies outside P10 to P90: prices and pace can rise further"
          + " than they can fall, and seldom is all of it likely at once.";

  @Override
  public String id() {
    return "materials-cost";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public List<Chart> charts() {
    return List.of(
        Chart.of("cost", "Cost range", Chart.Kind.RANGES, "p10", "p50", "p90").withTotals());
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
    Optional<CostEstimate> found = facts.find(CostEstimate.FACT);
    Table.Builder table =
        Table.titled(id(), title("Cost range", facts))
            .column(Column.text("item", "Item"))
            .column(Column.of("likely", "All likely", Measure.MONEY))
            .column(Column.of("p10", "Low (P10)", Measure.MONEY))
            .column(Column.of("p50", "Middle (P50)", Measure.MONEY))
            .column(Column.of("p90", "High (P90)", Measure.MONEY));
    if (found.isEmpty()) {
      return table.build();
    }
    CostEstimate cost = found.get();
    List<Cell> likely =
        AddingUp.money(
            cost.rows().stream().map(CostEstimate.Row::likely).toList(),
            cost.total().likely().value());
    for (int i = 0; i < likely.size(); i++) {
      table.row(cells(cost.rows().get(i), likely.get(i)));
    }
    table.total(cells(cost.total(), Cell.of(cost.total().likely())));
    if (cost.demo()) {
      table.note(DEMO);
    }
    if (!cost.total().likelyLiesBetween()) {
      table.note(SKEWED);
    }
    plan.attributes().get(LabourRate.KEY).ifPresent(r -> table.note(labour(plan, r)));
    if (!cost.unpriced().isEmpty()) {
      table.note("Not priced: " + String.join(", ", cost.unpriced()) + ".");
    }
    return table
        .note(
            "All likely: every amount, price and pace at its likely value; these rows add up. One"
                + " in ten cases lies below P10, one in ten above P90; those do not add up, because"
                + " not everything goes wrong at once.")
        .note("Without taxes, permits, disposal and hired machines.")
        .build();
  }

  private static Cell[] cells(CostEstimate.Row row, Cell likely) {
    return new Cell[] {
      Cell.text(row.item()), likely, Cell.of(row.p10()), Cell.of(row.p50()), Cell.of(row.p90())
    };
  }

  /** A title that names invented prices. */
  public static String title(String title, Facts facts) {
    return CostEstimate.atDemonstrationPrices(facts) ? title + ", demonstration prices" : title;
  }

  private static String labour(Plan plan, LabourRate rate) {
    TableFormat format = TableFormat.of(plan.info());
    return "An hour of labour is billed at wage "
        + format.withUnit(Measure.MONEY, rate.wage())
        + " plus "
        + Say.percent(rate.overhead())
        + " overhead, "
        + Say.percent(rate.markup())
        + " markup on both.";
  }
}
