package yardloom.water.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.timetable.formula.TimerProgram;
import yardloom.water.timetable.formula.TurnAbout;

/**
 * The waterings of one month as if all zones were due in one night: one zone after the other where
 * the night is long enough; else turn about; else oftener, so that a night has fewer turns. The
 * same water comes in all.
 *
 * @param times of each zone in their order
 * @param minutes from the first start to the last end
 */
record MonthNight(List<ZoneTimes.Month> times, int minutes) {
  /**
   * What one zone asks in the month.
   *
   * @param canWait how long the first plant to dry out can wait, if known
   * @param program as seldom as the soil allows
   */
  record Asked(
      int month,
      ElementId thirstiest,
      Derived<TimeSpan> need,
      Optional<Derived<TimeSpan>> canWait,
      Turns turns,
      TimerProgram program) {
    /** Oftener, with less to do on each day, if whole minutes allow it. */
    Optional<Asked> oftener() {
      int days = Months.days(month);
      for (int apart = program.everyDays() - 1; apart >= 1; apart--) {
        TimerProgram other = TimerProgram.of(need.value().minutes(), days, apart, turns.longest());
        if (other.everyDays() <= apart && other.dayMinutes() < program.dayMinutes()) {
          return Optional.of(new Asked(month, thirstiest, need, canWait, turns, other));
        }
      }
      return Optional.empty();
    }

    TimeSpan soak() {
      return turns.soak(program);
    }

    private ZoneTimes.Month at(Optional<LocalTime> start, TimeSpan rest) {
      return new ZoneTimes.Month(
          month, thirstiest, need, program, rest, start, new Limits(canWait, turns.limit()));
    }
  }

  /** The night; without starts where sunrise is not known. */
  static MonthNight of(List<Asked> asked, Optional<LocalTime> sunrise) {
    if (sunrise.isEmpty()) {
      return new MonthNight(asked.stream().map(a -> a.at(Optional.empty(), a.soak())).toList(), 0);
    }
    int room = Starts.room(sunrise.get());
    List<Asked> zones = new ArrayList<>(asked);
    while (true) {
      MonthNight night = shortest(zones, sunrise.get(), room);
      if (night.minutes <= room || !makesRoom(zones)) {
        return night;
      }
    }
  }

  private static MonthNight shortest(List<Asked> zones, LocalTime sunrise, int room) {
    MonthNight inLine = inLine(zones, sunrise);
    if (inLine.minutes <= room) {
      return inLine;
    }
    MonthNight turnAbout = turnAbout(zones, sunrise);
    return turnAbout.minutes < inLine.minutes ? turnAbout : inLine;
  }

  private static MonthNight inLine(List<Asked> zones, LocalTime sunrise) {
    List<ZoneTimes.Month> times = new ArrayList<>();
    int end = 0;
    for (int z = zones.size() - 1; z >= 0; z--) {
      Asked zone = zones.get(z);
      end = Starts.before(sunrise, end, zone.program().elapsed(zone.soak()));
      times.add(0, zone.at(Optional.of(Starts.at(sunrise, end)), zone.soak()));
    }
    return new MonthNight(times, end);
  }

  private static MonthNight turnAbout(List<Asked> zones, LocalTime sunrise) {
    TurnAbout night =
        TurnAbout.of(
            zones.stream()
                .map(z -> new TurnAbout.Asked(z.program(), (int) Math.ceil(z.soak().minutes())))
                .toList());
    int first = Starts.before(sunrise, 0, TimeSpan.minutes(night.minutes()));
    List<ZoneTimes.Month> times = new ArrayList<>();
    for (int z = 0; z < zones.size(); z++) {
      LocalTime start = Starts.at(sunrise, first - night.from().get(z));
      times.add(zones.get(z).at(Optional.of(start), TimeSpan.minutes(night.rests().get(z))));
    }
    return new MonthNight(times, first);
  }

  /** Waters oftener the zone with most turns that can be, of those the one that takes longest. */
  private static boolean makesRoom(List<Asked> zones) {
    List<Integer> longestFirst =
        IntStream.range(0, zones.size())
            .boxed()
            .sorted(
                Comparator.comparing((Integer z) -> -zones.get(z).program().turns())
                    .thenComparing(z -> -zones.get(z).program().dayMinutes()))
            .toList();
    for (int z : longestFirst) {
      Optional<Asked> other = zones.get(z).oftener();
      if (other.isPresent()) {
        zones.set(z, other.get());
        return true;
      }
    }
    return false;
  }
}
