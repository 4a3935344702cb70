package yardloom.water.drip.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.InsideWay;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Loops;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * The solid tube that joins the rows of a bed, nowhere outside it: from the first row's start every
 * further row is joined to the nearest start that is joined already, straight where that stays in
 * the bed. A row in another part of the bed has a feed of its own.
 *
 * <p>References: Prim's tree of least length, greedy by the nearest; the tree, not a shortest
 * network.
 */
public final class HeaderLayout {
  /**
   * One row as it is joined.
   *
   * @param line from where it is fed
   * @param from the row, before it in the list, at whose start its header begins; -1 if it has a
   *     feed of its own
   * @param header from that start to its own; empty with a feed of its own, or where both are one
   */
  public record Joined(Line line, int from, Optional<Line> header) {
    public Length headerLength() {
      return header.map(Line::length).orElse(Length.ZERO);
    }
  }

  private static final double SAME_M = 1e-6;

  private final InsideWay ways;
  private final List<Joined> joined = new ArrayList<>();
  private final List<Line> left;

  /** The nearest way to each row that is left: {@code line} turned so that it starts there. */
  private final List<Best> best = new ArrayList<>();

  private record Best(Line line, int from, double metres, boolean straight) {}

  private HeaderLayout(Shape bed, List<Line> rows) {
    ways = new InsideWay(bed);
    left = new ArrayList<>(rows);
    left.forEach(row -> best.add(null));
  }

  /**
   * The rows in the order in which they are joined.
   *
   * @param feed where water comes from: the first row starts with its end that is nearest to it;
   *     empty if nothing is known
   */
  public static List<Joined> of(Shape bed, List<Line> rows, Optional<Point> feed) {
    HeaderLayout layout = new HeaderLayout(bed, rows);
    feed.ifPresent(layout::startNear);
    while (!layout.left.isEmpty()) {
      layout.joinNext();
    }
    return List.copyOf(layout.joined);
  }

  private void startNear(Point feed) {
    for (int i = 0; i < left.size(); i++) {
      left.set(i, startingNear(left.get(i), feed));
    }
    // A stable sort: rows that start equally far stay in the order of the bed.
    left.sort(
        Comparator.comparingLong(row -> Math.round(row.start().distance(feed).metres() / SAME_M)));
  }

  private void joinNext() {
    int next = 0;
    for (int i = 1; i < left.size(); i++) {
      if (best.get(i) != null && isNearer(best.get(i), best.get(next))) {
        next = i;
      }
    }
    Line row = left.remove(next);
    Best way = best.remove(next);
    if (way == null) {
      join(new Joined(row, -1, Optional.empty()));
      return;
    }
    Point from = joined.get(way.from()).line().start();
    Point to = way.line().start();
    boolean isSame = from.distance(to).metres() < SAME_M;
    Optional<Line> header = isSame ? Optional.empty() : ways.between(from, to);
    boolean isApart = !isSame && header.isEmpty();
    join(new Joined(way.line(), isApart ? -1 : way.from(), header));
  }

  private void join(Joined row) {
    joined.add(row);
    for (int i = 0; i < left.size(); i++) {
      Best way = nearest(left.get(i), row.line().start());
      if (isNearer(way, best.get(i))) {
        best.set(i, way);
      }
    }
  }

  private Best nearest(Line row, Point to) {
    Line line = startingNear(row, to);
    Point start = line.start();
    return new Best(
        line, joined.size() - 1, start.distance(to).metres(), ways.isStraight(start, to));
  }

  /** The same row from its end that is nearer, a closed one from its nearest point. */
  private static Line startingNear(Line row, Point to) {
    boolean isFar =
        !row.isClosed()
            && row.end().distance(to).metres() < row.start().distance(to).metres() - SAME_M;
    return isFar ? row.reversed() : Loops.startingNear(row, to);
  }

  private static boolean isNearer(Best one, Best other) {
    if (other == null || one.straight() != other.straight()) {
      return other == null || one.straight();
    }
    return one.metres() < other.metres() - SAME_M;
  }
}
