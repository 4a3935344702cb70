package yardloom.kernel.geom;

import org.locationtech.jts.geom.Coordinate;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
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

  /**
   * Mirrored in the straight line through two points.
   *
   * @throws PlanException (BAD_SHAPE) if the two are one
   */
  public Point mirrored(Point from, Point to) {
    double ux = to.x.minus(from.x).metres();
    double uy = to.y.minus(from.y).metres();
    double length2 = ux * ux + uy * uy;
    if (length2 == 0) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "a line to mirror in needs two different points");
    }
    double along = (x.minus(from.x).metres() * ux + y.minus(from.y).metres() * uy) / length2;
    Point foot = from.moved(Length.metres(along * ux), Length.metres(along * uy));
    return foot.moved(foot.x.minus(x), foot.y.minus(y));
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
