package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * Gauss-Newton for the two coordinates of one point. See {@link TapeFix} for the method.
 *
 * <p>References: see {@link TapeFix}.
 */
final class TapeAdjustment {
  private static final int MOST_STEPS = 100;
  private static final double STEP_M = 1e-11;

  private TapeAdjustment() {}

  static TapeFix adjust(List<TapeFix.Tape> tapes, Point start) {
    double x = start.x().metres();
    double y = start.y().metres();
    Normal normal = normal(tapes, x, y);
    // Two tapes that just touch leave nothing to adjust.
    for (int step = 0; step < MOST_STEPS && tapes.size() > 2; step++) {
      normal.requireRegular();
      double dx = (normal.yy * normal.bx - normal.xy * normal.by) / normal.det();
      double dy = (normal.xx * normal.by - normal.xy * normal.bx) / normal.det();
      x += dx;
      y += dy;
      normal = normal(tapes, x, y);
      if (Math.hypot(dx, dy) < STEP_M) {
        break;
      }
    }
    return result(tapes, x, y, normal);
  }

  /** The normal equations N d = b for a step d, weights 1/error². */
  private record Normal(double xx, double xy, double yy, double bx, double by, double vpv) {
    double det() {
      return xx * yy - xy * xy;
    }

    void requireRegular() {
      if (!(det() > 1e-12 * (xx + yy) * (xx + yy))) {
        throw new PlanException(
            ProblemCode.CONTRADICTION,
            "the tapes all pull in one direction, so they fix the point along it but not across;"
                + " add a tape from the side");
      }
    }
  }

  private static Normal normal(List<TapeFix.Tape> tapes, double x, double y) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double bx = 0;
    double by = 0;
    double vpv = 0;
    for (TapeFix.Tape tape : tapes) {
      double[] row = row(tape, x, y);
      double p = 1 / (tape.error().metres() * tape.error().metres());
      xx += p * row[0] * row[0];
      xy += p * row[0] * row[1];
      yy += p * row[1] * row[1];
      bx -= p * row[0] * row[2];
      by -= p * row[1] * row[2];
      vpv += p * row[2] * row[2];
    }
    return new Normal(xx, xy, yy, bx, by, vpv);
  }

  /** Direction cosines of a tape, and its residual. */
  private static double[] row(TapeFix.Tape tape, double x, double y) {
    double dx = x - tape.from().x().metres();
    double dy = y - tape.from().y().metres();
    double d = Math.hypot(dx, dy);
    if (d < 1e-9) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "the tapes put the point on " + tape.name() + ", from where one was pulled");
    }
    return new double[] {dx / d, dy / d, d - tape.distance().metres()};
  }

  private static TapeFix result(List<TapeFix.Tape> tapes, double x, double y, Normal n) {
    int freedom = tapes.size() - 2;
    List<Length> residuals = new ArrayList<>();
    List<OptionalDouble> normalised = new ArrayList<>();
    for (TapeFix.Tape tape : tapes) {
      double[] row = row(tape, x, y);
      residuals.add(Length.metres(row[2]));
      normalised.add(freedom == 0 ? OptionalDouble.empty() : normalised(tape, row, n));
    }
    double unit = freedom == 0 ? 0 : Math.sqrt(n.vpv() / freedom);
    return new TapeFix(
        Point.metres(x, y),
        tapes,
        residuals,
        normalised,
        freedom,
        freedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(unit),
        error(freedom, unit, n.yy() / n.det()),
        error(freedom, unit, n.xx() / n.det()));
  }

  private static Optional<Length> error(int freedom, double unit, double cofactor) {
    return freedom == 0 ? Optional.empty() : Optional.of(Length.metres(unit * Math.sqrt(cofactor)));
  }

  /** v / √(σ² − a N⁻¹ aᵀ); empty if the others do not check this tape. */
  private static OptionalDouble normalised(TapeFix.Tape tape, double[] row, Normal n) {
    double fit =
        (n.yy() * row[0] * row[0] - 2 * n.xy() * row[0] * row[1] + n.xx() * row[1] * row[1])
            / n.det();
    double variance = tape.error().metres() * tape.error().metres();
    double left = variance - fit;
    return left < 1e-9 * variance
        ? OptionalDouble.empty()
        : OptionalDouble.of(row[2] / Math.sqrt(left));
  }
}
