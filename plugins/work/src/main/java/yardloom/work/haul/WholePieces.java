package yardloom.work.haul;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;

/**
 * Bags, barrows or buckets that hold a volume: volume / piece, rounded up, since nobody sells part
 * of a bag. A piece of no volume is OUT_OF_RANGE.
 *
 * <p>References: [1] Cornell Waste Management Institute, How much compost (area × depth).
 */
public final class WholePieces {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.computed(
          "How much compost: area × depth", "Cornell Waste Management Institute", 0, "");

  private static final double EPS = 1e-9;

  private WholePieces() {}

  /** Pieces of {@code each} that hold {@code volume}. */
  public static int of(Volume volume, Volume each) {
    if (!(each.cubicMetres() > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a piece must be more than zero, got " + each.cubicMetres());
    }
    return (int) Math.ceil(volume.ratioTo(each) - EPS);
  }
}
