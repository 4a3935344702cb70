package yardloom.water.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.timetable.formula.TimerProgram;
import yardloom.water.timetable.formula.TurnAbout;

/**
 * Starts of the first weeks of all zones: what runs on the same days runs one zone after the other,
 * and turn about where that is longer than the night.
 */
final class FirstNights {
  /** One step of one zone, in the place where it is listed. */
  private static final class Step {
    final int zone;
    final FirstWeeks.Weeks weeks;
    final LocalTime sunrise;
    int minutes;
    TimeSpan rest;

    Step(int zone, FirstWeeks.Weeks weeks, LocalTime sunrise) {
      this.zone = zone;
      this.weeks = weeks;
      this.sunrise = sunrise;
      rest = weeks.soak();
    }

    boolean meets(Step other) {
      return !weeks.from().isAfter(other.weeks.until())
          && !other.weeks.from().isAfter(weeks.until());
    }

    boolean isCrowded() {
      return minutes > Starts.room(sunrise);
    }

    FirstWeeks.Weeks timed() {
      return weeks.at(Starts.at(sunrise, minutes), rest);
    }
  }

  private final List<FirstWeeks> timed = new ArrayList<>();
  private final List<CrowdedNight> crowded = new ArrayList<>();

  /**
   * Times what may be timed.
   *
   * @param sunrise the earliest of a month, 0 to 11
   */
  FirstNights(List<FirstWeeks> all, IntFunction<Optional<LocalTime>> sunrise) {
    List<List<Optional<Step>>> steps = new ArrayList<>();
    for (FirstWeeks zone : all) {
      steps.add(
          zone.weeks().stream()
              .map(
                  w ->
                      sunrise
                          .apply(w.from().getMonthValue() - 1)
                          .map(s -> new Step(zone.zone(), w, s)))
              .toList());
    }
    share(steps.stream().flatMap(List::stream).flatMap(Optional::stream).toList());
    for (int z = 0; z < all.size(); z++) {
      List<FirstWeeks.Weeks> its = new ArrayList<>();
      for (int w = 0; w < all.get(z).weeks().size(); w++) {
        its.add(steps.get(z).get(w).map(Step::timed).orElse(all.get(z).weeks().get(w)));
      }
      timed.add(all.get(z).with(its));
    }
  }

  List<FirstWeeks> timed() {
    return timed;
  }

  List<CrowdedNight> crowded() {
    return crowded;
  }

  private void share(List<Step> steps) {
    inLine(steps);
    List<Step> left = new ArrayList<>(steps);
    while (!left.isEmpty()) {
      List<Step> season = season(left);
      left.removeAll(season);
      if (season.stream().anyMatch(Step::isCrowded)) {
        turnAbout(season);
        season.stream()
            .filter(Step::isCrowded)
            .max(Comparator.comparing(s -> s.minutes))
            .flatMap(
                s ->
                    CrowdedNight.of(
                        "in the first weeks after planting, from "
                            + TableFormat.date(s.weeks.from()),
                        s.minutes,
                        Optional.of(s.sunrise)))
            .ifPresent(crowded::add);
      }
    }
  }

  /** From the last zone backwards, each before all that run after it on any of its days. */
  private static void inLine(List<Step> steps) {
    List<Step> lastFirst =
        steps.stream().sorted(Comparator.comparing((Step s) -> -s.zone)).toList();
    for (Step step : lastFirst) {
      int end =
          lastFirst.stream()
              .filter(other -> other.zone > step.zone && other.meets(step))
              .mapToInt(other -> other.minutes)
              .max()
              .orElse(0);
      step.minutes =
          Starts.before(step.sunrise, end, step.weeks.program().elapsed(step.weeks.soak()));
    }
  }

  /** The first of them with all that it meets, directly or through others. */
  private static List<Step> season(List<Step> left) {
    List<Step> season = new ArrayList<>(List.of(left.get(0)));
    for (int i = 0; i < season.size(); i++) {
      Step step = season.get(i);
      left.stream().filter(s -> s.meets(step) && !season.contains(s)).forEach(season::add);
    }
    return season;
  }

  /** Every zone keeps its place in the beat through all its steps. */
  private static void turnAbout(List<Step> season) {
    TreeMap<Integer, List<Step>> zones =
        season.stream()
            .collect(Collectors.groupingBy(s -> s.zone, TreeMap::new, Collectors.toList()));
    List<TurnAbout.Asked> asked = zones.values().stream().map(FirstNights::most).toList();
    TurnAbout night = TurnAbout.of(asked);
    LocalTime sunrise =
        season.stream().map(s -> s.sunrise).min(Comparator.comparing(Starts::room)).orElseThrow();
    int first = Starts.before(sunrise, 0, TimeSpan.minutes(night.minutes()));
    int place = 0;
    for (List<Step> zone : zones.values()) {
      int beat = night.rests().get(place) + asked.get(place).program().turnMinutes();
      for (Step step : zone) {
        TimerProgram program = step.weeks.program();
        // Counted back from its own month's sunrise, the clock is that of the earliest one.
        step.minutes =
            first - night.from().get(place) + Starts.room(step.sunrise) - Starts.room(sunrise);
        step.rest =
            program.turns() > 1 ? TimeSpan.minutes(beat - program.turnMinutes()) : TimeSpan.ZERO;
      }
      place++;
    }
  }

  /** The longest turn, the most turns and the longest soak of all steps of a zone. */
  private static TurnAbout.Asked most(List<Step> zone) {
    int turns = zone.stream().mapToInt(s -> s.weeks.program().turns()).max().orElseThrow();
    int minutes = zone.stream().mapToInt(s -> s.weeks.program().turnMinutes()).max().orElseThrow();
    double soak = zone.stream().mapToDouble(s -> s.weeks.soak().minutes()).max().orElseThrow();
    return new TurnAbout.Asked(new TimerProgram(1, turns, minutes), (int) Math.ceil(soak));
  }
}
