package yardloom.kernel.survey;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * A point found from tapes to known points (trilateration).
 *
 * <p>With two tapes the circles are intersected and nothing is checked. With more, the weighted sum
 * of squared residuals is minimised by Gauss-Newton; residuals are computed minus observed. The
 * standard errors use the standard deviation of unit weight that the residuals show. A normalised
 * residual is a residual divided by its own expected standard error; the largest one points at the
 * likeliest blunder, provided there are two tapes more than needed (with one, all are alike).
 *
 * <p>References: [1] J. Mahun, Open Access Surveying Library, Least Squares Lite, chapter H. [2] W.
 * Baarda, A testing procedure for use in geodetic networks, Netherlands Geodetic Commission, 1968
 * (normalised residuals; from memory).
 *
 * @param residuals one per tape, in order, computed minus observed
 * @param normalised one per tape; empty where a tape is not checked by the others
 * @param freedom tapes beyond the two that are needed; 0 means unchecked
 * @param unitWeight standard deviation of unit weight, empty without redundancy
 * @param errorX standard error of x, empty without redundancy
 */
public record TapeFix(
    Point at,
    List<Tape> tapes,
    List<Length> residuals,
    List<OptionalDouble> normalised,
    int freedom,
    OptionalDouble unitWeight,
    Optional<Length> errorX,
    Optional<Length> errorY) {

  /** A normalised residual above this is worth measuring again; common practice. */
  public static final double SUSPECT = 3;

  /** A steel or fibreglass tape over a yard, pulled by one person; common practice. */
  public static final Length USUAL_ERROR = Length.millimetres(20);

  /**
   * One tape.
   *
   * @param name how the report calls the point it was held at
   * @param error its expected standard error
   */
  public record Tape(String name, Point from, Length distance, Length error) {
    public Tape {
      if (distance.metres() <= 0 || error.metres() <= 0) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "the tape from "
                + name
                + " needs a positive length and expected error, got "
                + distance
                + " and "
                + error);
      }
    }
  }

  public TapeFix {
    tapes = List.copyOf(tapes);
    residuals = List.copyOf(residuals);
    normalised = List.copyOf(normalised);
  }

  /**
   * Finds the point.
   *
   * @param near a rough position, which tells on which side of the known points it lies
   * @throws PlanException (MISSING_OPTION) if there are fewer than two tapes, or the side cannot be
   *     told; (CONTRADICTION) naming the two tapes that cannot meet
   */
  public static TapeFix of(List<Tape> tapes, Optional<Point> near) {
    if (tapes.size() < 2) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          "a point needs tapes from at least two known points, got " + tapes.size());
    }
    requireFeasible(tapes);
    return TapeAdjustment.adjust(tapes, TapeStart.find(tapes, near));
  }

  /** Whether the tapes check each other at all. */
  public boolean isChecked() {
    return freedom > 0;
  }

  /**
   * The tape with the largest normalised residual if that exceeds {@link #SUSPECT} and there are
   * enough tapes to tell which is wrong.
   */
  public Optional<Tape> suspect() {
    int worst = -1;
    for (int i = 0; i < tapes.size(); i++) {
      double w = Math.abs(normalised.get(i).orElse(0));
      if (w > SUSPECT && (worst < 0 || w > Math.abs(normalised.get(worst).orElse(0)) + 1e-9)) {
        worst = i;
      }
    }
    return worst < 0 || freedom < 2 ? Optional.empty() : Optional.of(tapes.get(worst));
  }

  /** The largest normalised residual, without sign. */
  public double worst() {
    return normalised.stream().mapToDouble(w -> Math.abs(w.orElse(0))).max().orElse(0);
  }

  private static void requireFeasible(List<Tape> tapes) {
    for (int i = 0; i < tapes.size(); i++) {
      for (int j = i + 1; j < tapes.size(); j++) {
        requireFeasible(tapes.get(i), tapes.get(j), tapes.size() == 2);
      }
    }
  }

  private static void requireFeasible(Tape a, Tape b, boolean onlyTwo) {
    double betweenM = a.from().distance(b.from()).metres();
    double ra = a.distance().metres();
    double rb = b.distance().metres();
    // More than two tapes share out their small errors; two must meet.
    double slackM = onlyTwo ? 1e-9 : 4 * Math.hypot(a.error().metres(), b.error().metres());
    if (betweenM < 1e-6) {
      if (onlyTwo) {
        throw new PlanException(
            ProblemCode.CONTRADICTION,
            "the tapes from " + a.name() + " and " + b.name() + " start at the same point");
      }
      return;
    }
    if (ra + rb < betweenM - slackM) {
      throw apart(a, b, betweenM, "too short to meet");
    }
    if (Math.abs(ra - rb) > betweenM + slackM) {
      throw apart(a, b, betweenM, "of too different length to meet");
    }
  }

  private static PlanException apart(Tape a, Tape b, double betweenM, String how) {
    return new PlanException(
        ProblemCode.CONTRADICTION,
        String.format(
            Locale.ROOT,
            "the tapes from %s (%s) and %s (%s) are %s; these points are %s apart. Measure one of"
                + " them again",
            a.name(),
            show(a.distance()),
            b.name(),
            show(b.distance()),
            how,
            show(Length.metres(betweenM))));
  }

  private static String show(Length value) {
    return String.format(Locale.ROOT, "%.3f m = %.2f ft", value.metres(), value.feet());
  }
}
