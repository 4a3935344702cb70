package yardloom.water.timetable;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.timetable.formula.TimerProgram;

/**
 * When and how long one zone runs through the year.
 *
 * @param zone its number
 * @param months in which it runs, in their order
 */
public record ZoneTimes(int zone, List<Month> months) {
  /** The timetable by zone. */
  public static final FactKey<ZoneTimes> KEY =
      FactKey.many("water.timetable", ZoneTimes.class).called("watering times");

  /**
   * One month.
   *
   * @param month 0 (January) to 11
   * @param thirstiest the bed or tree that asks for most
   * @param need run time that it asks for in the month
   * @param soak wait after each turn but the last
   * @param start of the first turn, by the clock; empty where sunrise is not known
   */
  public record Month(
      int month,
      ElementId thirstiest,
      Derived<TimeSpan> need,
      TimerProgram program,
      TimeSpan soak,
      Optional<LocalTime> start) {
    /** A week's share of the need, for who opens the valve by hand. */
    public int minutesAWeek() {
      return (int) Math.round(need.value().minutes() * 7 / Months.days(month));
    }
  }

  public ZoneTimes {
    months = List.copyOf(months);
  }
}
