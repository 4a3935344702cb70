package yardloom.soil.compost.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;
import yardloom.soil.texture.formula.Range;

/**
 * What is left of a heap when it has rotted down.
 *
 * <p>Finished volume = start × (1 − loss). Losses are weakly sourced practice ranges: half to three
 * quarters for a mixed home heap. A loss outside 0 to below 1 is OUT_OF_RANGE.
 *
 * <p>References: [1] home-composting pages (50-75 % typical, weak).
 */
public final class Shrinkage {
  /** Share of volume that a mixed home heap loses. */
  public static final Range HOME_HEAP =
      new Range(
          0.5,
          0.75,
          Source.read("Home compost heaps lose 50-75 % of volume", "gardening pages", 0, "weak"));

  private Shrinkage() {}

  public static Volume finished(Volume start, double loss) {
    if (!(loss >= 0 && loss < 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a loss of volume is a share from 0 to below 1, got " + loss);
    }
    return start.times(1 - loss);
  }
}
