package yardloom.water.timetable;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.formula.Taper;
import yardloom.water.timetable.formula.TimerProgram;

/**
 * How one zone runs through the first 45 days of what is planted in it at one time.
 *
 * @param zone its number
 * @param from the day on which the first of them begins to draw water
 * @param waits what comes before the timer waters them, in the order of days
 * @param kinds what is planted
 * @param beds where, in words
 * @param weeks its steps in their order, from the day on which the dripline is laid
 */
public record FirstWeeks(
    int zone, LocalDate from, String kinds, String beds, List<Wait> waits, List<Weeks> weeks) {
  /** The first weeks of every zone with new plants. */
  public static final FactKey<FirstWeeks> KEY =
      FactKey.many("water.first-weeks", FirstWeeks.class)
          .called("first weeks of the zones")
          .byPart();

  /**
   * Days on which the timer gives no water to what is planted.
   *
   * @param daily what is carried to all of them in a day, if it is
   */
  public record Wait(
      LocalDate from, LocalDate until, Reason reason, Optional<Derived<Volume>> daily) {
    /** Why it does not. */
    public enum Reason {
      /** No dripline lies yet. */
      BY_CAN,
      /** It lies in bare ground. */
      BARE,
      /** What is planted has no leaves. */
      RESTS
    }
  }

  /**
   * One step of the taper, or what is left of it once the dripline lies.
   *
   * @param from its first day on which the timer runs
   * @param thirstiest the bed that asks for most
   * @param need run time that it asks for at each watering
   * @param soak wait after each turn but the last
   * @param start of the first turn, by the clock; empty where sunrise is not known
   * @param isRainedOn whether rain usually brings it all
   * @param limits what holds the turns
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
      boolean isRainedOn,
      Limits limits) {
    private static final Source WHOLE =
        Source.commonPractice("whole minutes, never less than young plants need");

    /** Turns on a day of watering. */
    Derived<Integer> turns() {
      return limits.turns(program.turns(), program.turnMinutes());
    }

    /** Minutes of one turn. */
    Derived<Integer> turnMinutes() {
      return Derived.by("whole minutes, up, of run time needed / turns", WHOLE)
          .from("run time needed", need)
          .from("turns", turns())
          .gives(program.turnMinutes());
    }

    /** What is left of it from a day on; all of it where none is known. */
    Optional<Weeks> notBefore(Optional<LocalDate> day) {
      if (day.isEmpty() || !day.get().isAfter(from)) {
        return Optional.of(this);
      }
      return day.get().isAfter(until)
          ? Optional.empty()
          : Optional.of(
              new Weeks(
                  step,
                  day.get(),
                  until,
                  thirstiest,
                  need,
                  program,
                  soak,
                  start,
                  isRainedOn,
                  limits));
    }

    Weeks at(LocalTime time, TimeSpan rest) {
      return new Weeks(
          step,
          from,
          until,
          thirstiest,
          need,
          program,
          rest,
          Optional.of(time),
          isRainedOn,
          limits);
    }
  }

  FirstWeeks with(List<Weeks> its) {
    return new FirstWeeks(zone, from, kinds, beds, waits, its);
  }

  public FirstWeeks {
    waits = List.copyOf(waits);
    weeks = List.copyOf(weeks);
  }
}
