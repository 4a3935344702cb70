package yardloom.planting.harvest;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Months;

/** What is picked in each month, at full bearing and in the first years. */
public final class HarvestYearTable implements TableMaker {
  @Override
  public String id() {
    return "harvest-months";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public List<Chart> charts() {
    return List.of(
        Chart.of(
            "harvest",
            "Harvest by month, at full bearing",
            Chart.Kind.RANGES,
            "low",
            "likely",
            "high"));
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(HarvestYear.KEY, HarvestPlan.KEY);
  }

  /** What the garden brings is for those who live with it. */
  @Override
  public Set<? extends SheetUse> uses() {
    return Set.of(SheetPage.CLIENT);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Harvest by month")
            .column(Column.text("month", "Month"))
            .column(Column.text("plants", "What is picked"))
            .column(Column.of("low", "Low", Measure.MASS))
            .column(Column.of("likely", "Likely", Measure.MASS))
            .column(Column.of("high", "High", Measure.MASS));
    HarvestYear.YEARS.forEach(
        y -> table.column(Column.of("year-" + y, "Likely, year " + y, Measure.MASS)));
    Optional<HarvestYear> year = facts.find(HarvestYear.KEY);
    if (year.isEmpty() || year.get().months().stream().allMatch(m -> m.plants().isEmpty())) {
      return table.build();
    }
    for (Month month : Month.values()) {
      table.row(row(month, year.get().months().get(month.getValue() - 1)));
    }
    table.note(
        "Low, likely and high are of full bearing; young plants bear less, and nothing before their"
            + " first year. The last frost moves all seasons; cool-season annuals rest where days"
            + " reach 90 °F (32 °C). Days of picking are recalled for most kinds: expect a harvest"
            + " to come some weeks sooner or later.");
    List<String> sprigs = facts.get(HarvestPlan.KEY).bySprig();
    if (!sprigs.isEmpty()) {
      table.note(
          "Picked by the sprig beside these, not weighed: " + String.join(", ", sprigs) + ".");
    }
    if (!year.get().leftOut().isEmpty()) {
      table.note("Of unknown season: " + String.join(", ", year.get().leftOut()) + ".");
    }
    return table.build();
  }

  private static Cell[] row(Month month, HarvestYear.Month picked) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(Months.name(month)));
    boolean none = picked.plants().isEmpty();
    // Said, or the month would read as the heading of those below it.
    cells.add(Cell.text(none ? "nothing" : String.join(", ", picked.plants())));
    List<Derived<Mass>> all = new ArrayList<>();
    all.add(picked.low());
    all.add(picked.likely());
    all.add(picked.high());
    all.addAll(picked.young());
    all.forEach(mass -> cells.add(none ? Cell.BLANK : Cell.of(mass)));
    return cells.toArray(Cell[]::new);
  }
}
