package yardloom.work.phase;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.facts.PlantingWindow;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.FactKey;
import yardloom.work.labour.Workdays;

/**
 * A day on which the crew plants.
 *
 * @param number from 1; the first one is the phase of planting itself
 * @param kinds what is planted then, and as what, by name
 */
public record PlantingVisit(int number, LocalDate date, SortedMap<String, String> kinds) {
  /** Visits in order of date; none where no days of planting or no first day is known. */
  public static final FactKey<PlantingVisit> FACT =
      FactKey.many("work.planting-visits", PlantingVisit.class).called("visits to plant").byPart();

  private static final int LONGEST = 366;

  /** One kind, and the first and the last of its working days in a row. */
  private record Open(PlantingWindow window, LocalDate from, LocalDate until) {
    static Open of(PlantingWindow window, LocalDate ready, Workdays days) {
      LocalDate from = window.next(ready);
      while (days.isOff(from)) {
        from = window.next(from.plusDays(1));
      }
      LocalDate until = from;
      LocalDate day = from.plusDays(1);
      while (window.on(day).isPresent() && day.isBefore(from.plusDays(LONGEST))) {
        until = days.isOff(day) ? until : day;
        day = day.plusDays(1);
      }
      return new Open(window, from, until);
    }
  }

  /**
   * The fewest visits on working days from {@code ready} on that plant every kind within its days:
   * the kind whose days end first waits until all that may join it are in season.
   *
   * <p>References: the greedy cover of intervals by points, by earliest end; a textbook result.
   */
  public static List<PlantingVisit> of(
      List<PlantingWindow> windows, LocalDate ready, Workdays days) {
    List<PlantingVisit> visits = new ArrayList<>();
    List<Open> left = new ArrayList<>(windows.stream().map(w -> Open.of(w, ready, days)).toList());
    while (!left.isEmpty()) {
      LocalDate latest = left.stream().map(Open::until).min(Comparator.naturalOrder()).get();
      List<Open> now = left.stream().filter(o -> !o.from().isAfter(latest)).toList();
      LocalDate date = now.stream().map(Open::from).max(Comparator.naturalOrder()).get();
      SortedMap<String, String> kinds = new TreeMap<>();
      now.forEach(o -> kinds.put(o.window().plant(), how(o.window(), date)));
      visits.add(new PlantingVisit(visits.size() + 1, date, kinds));
      left.removeAll(now);
    }
    return List.copyOf(visits);
  }

  /** Likely hours of one person for its kinds, of hours by kind; kinds without any take none. */
  public double hours(Map<String, Double> byKind) {
    return kinds.keySet().stream().mapToDouble(k -> byKind.getOrDefault(k, 0.0)).sum();
  }

  /** The same with those of its kinds only that are named. */
  public PlantingVisit only(Set<String> plants) {
    SortedMap<String, String> own = new TreeMap<>(kinds);
    own.keySet().retainAll(plants);
    return new PlantingVisit(number, date, own);
  }

  /** The days on which kinds of a phase are planted, from its own on; none without dates. */
  static List<PlantingVisit> all(PhaseTime first, List<PlantingWindow> windows, Workdays days) {
    return first
        .start()
        .map(start -> of(windowsOf(first.phase().id(), windows), start, days))
        .orElse(List.of());
  }

  /** The same without the first of them. */
  public static List<PlantingVisit> laterThan(
      PhaseTime first, List<PlantingWindow> windows, Workdays days) {
    return all(first, windows, days).stream().skip(1).toList();
  }

  /** What is planted in one phase. */
  public static List<PlantingWindow> windowsOf(WorkPhase phase, List<PlantingWindow> windows) {
    return windows.stream().filter(w -> w.phase() == phase).toList();
  }

  /** By date and numbered through; visits of two phases on one day are one. */
  static List<PlantingVisit> inOrder(List<PlantingVisit> visits) {
    SortedMap<LocalDate, SortedMap<String, String>> byDate = new TreeMap<>();
    visits.forEach(v -> byDate.computeIfAbsent(v.date(), d -> new TreeMap<>()).putAll(v.kinds()));
    List<PlantingVisit> ordered = new ArrayList<>();
    byDate.forEach(
        (date, kinds) -> ordered.add(new PlantingVisit(ordered.size() + 1, date, kinds)));
    return List.copyOf(ordered);
  }

  private static String how(PlantingWindow window, LocalDate date) {
    return window.on(date).map(PlantingWindow.Period::how).orElse("");
  }
}
