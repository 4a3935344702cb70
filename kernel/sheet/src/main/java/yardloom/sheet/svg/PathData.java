package yardloom.sheet.svg;

import java.util.List;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Xy;

/**
 * The data of a path element: straight lines, and arcs where points lie on one as its chords.
 *
 * <p>Geometry works on chords of arcs; here they become arcs again. Six points or more are taken
 * for an arc when they lie on one circle within {@value #OFF_CIRCLE_MM} mm, turn the same way with
 * equal chords, and their chords lie within {@value #SAGITTA_MM} mm of it, so that nothing on paper
 * moves by more than that. An arc goes through at most a third of a circle; longer ones are
 * several.
 *
 * <p>References: [1] W3C, Scalable Vector Graphics 1.1, 8.3.8, elliptical arc commands.
 */
final class PathData {
  private static final int LEAST_CHORDS = 5;
  private static final double OFF_CIRCLE_MM = 0.003;
  private static final double SAGITTA_MM = 0.05;
  private static final double EQUAL_MM = 0.01;

  /** Flatter arcs are drawn as their chords; readers lose digits in huge radii. */
  private static final double MOST_RADIUS_MM = 20_000;

  private static final double MOST_TURN = 2 * Math.PI / 3;

  private final List<Xy> points;
  private final StringBuilder d = new StringBuilder();

  private PathData(List<Xy> points) {
    this.points = points;
  }

  /** A circle through three points; its radius is negative where they turn to the left. */
  private record Circle(double x, double y, double radius) {
    static Circle through(Xy a, Xy b, Xy c) {
      double bx = b.x() - a.x();
      double by = b.y() - a.y();
      double cx = c.x() - a.x();
      double cy = c.y() - a.y();
      double twice = 2 * (bx * cy - by * cx);
      double x = (cy * (bx * bx + by * by) - by * (cx * cx + cy * cy)) / twice;
      double y = (bx * (cx * cx + cy * cy) - cx * (bx * bx + by * by)) / twice;
      return new Circle(a.x() + x, a.y() + y, Math.copySign(StrictMath.hypot(x, y), twice));
    }

    double off(Xy p) {
      double dx = p.x() - x;
      double dy = p.y() - y;
      return Math.abs(Math.sqrt(dx * dx + dy * dy) - Math.abs(radius));
    }
  }

  /** Whether it has points enough to be looked through for arcs. */
  static boolean mayHoldArcs(Ink.Track track) {
    return track.points().size() > LEAST_CHORDS;
  }

  static String of(Ink.Track track) {
    PathData data = new PathData(track.points());
    data.write();
    return data.d.append(track.closed() ? "Z" : "").toString();
  }

  private void write() {
    char command = 'M';
    int i = 0;
    while (i < points.size()) {
      int end = i == 0 ? 0 : arcEnd(i - 1);
      if (end > i) {
        arc(i - 1, end);
        command = 'A';
        i = end + 1;
      } else {
        char next = i == 0 ? 'M' : 'L';
        d.append(command == next && i > 1 ? " " : String.valueOf(next));
        command = next;
        at(points.get(i));
        i++;
      }
    }
  }

  private void at(Xy p) {
    d.append(SvgXml.number(p.x())).append(' ').append(SvgXml.number(p.y()));
  }

  private void arc(int from, int to) {
    Circle circle = circle(from, to);
    String radius = SvgXml.number(Math.abs(circle.radius()));
    d.append('A').append(radius).append(' ').append(radius).append(" 0 0 ");
    d.append(circle.radius() > 0 ? "1 " : "0 ");
    at(points.get(to));
  }

  private Circle circle(int from, int to) {
    return Circle.through(points.get(from), points.get((from + to) / 2), points.get(to));
  }

  /**
   * The last point of the longest arc that starts at {@code from}; {@code from} if there is none.
   */
  private int arcEnd(int from) {
    if (from + LEAST_CHORDS >= points.size()) {
      return from;
    }
    double chord = chord(from);
    int end = from;
    for (int last = from + 2; last < points.size(); last++) {
      if (!(Math.abs(chord(last - 1) - chord) <= EQUAL_MM)
          || last - from >= LEAST_CHORDS && !isArc(from, last, chord)) {
        return end;
      }
      end = last - from >= LEAST_CHORDS ? last : from;
    }
    return end;
  }

  private double chord(int from) {
    return points.get(from).distance(points.get(from + 1));
  }

  /** Whether points that follow each other at this distance lie on an arc. */
  private boolean isArc(int from, int to, double chord) {
    Circle circle = circle(from, to);
    double radius = Math.abs(circle.radius());
    double half = chord / 2;
    boolean none =
        !(radius > half && radius < MOST_RADIUS_MM)
            || radius - Math.sqrt(radius * radius - half * half) > SAGITTA_MM;
    if (none || (to - from) * 2 * StrictMath.asin(half / radius) > MOST_TURN) {
      return false;
    }
    for (int i = from + 1; i <= to; i++) {
      Xy before = points.get(i - 1);
      Xy p = points.get(i);
      double cross =
          (before.x() - circle.x()) * (p.y() - circle.y())
              - (before.y() - circle.y()) * (p.x() - circle.x());
      if (cross * circle.radius() <= 0 || circle.off(p) > OFF_CIRCLE_MM) {
        return false;
      }
    }
    return true;
  }
}
