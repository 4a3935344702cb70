package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names that differ by the figure at their end only, such as Plot 1 to Plot 300. On a drawing too
 * full for the names the figures alone stand on the ground, and a note says what they mean.
 */
final class NameSeries {
  private static final Pattern NUMBERED = Pattern.compile("(.*[^0-9])([0-9]{1,6})");

  /** Fewer names find room, or are few enough to be led to. */
  private static final int LEAST = 12;

  /** Of the names of a series at least so many have no room of their own if it is crowded. */
  private static final double CROWDED = 0.25;

  private NameSeries() {}

  /** The figure at the end of a name; empty if it has none. */
  static Optional<String> figure(String name) {
    Matcher matcher = NUMBERED.matcher(name);
    return matcher.matches() ? Optional.of(matcher.group(2)) : Optional.empty();
  }

  private static String stem(String name) {
    Matcher matcher = NUMBERED.matcher(name);
    return matcher.matches() ? matcher.group(1) : "";
  }

  /**
   * The names of crowded series whose figures no other such name has, sorted.
   *
   * @param housed of each name of the drawing whether it stands on or beside what it names
   */
  static List<String> crowded(Map<String, Boolean> housed) {
    Map<String, List<String>> byStem = new TreeMap<>();
    housed.keySet().stream()
        .filter(n -> figure(n).isPresent())
        .sorted()
        .forEach(n -> byStem.computeIfAbsent(stem(n), s -> new ArrayList<>()).add(n));
    List<String> crowded = new ArrayList<>();
    TreeSet<String> figures = new TreeSet<>();
    for (List<String> series : byStem.values()) {
      long out = series.stream().filter(n -> !housed.get(n)).count();
      List<String> own = series.stream().map(n -> figure(n).orElseThrow()).toList();
      if (series.size() >= LEAST
          && out >= CROWDED * series.size()
          && own.stream().noneMatch(figures::contains)) {
        crowded.addAll(series);
        figures.addAll(own);
      }
    }
    return crowded;
  }

  /** What the figures mean: "1 to 300: Plot 1 to Plot 300" for each series of {@code names}. */
  static List<String> notes(List<String> names) {
    Map<String, TreeMap<Integer, String>> figures = new TreeMap<>();
    for (String name : names) {
      String figure = figure(name).orElseThrow();
      figures
          .computeIfAbsent(stem(name), s -> new TreeMap<>())
          .put(Integer.valueOf(figure), figure);
    }
    List<String> notes = new ArrayList<>();
    figures.forEach(
        (stem, all) -> {
          String first = all.firstEntry().getValue();
          String last = all.lastEntry().getValue();
          notes.add(first + " to " + last + ": " + stem + first + " to " + stem + last);
        });
    return notes;
  }
}
