package yardloom.sun.spot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import yardloom.facts.Field;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * The sunniest connected places of a wanted area.
 *
 * <p>Criterion: the highest level that the darkest part of the place still reaches. The ground is
 * looked at in square blocks of {@code width}, so no place is narrower; blocks are added from the
 * sunniest on until some connected patch has the area. Its ground is then taken and the search goes
 * on for the next place. Fewer places are returned when free ground runs out.
 *
 * <p>References: [1] R. E. Tarjan, Efficiency of a good but not linear set union algorithm, Journal
 * of the ACM 22(2), 1975 (from memory).
 */
public final class SunnySpots {
  /** One place: its ground, the least and the mean value on it. */
  public record Spot(Shape ground, double least, double mean) {}

  private final Field field;
  private final int block;
  private final boolean[] free;

  /**
   * A search.
   *
   * @param allowed ground that may be used
   * @param widthM the least width of a place
   */
  public SunnySpots(Field field, Shape allowed, double widthM) {
    this.field = field;
    block = Math.max(1, (int) Math.round(widthM / field.cell().metres()));
    free = new boolean[field.columns() * field.rows()];
    Predicate<Point> inside = allowed.insideTest();
    for (int i = 0; i < free.length; i++) {
      int c = i % field.columns();
      int r = i / field.columns();
      free[i] = field.at(c, r).isPresent() && inside.test(field.centre(c, r));
    }
  }

  /** Up to {@code most} places of at least {@code areaM2}, the sunniest first. */
  public List<Spot> find(double areaM2, int most) {
    List<Spot> spots = new ArrayList<>();
    int cells = (int) Math.ceil(areaM2 / (field.cell().metres() * field.cell().metres()) - 1e-9);
    while (spots.size() < most) {
      boolean[] ground = next(cells);
      if (ground.length == 0) {
        return spots;
      }
      spots.add(spot(ground));
      for (int i = 0; i < free.length; i++) {
        free[i] &= !ground[i];
      }
    }
    return spots;
  }

  /** The cells of the next place; empty if there is none. */
  private boolean[] next(int cells) {
    double[] darkest = new double[free.length];
    List<Integer> blocks = new ArrayList<>();
    for (int i = 0; i < free.length; i++) {
      OptionalDouble value = darkestOfBlock(i);
      if (value.isPresent()) {
        darkest[i] = value.getAsDouble();
        blocks.add(i);
      }
    }
    blocks.sort(Comparator.comparingDouble((Integer i) -> -darkest[i]).thenComparing(i -> i));
    int[] parent = IntStream.range(0, free.length).toArray();
    boolean[] covered = new boolean[free.length];
    int[] size = new int[free.length];
    for (int at : blocks) {
      for (int i : cellsOf(at)) {
        if (!covered[i]) {
          covered[i] = true;
          size[root(parent, i)] += 1;
        }
        join(parent, size, at, i);
      }
      if (size[root(parent, at)] >= cells) {
        int root = root(parent, at);
        boolean[] ground = new boolean[free.length];
        for (int i = 0; i < free.length; i++) {
          ground[i] = covered[i] && root(parent, i) == root;
        }
        return ground;
      }
    }
    return new boolean[0];
  }

  private OptionalDouble darkestOfBlock(int at) {
    int c = at % field.columns();
    int r = at / field.columns();
    if (c + block > field.columns() || r + block > field.rows()) {
      return OptionalDouble.empty();
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i : cellsOf(at)) {
      if (!free[i]) {
        return OptionalDouble.empty();
      }
      least = Math.min(least, field.at(i % field.columns(), i / field.columns()).orElseThrow());
    }
    return OptionalDouble.of(least);
  }

  private int[] cellsOf(int at) {
    int[] cells = new int[block * block];
    for (int k = 0; k < cells.length; k++) {
      cells[k] = at + k % block + k / block * field.columns();
    }
    return cells;
  }

  private static int root(int[] parent, int i) {
    int at = i;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  private static void join(int[] parent, int[] size, int a, int b) {
    int first = root(parent, a);
    int second = root(parent, b);
    if (first != second) {
      parent[second] = first;
      size[first] += size[second];
    }
  }

  private Spot spot(boolean[] ground) {
    int[] cells = IntStream.range(0, ground.length).filter(i -> ground[i]).toArray();
    DoubleSummaryStatistics values =
        Arrays.stream(cells)
            .mapToDouble(i -> field.at(i % field.columns(), i / field.columns()).orElseThrow())
            .summaryStatistics();
    List<Shape> runs = new ArrayList<>();
    for (int i : cells) {
      int column = i % field.columns();
      if (column == 0 || !ground[i - 1]) {
        int end = column;
        while (end + 1 < field.columns() && ground[i + end + 1 - column]) {
          end++;
        }
        runs.add(run(column, end, i / field.columns()));
      }
    }
    return new Spot(Shape.union(runs), values.getMin(), values.getAverage());
  }

  private Shape run(int from, int to, int row) {
    Point corner = field.corner().moved(field.cell().times(from), field.cell().times(row));
    Length width = field.cell().times(to - from + 1.0);
    return Shape.rectangle(corner, width, field.cell());
  }
}
