package yardloom.kernel.survey;

import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * Points by a distance along a baseline and a square offset from it.
 *
 * <p>References: plane geometry.
 */
public record Baseline(Point from, Point to) {
  public Baseline {
    if (from.distance(to).metres() < 1e-6) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "a baseline needs two different points, got one twice");
    }
  }

  /**
   * The point at {@code along} from the start, {@code left} to the left of the line's direction; a
   * negative offset lies to its right.
   */
  public Point at(Length along, Length left) {
    double lengthM = from.distance(to).metres();
    double ux = to.x().minus(from.x()).metres() / lengthM;
    double uy = to.y().minus(from.y()).metres() / lengthM;
    return from.moved(
        Length.metres(along.metres() * ux - left.metres() * uy),
        Length.metres(along.metres() * uy + left.metres() * ux));
  }
}
