package yardloom.planting.placing.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * Shares a bed among several plants: cuts at right angles to its long side, in the order given.
 *
 * <p>A share is a part of the bed's length; on a rectangle also of its area. Plants without a share
 * divide evenly what the others leave. Shares below 1 in total leave the end of the bed free.
 *
 * <p>References: common practice, no source.
 */
public final class BedShares {
  private static final double SLACK = 1e-9;

  private BedShares() {}

  /**
   * One piece for each share.
   *
   * @throws PlanException (OUT_OF_RANGE) without a place, if a share is not above 0 and up to 1, or
   *     all together exceed 1 or leave nothing for those without
   */
  public static List<Shape> cut(Shape bed, List<Optional<Double>> shares) {
    double given = shares.stream().flatMap(Optional::stream).mapToDouble(s -> s).sum();
    long open = shares.stream().filter(Optional::isEmpty).count();
    for (Optional<Double> share : shares) {
      if (share.isPresent() && !(share.get() > 0 && share.get() <= 1)) {
        throw outOfRange("a share must be above 0 and at most 1, got " + share.get());
      }
    }
    if (given > 1 + SLACK || open > 0 && given > 1 - SLACK) {
      throw outOfRange(
          "the shares of this bed add up to "
              + given
              + (open > 0 ? " and leave nothing for the other plants" : "")
              + "; together they may be at most 1");
    }
    if (shares.size() == 1 && given + open > 1 - SLACK) {
      return List.of(bed);
    }
    LongAxis axis = LongAxis.of(bed);
    List<Shape> pieces = new ArrayList<>();
    double from = 0;
    for (Optional<Double> share : shares) {
      double to = from + share.orElse((1 - given) / Math.max(1, open));
      pieces.add(axis.slice(part(axis, from, -1), part(axis, to, 1)));
      from = to;
    }
    return List.copyOf(pieces);
  }

  /** The cut at {@code share}; the two ends lie beyond the bed, so that no sliver is lost. */
  private static Length part(LongAxis axis, double share, int outward) {
    boolean atEnd = outward < 0 ? share < SLACK : share > 1 - SLACK;
    Length cut = axis.length().times(share);
    return atEnd ? cut.plus(Length.metres(outward)) : cut;
  }

  private static PlanException outOfRange(String message) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, message);
  }
}
