package yardloom.sun.bed;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;

/** Direct sun of each bed by month, over the season, and its class. */
public final class SunTable implements TableMaker {
  private static final Source SPA =
      Source.computed(
          "Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302",
          "I. Reda, A. Andreas",
          2008,
          "");

  private static final String[] MONTHS =
      Stream.of(Month.values()).map(SunTable::column).toArray(String[]::new);

  private static String column(Month month) {
    return name(month).toLowerCase(Locale.ROOT);
  }

  private static String name(Month month) {
    return Months.name(month);
  }

  @Override
  public String id() {
    return "sun-hours";
  }

  @Override
  public List<Chart> charts() {
    return List.of(Chart.of("sun", "Direct sun a day by month", Chart.Kind.GRID, MONTHS));
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(BedSuns.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table = Table.titled(id(), "Direct sun in hours a day");
    table.column(Column.text("place", "Place"));
    for (Month month : Month.values()) {
      table.column(Column.of(column(month), name(month), Measure.HOURS));
    }
    table.column(Column.of("season", "Season", Measure.HOURS));
    table.column(Column.of("morning", "Before noon", Measure.HOURS));
    table.column(Column.text("class", "Light"));
    Optional<BedSuns> found = facts.find(BedSuns.KEY);
    if (found.isEmpty() || found.get().beds().isEmpty()) {
      return table.build();
    }
    BedSuns suns = found.get();
    suns.beds().forEach(bed -> table.row(row(bed, suns)));
    table.total(row(suns.open(), suns).toArray(new Cell[0]));
    table.note(suns.method());
    table.note("Months: the mean day of each month. Season: " + suns.seasonText() + ".");
    table.note(
        "Light classes ("
            + suns.scheme().name()
            + "), by the season's mean: "
            + suns.scheme().text()
            + ". Source: "
            + suns.scheme().source().cite()
            + ".");
    return table.build();
  }

  private static List<Cell> row(BedSun bed, BedSuns suns) {
    List<Cell> row = new ArrayList<>();
    String place = bed.bed().map(ElementId::toString).orElse("open level ground");
    row.add(Cell.text(place));
    // A bed's hours are the mean over its cells, a tree's and the open ground's those of one place.
    boolean isOnePlace = bed.bed().map(id -> id.kind() != ElementKind.BED).orElse(true);
    for (int m = 0; m < 12; m++) {
      String when = "mean day of " + Months.fullName(Month.of(m + 1));
      double hours = bed.monthHours().get(m);
      row.add(
          isOnePlace
              ? Spells.cell(hours, bed.middle().get(m).spells(), place, when)
              : hours(hours, place, when));
    }
    row.add(hours(bed.seasonHours(), place, "mean of " + suns.seasonText()));
    row.add(hours(bed.morningHours(), place, "before solar noon, mean of " + suns.seasonText()));
    row.add(Cell.text(bed.lightClass().name()));
    return row;
  }

  private static Cell hours(double hours, String place, String days) {
    return Cell.of(
        Derived.by("time with the sun's centre above all obstacles, mean over the cells", SPA)
            .from("place", place)
            .from("days", days)
            .gives(TimeSpan.hours(hours)));
  }
}
