package yardloom.soil.compost.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;

/**
 * Mass of bulk material: volume × bulk density. A density that is not above zero is OUT_OF_RANGE.
 *
 * <p>References: unit definitions; [1] Cornell Waste Management Institute, How much compost (area ×
 * depth).
 */
public final class BulkMass {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.computed(
          "How much compost: area × depth", "Cornell Waste Management Institute", 0, "");

  private BulkMass() {}

  public static Mass of(Volume volume, double poundsPerCubicYard) {
    if (!(poundsPerCubicYard > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a bulk density must be more than zero, got " + poundsPerCubicYard);
    }
    return Mass.pounds(volume.cubicYards() * poundsPerCubicYard);
  }
}
