package yardloom.sheet.paper;

import java.util.List;

/** A rectangle that may be turned: the room that a text takes on paper. */
public record Quad(Xy a, Xy b, Xy c, Xy d) {

  public static Quad of(Box box) {
    return new Quad(
        new Xy(box.x(), box.y()),
        new Xy(box.right(), box.y()),
        new Xy(box.right(), box.bottom()),
        new Xy(box.x(), box.bottom()));
  }

  /** This rectangle turned clockwise on paper about {@code centre}. */
  public Quad turned(double degrees, Xy centre) {
    if (degrees == 0) {
      return this;
    }
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    return new Quad(
        turn(a, centre, sin, cos),
        turn(b, centre, sin, cos),
        turn(c, centre, sin, cos),
        turn(d, centre, sin, cos));
  }

  private static Xy turn(Xy p, Xy centre, double sin, double cos) {
    double x = p.x() - centre.x();
    double y = p.y() - centre.y();
    return new Xy(centre.x() + x * cos - y * sin, centre.y() + x * sin + y * cos);
  }

  public List<Xy> corners() {
    return List.of(a, b, c, d);
  }

  public boolean inside(Box box) {
    return box.contains(a) && box.contains(b) && box.contains(c) && box.contains(d);
  }

  Xy centre() {
    return new Xy((a.x() + c.x()) / 2, (a.y() + c.y()) / 2);
  }

  public double distance(Xy p) {
    if (contains(p)) {
      return 0;
    }
    double nearest = Double.MAX_VALUE;
    List<Xy> corners = corners();
    for (int i = 0; i < 4; i++) {
      nearest = Math.min(nearest, distance(p, corners.get(i), corners.get((i + 1) % 4)));
    }
    return nearest;
  }

  private static double distance(Xy p, Xy from, Xy to) {
    return p.distance(nearest(p, from, to));
  }

  /** The point of the segment nearest to {@code p}. */
  public static Xy nearest(Xy p, Xy from, Xy to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double squared = dx * dx + dy * dy;
    double t = squared == 0 ? 0 : ((p.x() - from.x()) * dx + (p.y() - from.y()) * dy) / squared;
    double clamped = Math.min(1, Math.max(0, t));
    return new Xy(from.x() + clamped * dx, from.y() + clamped * dy);
  }

  private boolean contains(Xy p) {
    return separation(a, b, p) >= 0
        && separation(b, c, p) >= 0
        && separation(c, d, p) >= 0
        && separation(d, a, p) >= 0;
  }

  /** Whether two segments cross at an inner point of both. */
  public static boolean isCrossing(Xy a, Xy b, Xy c, Xy d) {
    return separation(a, b, c) * separation(a, b, d) < 0
        && separation(c, d, a) * separation(c, d, b) < 0;
  }

  /**
   * Positive on the inner side of an edge, since corners run clockwise on paper, where y runs down;
   * in proportion to the distance from it.
   */
  public static double separation(Xy from, Xy to, Xy p) {
    return (to.x() - from.x()) * (p.y() - from.y()) - (to.y() - from.y()) * (p.x() - from.x());
  }

  /** Whether the two share more than touching edges; by the separating-axis theorem. */
  public boolean overlaps(Quad other) {
    return !isFar(other) && !separated(this, other) && !separated(other, this);
  }

  /** A cheap first answer: the upright boxes about both do not meet. */
  private boolean isFar(Quad other) {
    return low(a.x(), b.x(), c.x(), d.x())
            > high(other.a.x(), other.b.x(), other.c.x(), other.d.x())
        || low(other.a.x(), other.b.x(), other.c.x(), other.d.x())
            > high(a.x(), b.x(), c.x(), d.x())
        || low(a.y(), b.y(), c.y(), d.y())
            > high(other.a.y(), other.b.y(), other.c.y(), other.d.y())
        || low(other.a.y(), other.b.y(), other.c.y(), other.d.y())
            > high(a.y(), b.y(), c.y(), d.y());
  }

  private static double low(double p, double q, double r, double s) {
    return Math.min(Math.min(p, q), Math.min(r, s));
  }

  private static double high(double p, double q, double r, double s) {
    return Math.max(Math.max(p, q), Math.max(r, s));
  }

  /** Whether the segment passes through the inside. */
  public boolean crossedBy(Xy from, Xy to) {
    Quad segment = new Quad(from, to, to, from);
    return !isFar(segment) && !separated(this, segment) && !separated(segment, this);
  }

  private static boolean separated(Quad one, Quad two) {
    return along(one.a, one.b, one, two)
        || along(one.b, one.c, one, two)
        || across(one.a, one.b, one, two);
  }

  private static boolean across(Xy from, Xy to, Quad one, Quad two) {
    return apart(-(to.y() - from.y()), to.x() - from.x(), one, two);
  }

  private static boolean along(Xy from, Xy to, Quad one, Quad two) {
    return apart(to.x() - from.x(), to.y() - from.y(), one, two);
  }

  private static boolean apart(double ax, double ay, Quad one, Quad two) {
    double length = Math.sqrt(ax * ax + ay * ay);
    if (length == 0) {
      return false;
    }
    double tolerance = 1e-6 * length;
    double[] spanOne = span(ax, ay, one);
    double[] spanTwo = span(ax, ay, two);
    return spanOne[1] <= spanTwo[0] + tolerance || spanTwo[1] <= spanOne[0] + tolerance;
  }

  private static double[] span(double ax, double ay, Quad quad) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Xy p : quad.corners()) {
      double at = p.x() * ax + p.y() * ay;
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    return new double[] {low, high};
  }
}
