package yardloom.water.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;

/** A tree of trenches from the tap to feeds. */
public final class LineTree {
  private final List<Point> places;

  /** The place before each, on the way from the tap. */
  private final Map<Integer, Integer> before;

  private final Map<String, Integer> ends;

  private LineTree(List<Point> places, Map<Integer, Integer> before, Map<String, Integer> ends) {
    this.places = places;
    this.before = before;
    this.ends = ends;
  }

  /** Puts ways together. */
  static final class Builder {
    private final List<Point> places;
    private final Map<Integer, Integer> before = new TreeMap<>();
    private final Map<String, Integer> ends = new TreeMap<>();

    Builder(List<Point> places) {
      this.places = places;
    }

    void add(String name, List<Integer> way) {
      for (int k = 1; k < way.size(); k++) {
        before.putIfAbsent(way.get(k), way.get(k - 1));
      }
      ends.put(name, way.get(way.size() - 1));
    }

    LineTree build() {
      return new LineTree(List.copyOf(places), before, ends);
    }
  }

  /** Whether a way leads to that feed. */
  public boolean reaches(String feed) {
    return ends.containsKey(feed);
  }

  /** The trenches, each between two forks, ends or the tap. */
  public List<Line> trenches() {
    return runs(ends.keySet()).stream().map(Run::way).toList();
  }

  /**
   * A run of pipe without a branch.
   *
   * @param from the run before it, -1 at the tap
   * @param feed what it ends at; empty at a fork
   */
  public record Run(int from, Line way, Optional<String> feed) {}

  /** The runs that reach some of the feeds, each after the one before it. */
  public List<Run> runs(Collection<String> feeds) {
    TreeSet<Integer> stops = new TreeSet<>();
    Map<Integer, TreeSet<Integer>> after = new TreeMap<>();
    Map<Integer, String> names = new HashMap<>();
    for (String feed : new TreeSet<>(feeds)) {
      if (!ends.containsKey(feed)) {
        continue;
      }
      int at = ends.get(feed);
      stops.add(at);
      names.put(at, feed);
      while (before.containsKey(at)) {
        after.computeIfAbsent(before.get(at), k -> new TreeSet<>()).add(at);
        at = before.get(at);
      }
    }
    after.forEach(
        (at, next) -> {
          if (next.size() > 1) {
            stops.add(at);
          }
        });
    List<Run> runs = new ArrayList<>();
    collect(0, -1, after, stops, names, runs);
    return runs;
  }

  private void collect(
      int at,
      int from,
      Map<Integer, TreeSet<Integer>> after,
      TreeSet<Integer> stops,
      Map<Integer, String> names,
      List<Run> runs) {
    for (int next : after.getOrDefault(at, new TreeSet<>())) {
      List<Point> way = new ArrayList<>(List.of(places.get(at)));
      int end = next;
      way.add(places.get(end));
      while (!stops.contains(end)) {
        end = after.get(end).first();
        way.add(places.get(end));
      }
      runs.add(new Run(from, Line.through(way), Optional.ofNullable(names.get(end))));
      collect(end, runs.size() - 1, after, stops, names, runs);
    }
  }

  /** The bends of a line, by more than 30 degrees. */
  public static int bends(Line way) {
    List<Point> p = way.points();
    int bends = 0;
    for (int i = 1; i + 1 < p.size(); i++) {
      double ax = p.get(i).x().minus(p.get(i - 1).x()).metres();
      double ay = p.get(i).y().minus(p.get(i - 1).y()).metres();
      double bx = p.get(i + 1).x().minus(p.get(i).x()).metres();
      double by = p.get(i + 1).y().minus(p.get(i).y()).metres();
      double turn = Math.abs(StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by));
      bends += turn > Math.PI / 6 ? 1 : 0;
    }
    return bends;
  }
}
