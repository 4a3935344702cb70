package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.Stand;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.drip.DripRun;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.soilwater.RootDepths;

/**
 * Days that a rain waters each zone, by month; the whole days stand on {@link TimerPageTable}, this
 * says how they come about.
 */
public final class RainOffTable implements TableMaker {
  @Override
  public String id() {
    return "rain-off";
  }

  @Override
  public Set<FactKey<?>> reads() {
    Set<FactKey<?>> reads = new LinkedHashSet<>(RainOff.READS);
    reads.add(ZoneTimes.KEY);
    return reads;
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    TreeSet<Integer> months = new TreeSet<>();
    List<ZoneTimes> zones = facts.all(ZoneTimes.KEY);
    zones.forEach(z -> z.months().forEach(m -> months.add(m.month())));
    Table.Builder table =
        Table.titled(id(), "Days that rain waters a zone")
            .column(Column.of("zone", "Zone", Measure.COUNT))
            .column(Column.text("rain", "Rain"));
    months.forEach(m -> table.column(Column.of("m" + (m + 1), Months.name(m), Measure.DAYS)));
    boolean any = false;
    for (ZoneTimes zone : zones) {
      for (Length rain : RainOff.rains(plan)) {
        List<Optional<Derived<TimeSpan>>> days =
            months.stream().map(m -> RainOff.of(zone.zone(), m, rain, facts)).toList();
        if (days.stream().anyMatch(Optional::isPresent)) {
          any = true;
          List<Cell> cells = new ArrayList<>();
          cells.add(Cell.number(zone.zone()));
          cells.add(Cell.text(RainOff.words(plan, rain)));
          days.forEach(d -> cells.add(d.map(Cell::of).orElse(Cell.BLANK)));
          table.row(cells);
        }
      }
    }
    if (any) {
      table.note(
          "The part of a rain that is of use, by "
              + facts.get(MonthlyWeather.KEY).rainBy().title()
              + " as of the whole month, but no more than the roots draw easily from what the soil"
              + " holds, over what the plants use in a day; by the plant that has used it first. It"
              + " is for rain beyond the usual, which the timetable leaves out already.");
      List<Stand> plants =
          facts.all(DripRun.KEY).stream().flatMap(run -> run.plants(facts).stream()).toList();
      RootDepths.note(plan, plants).ifPresent(table::note);
    }
    return table.build();
  }
}
