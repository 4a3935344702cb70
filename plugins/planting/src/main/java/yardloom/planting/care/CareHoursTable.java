package yardloom.planting.care;

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
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.planting.care.formula.MonthShares;

/** How many hours care takes in each month of the first three seasons, and once grown. */
public final class CareHoursTable implements TableMaker {
  private static final Source EVEN =
      Source.commonPractice("hours of an act spread evenly over its days");

  private static final String COUNTED =
      "Season 1 begins with the first planting, its winter included. Without planting and picking.";

  /** An act that takes hours, and what of them falls into each month. */
  private record Spread(CareAct act, double[] shares) {}

  @Override
  public String id() {
    return "care-hours";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CareAct.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.IF_ROOM;
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.CLIENT);
  }

  @Override
  public Table forSheet(Plan plan, Facts facts, Table made) {
    List<String> notes = made.isEmpty() ? List.of() : List.of(COUNTED);
    return new Table(made.id(), made.title(), made.columns(), made.rows(), notes, made.totals());
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Hours of upkeep")
            .column(Column.text("month", "Month"))
            .column(Column.of("season-1", "Season 1", Measure.HOURS))
            .column(Column.of("season-2", "Season 2", Measure.HOURS))
            .column(Column.of("season-3", "Season 3", Measure.HOURS))
            .column(Column.of("grown", "Grown", Measure.HOURS));
    List<Spread> acts =
        facts.all(CareAct.KEY).stream()
            .filter(a -> a.hours().isPresent())
            .map(a -> new Spread(a, MonthShares.of(a.when().from(), a.when().until())))
            .toList();
    if (acts.isEmpty()) {
      return table.build();
    }
    List<Cell> all = new ArrayList<>(List.of(Cell.text("Year")));
    for (int month = 1; month <= 12; month++) {
      List<Cell> row = new ArrayList<>();
      row.add(Cell.text(Months.fullName(Month.of(month))));
      for (int season = 1; season <= CareAct.GROWN; season++) {
        row.add(Cell.of(sum(acts, season, month)));
      }
      table.row(row);
    }
    for (int season = 1; season <= CareAct.GROWN; season++) {
      all.add(Cell.of(sum(acts, season, 0)));
    }
    return table
        .total(all.toArray(Cell[]::new))
        .note(
            COUNTED
                + " What comes every few seasons counts with its mean once grown. Minutes for"
                + " each plant and area are mostly common practice: write down your own.")
        .build();
  }

  /** The hours of a month, or of the year if it is 0. */
  private static Derived<TimeSpan> sum(List<Spread> acts, int season, int month) {
    Derived.Builder why = Derived.by("sum over acts", EVEN);
    double hours = 0;
    for (Spread spread : acts) {
      CareAct act = spread.act();
      if (act.when().season() == season) {
        double share = month == 0 ? 1 : spread.shares()[month - 1];
        double part = act.hours().get().value().hours() * share;
        part = season == CareAct.GROWN ? part / act.when().every() : part;
        if (part > 0) {
          why.from(act.task().what() + " from " + act.when().from(), TimeSpan.hours(part));
          hours += part;
        }
      }
    }
    return why.gives(TimeSpan.hours(hours));
  }
}
