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
   * @param limits what holds days apart and turns
   */
  public record Month(
      int month,
      ElementId thirstiest,
      Derived<TimeSpan> need,
      TimerProgram program,
      TimeSpan soak,
      Optional<LocalTime> start,
      KeyLimits limits) {
    private static final double WEEK_DAYS = 7;

    /** A week's share of the need, for who opens the valve by hand. */
    Derived<Integer> minutesAWeek() {
      return ofNeed("whole minutes of run time needed × 7 / days of the month")
          .gives((int) Math.round(need.value().minutes() * WEEK_DAYS / Months.days(month)));
    }

    private Derived.Builder ofNeed(String formula) {
      return Derived.by(formula, KeyLimits.SET)
          .from("run time needed", need)
          .from("days of the month", Months.days(month));
    }

    /** Days from one watering to the next. */
    Derived<Integer> everyDays() {
      Derived.Builder why =
          ofNeed(
              "whole days apart: as seldom as the driest plant allows, 7 at most; oftener or more"
                  + " seldom for whole minutes, 10 on a day at least, and for short nights");
      limits.canWait().ifPresent(wait -> why.from("the driest plant can wait", wait));
      return why.gives(program.everyDays());
    }

    /** Turns on a day of watering. */
    Derived<Integer> turns() {
      return limits.turns(program.turns(), program.turnMinutes());
    }

    /** Minutes of one turn. */
    Derived<Integer> turnMinutes() {
      return ofNeed("whole minutes of run time needed × days apart / days of the month / turns")
          .from("days apart", everyDays())
          .from("turns", turns())
          .gives(program.turnMinutes());
    }

    /** Minutes between an end and the next start. */
    Derived<Integer> soakMinutes() {
      Derived.Builder why =
          Derived.by(
              "whole minutes until what stands on the soil has gone, or until other zones have had"
                  + " their turn",
              KeyLimits.SET);
      limits.longestTurn().ifPresent(longest -> why.from("longest turn", longest));
      return why.from("turn", TimeSpan.minutes(program.turnMinutes())).gives((int) soak.minutes());
    }
  }

  public ZoneTimes {
    months = List.copyOf(months);
  }
}
