package yardloom.water.tank;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Months;

/** Which months each tank of the plan waters, and when the tap takes over. */
public final class TankYearTable implements TableMaker {
  private static final Source STEPS =
      Source.memory(
          "Yield after and before spillage (Jenkins et al. 1978)",
          "via Fewkes and Butler",
          2000,
          "");

  @Override
  public String id() {
    return "tank-year";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(TankYear.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Tank and tap through the year")
            .column(Column.text("month", "Month"))
            .column(Column.of("need", "Asked of the tank", Measure.WATER))
            .column(Column.of("given", "It gives, mean year", Measure.WATER))
            .column(Column.of("dry", "Share, dry year", Measure.PERCENT))
            .column(Column.of("usual", "usual year", Measure.PERCENT))
            .column(Column.of("water", "Water stands, usual year", Measure.DEPTH))
            .column(Column.text("feed", "Water from, usual year"));
    List<TankYear> years = facts.all(TankYear.KEY);
    for (TankYear year : years) {
      if (years.size() > 1) {
        table.heading(year.tank().name());
      }
      for (int m = 0; m < 12; m++) {
        if (year.months().get(m).need().litres() > 0) {
          row(table, year, m);
        }
      }
    }
    years.forEach(year -> table.note(note(year)));
    if (!years.isEmpty()) {
      table.note(
          "By the same days as the table of tank sizes. What the tank lacks the tap gives. Water"
              + " stands: on the mean day of the month, before the tap adds to it.");
    }
    return table.build();
  }

  private static void row(Table.Builder table, TankYear year, int m) {
    TankYear.Month month = year.months().get(m);
    boolean isRange = year.seasons() > 1;
    table.row(
        Cell.text(Months.name(m)),
        Cell.of(why(year).gives(month.need())),
        Cell.of(why(year).gives(month.given())),
        isRange ? Cell.of(why(year).gives(month.dry())) : Cell.BLANK,
        Cell.of(why(year).gives(month.usual())),
        Cell.of(why(year).gives(month.water())),
        Cell.text(year.source(m)));
  }

  private static Derived.Builder why(TankYear year) {
    return Derived.by("steps of the tank, day by day through all years", STEPS)
        .from("tank", year.tank().size());
  }

  /** When to change over, in words; also for the page beside the timer. */
  public static String note(TankYear year) {
    String name = year.tank().name();
    if (year.toTap().isEmpty()) {
      return year.early()
          .map(
              day ->
                  String.format(
                      Locale.ROOT,
                      "%s: in a usual year it never falls short; in the driest of ten it does from"
                          + " about %s on.",
                      name,
                      TableFormat.day(day)))
          .orElse(name + ": it never falls short.");
    }
    String to = TableFormat.day(year.toTap().get());
    String back = year.back().map(TableFormat::day).orElse(to);
    String early =
        year.seasons() < 10
            ? ""
            : year.early()
                .map(d -> ", in one year of ten by " + TableFormat.day(d) + " already")
                .orElse("");
    return String.format(
        Locale.ROOT,
        "%s: in a usual year it first falls short about %s%s; from then on the tap helps whenever it"
            + " is empty, until about %s. Go by the water in it, not by the date.",
        name,
        to,
        early,
        back);
  }
}
