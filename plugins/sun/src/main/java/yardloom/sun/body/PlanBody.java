package yardloom.sun.body;

import java.util.List;

/** A convex body in plan metres: x to the right, y up the plan, height above the plan's zero. */
public sealed interface PlanBody {
  /**
   * A polyhedron.
   *
   * @param corners x, y and height of each
   * @param faces corner numbers, counter-clockwise seen from outside
   */
  record Hull(double[][] corners, List<int[]> faces) implements PlanBody {}

  /** An upright ellipsoid of revolution. */
  record Egg(double x, double y, double bottomM, double topM, double radiusM) implements PlanBody {}
}
