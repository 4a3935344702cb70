package yardloom.kernel.geom;

import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * The ground at a street corner over which drivers must see.
 *
 * <p>A triangle between the corner of the two datum lines and a point on each. The corner is where
 * the straight lines meet, also when the lot itself is cut off or rounded there; codes measure
 * along lot lines, rights of way or curbs, with equal or unequal legs, so all of it is given.
 */
public final class SightTriangle {
  private SightTriangle() {}

  /**
   * The corner of the datum lines, then the ends of both legs; parts of the triangle may lie
   * outside the lot.
   *
   * @param first a straight side, counter-clockwise around the lot
   * @param second the other one
   * @param outside how far outside of the sides the datum lines run
   * @throws PlanException (BAD_SHAPE) if the sides are parallel, (OUT_OF_RANGE) if a leg is not
   *     positive
   */
  public static List<Point> corners(
      Line first, Line second, Length legFirst, Length legSecond, Length outside) {
    if (legFirst.metres() <= 0 || legSecond.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the legs of a sight triangle must be longer than zero, got "
              + legFirst
              + " and "
              + legSecond);
    }
    double[] a = unit(first);
    double[] b = unit(second);
    double cross = a[0] * b[1] - a[1] * b[0];
    if (Math.abs(cross) < 1e-6) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "the two sides of a sight triangle must meet at a street corner; these are parallel, name the two that run up to it");
    }
    // The outside of the lot lies to the right of its sides.
    Point p = first.start().moved(outside.times(a[1]), outside.times(-a[0]));
    Point q = second.start().moved(outside.times(b[1]), outside.times(-b[0]));
    double dx = q.x().minus(p.x()).metres();
    double dy = q.y().minus(p.y()).metres();
    double t = (dx * b[1] - dy * b[0]) / cross;
    Point corner = p.moved(Length.metres(t * a[0]), Length.metres(t * a[1]));
    return List.of(corner, away(corner, first, a, legFirst), away(corner, second, b, legSecond));
  }

  private static double[] unit(Line side) {
    double m = side.start().distance(side.end()).metres();
    return new double[] {
      side.end().x().minus(side.start().x()).metres() / m,
      side.end().y().minus(side.start().y()).metres() / m
    };
  }

  /** From the corner along a side, towards the end that is further away. */
  private static Point away(Point corner, Line side, double[] unit, Length leg) {
    boolean forward = corner.distance(side.end()).compareTo(corner.distance(side.start())) > 0;
    Length along = forward ? leg : leg.negative();
    return corner.moved(along.times(unit[0]), along.times(unit[1]));
  }
}
