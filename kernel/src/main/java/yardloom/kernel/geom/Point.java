package yardloom.kernel.geom;

import org.locationtech.jts.geom.Coordinate;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** A place on the plan: x to the right, y up the plan, from the local origin. */
public record Point(Length x, Length y) implements Comparable<Point> {

  public static Point metres(double xM, double yM) {
    return new Point(Length.metres(xM), Length.metres(yM));
  }

  static Point of(Coordinate c) {
    return metres(c.x, c.y);
  }

  public Coordinate coordinate() {
    return new Coordinate(x.metres(), y.metres());
  }

  public Length distance(Point other) {
    return Length.metres(Math.hypot(x.metres() - other.x.metres(), y.metres() - other.y.metres()));
  }

  public Point moved(Length right, Length up) {
    return new Point(x.plus(right), y.plus(up));
  }

  /** Turned counter-clockwise about {@code centre}. */
  public Point turned(Angle by, Point centre) {
    double cos = StrictMath.cos(by.radians());
    double sin = StrictMath.sin(by.radians());
    double dx = x.minus(centre.x).metres();
    double dy = y.minus(centre.y).metres();
    return centre.moved(Length.metres(dx * cos - dy * sin), Length.metres(dx * sin + dy * cos));
  }

  /** The straight line from here to {@code other}. */
  public Line to(Point other) {
    return Line.between(this, other);
  }

  /** Order by x, then y; used only to make output repeatable. */
  @Override
  public int compareTo(Point other) {
    int byX = x.compareTo(other.x);
    return byX != 0 ? byX : y.compareTo(other.y);
  }
}
