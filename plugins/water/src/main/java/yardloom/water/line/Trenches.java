package yardloom.water.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Line;
import yardloom.kernel.unit.Length;

/**
 * What is dug for the lines; pipes of several zones share a trench.
 *
 * @param trenches each between two forks or ends
 * @param length of all together
 * @param paved how much of it lies under paving, in sleeves
 * @param missed feeds that no way for pipe reaches
 */
public record Trenches(
    List<Trench> trenches, Derived<Length> length, Derived<Length> paved, List<String> missed) {
  /** The trenches of a plan with a tap and dripline. */
  public static final FactKey<Trenches> KEY =
      FactKey.one("water.trenches", Trenches.class).called("trenches for pipe");

  /** The pipe of one zone in a trench. */
  public record Pipe(int zone, PipeSize size) {}

  /**
   * One trench.
   *
   * @param pipes in it, by zone
   * @param paved what lies under paving
   */
  public record Trench(Line way, List<Pipe> pipes, List<Line> paved) {
    public Trench {
      pipes = List.copyOf(pipes);
      paved = List.copyOf(paved);
    }

    /** Such as {@code Z1-3, 5: 1/2 in; Z4: 3/4 in}. */
    public String text() {
      Map<String, List<Integer>> bySize = new LinkedHashMap<>();
      for (Pipe pipe : pipes) {
        bySize.computeIfAbsent(pipe.size().name(), k -> new ArrayList<>()).add(pipe.zone());
      }
      return bySize.entrySet().stream()
          .map(e -> "Z" + runs(e.getValue()) + ": " + e.getKey())
          .collect(Collectors.joining("; "));
    }
  }

  /** Numbers in their order, three and more in a row as from-to. */
  private static String runs(List<Integer> numbers) {
    List<Integer> sorted = numbers.stream().distinct().sorted().toList();
    List<String> runs = new ArrayList<>();
    for (int from = 0; from < sorted.size(); ) {
      int to = from;
      while (to + 1 < sorted.size() && sorted.get(to + 1) == sorted.get(to) + 1) {
        to++;
      }
      if (to - from >= 2) {
        runs.add(sorted.get(from) + "-" + sorted.get(to));
        from = to + 1;
      } else {
        runs.add(Integer.toString(sorted.get(from)));
        from++;
      }
    }
    return String.join(", ", runs);
  }

  public Trenches {
    trenches = List.copyOf(trenches);
    missed = List.copyOf(missed);
  }
}
