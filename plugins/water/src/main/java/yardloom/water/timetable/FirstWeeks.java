package yardloom.water.timetable;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.need.formula.Taper;
import yardloom.water.timetable.formula.TimerProgram;

/**
 * How one zone runs through the first 45 days of what is planted in it at one time.
 *
 * @param zone its number
 * @param from the day on which the first of them begins to draw water
 * @param kinds what is planted
 * @param beds where, in words
 * @param weeks its steps in their order
 */
public record FirstWeeks(int zone, LocalDate from, String kinds, String beds, List<Weeks> weeks) {
  /** The first weeks of every zone with new plants. */
  public static final FactKey<FirstWeeks> KEY =
      FactKey.many("water.first-weeks", FirstWeeks.class).called("first weeks of the zones");

  /**
   * One step of the taper.
   *
   * @param thirstiest the bed that asks for most
   * @param need run time that it asks for at each watering
   * @param soak wait after each turn but the last
   * @param start of the first turn, by the clock; empty where sunrise is not known
   * @param isRainedOn whether rain usually brings it all
   */
  public record Weeks(
      Taper.Step step,
      LocalDate from,
      LocalDate until,
      ElementId thirstiest,
      Derived<TimeSpan> need,
      TimerProgram program,
      TimeSpan soak,
      Optional<LocalTime> start,
      boolean isRainedOn) {
    Weeks at(LocalTime time) {
      return new Weeks(
          step, from, until, thirstiest, need, program, soak, Optional.of(time), isRainedOn);
    }
  }

  public FirstWeeks {
    weeks = List.copyOf(weeks);
  }
}
