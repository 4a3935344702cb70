package yardloom.kernel.ground;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * A shallow ditch of trapezoid section.
 *
 * <p>References: [1] Stormwater Center, grassed swale slides: side slopes 2:1 at most, 3:1
 * preferred; bottom 2 to 8 ft; 1 to 2 % along.
 *
 * @param sides run over rise of both sides; 3 means 3:1
 */
public record Swale(Length bottom, Length depth, double sides) {
  /** The steepest side that holds. */
  public static final double STEEPEST = 2;

  public Swale {
    if (bottom.metres() < 0 || depth.metres() <= 0 || !(sides >= 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a swale needs a positive depth and no negative bottom or side slope, got "
              + depth
              + ", "
              + bottom
              + " and "
              + sides);
    }
  }

  /** (b + s d) d. */
  public Area section() {
    return bottom.plus(depth.times(sides)).by(depth);
  }

  /** Its width at the top. */
  public Length top() {
    return bottom.plus(depth.times(2 * sides));
  }

  /** What it holds when level, and the earth dug for it. */
  public Volume volume(Length length) {
    return section().deep(length);
  }
}
