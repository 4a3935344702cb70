package yardloom.kernel.survey;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * A first position for an adjustment: two circles meet in two points, and one must be chosen.
 *
 * <p>References: plane geometry: where two circles meet.
 */
final class TapeStart {
  private TapeStart() {}

  static Point find(List<TapeFix.Tape> tapes, Optional<Point> near) {
    TapeFix.Tape a = tapes.get(0);
    TapeFix.Tape b = furthestFrom(a, tapes);
    Point left = meet(a, b, 1);
    Point right = meet(a, b, -1);
    if (near.isPresent()) {
      return left.distance(near.get()).compareTo(right.distance(near.get())) <= 0 ? left : right;
    }
    double misfitLeft = misfit(tapes, left);
    double misfitRight = misfit(tapes, right);
    boolean flat = left.distance(right).metres() < 1e-6;
    if (!flat && Math.abs(misfitLeft - misfitRight) < 1e-6 * (1 + misfitLeft + misfitRight)) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          "the tapes fit on both sides of the line from "
              + a.name()
              + " to "
              + b.name()
              + "; say roughly where the point is with `near:`");
    }
    return misfitLeft <= misfitRight ? left : right;
  }

  private static TapeFix.Tape furthestFrom(TapeFix.Tape a, List<TapeFix.Tape> tapes) {
    TapeFix.Tape best = tapes.get(1);
    for (TapeFix.Tape tape : tapes) {
      if (tape.from().distance(a.from()).compareTo(best.from().distance(a.from())) > 0) {
        best = tape;
      }
    }
    if (best.from().distance(a.from()).metres() < 1e-6) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, "all tapes start at the same point; one more point is needed");
    }
    return best;
  }

  /** Where the two circles meet, left (+1) or right (-1) of the line from a to b. */
  private static Point meet(TapeFix.Tape a, TapeFix.Tape b, int side) {
    double ax = a.from().x().metres();
    double ay = a.from().y().metres();
    double dx = b.from().x().metres() - ax;
    double dy = b.from().y().metres() - ay;
    double d = Math.hypot(dx, dy);
    double ra = a.distance().metres();
    double rb = b.distance().metres();
    double along = (ra * ra - rb * rb + d * d) / (2 * d);
    double away = side * Math.sqrt(Math.max(0, ra * ra - along * along));
    return Point.metres(ax + (along * dx - away * dy) / d, ay + (along * dy + away * dx) / d);
  }

  private static double misfit(List<TapeFix.Tape> tapes, Point at) {
    double sum = 0;
    for (TapeFix.Tape tape : tapes) {
      double v = at.distance(tape.from()).minus(tape.distance()).ratioTo(tape.error());
      sum += v * v;
    }
    return sum;
  }
}
