package yardloom.materials.calc;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;

/**
 * Volumes, areas, depths and pieces of bulk material.
 *
 * <p>Exact: a cubic yard covers 324/d square feet at d inches (27 · 12), so rounded factors such as
 * 0.0031 are not used; they are 0.44 % high. Counts round up, since nobody sells part of a bag.
 * Zero or negative depths, bags and barrows are OUT_OF_RANGE.
 *
 * <p>References: unit definitions; [1] Cornell Waste Management Institute, How much compost (area ×
 * depth).
 */
public final class BulkVolume {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.computed(
          "How much compost: area × depth", "Cornell Waste Management Institute", 0, "");

  private static final double EPS = 1e-9;

  private BulkVolume() {}

  /** Ground that {@code volume} covers at {@code depth}. */
  public static Area coverage(Volume volume, Length depth) {
    requirePositive(depth.metres(), "depth");
    return Area.squareMetres(volume.cubicMetres() / depth.metres());
  }

  /** Depth at which {@code volume} lies over {@code area}. */
  public static Length depth(Volume volume, Area area) {
    requirePositive(area.squareMetres(), "area");
    return Length.metres(volume.cubicMetres() / area.squareMetres());
  }

  /** Bags, barrows or buckets of {@code each} that hold {@code volume}, rounded up. */
  public static int pieces(Volume volume, Volume each) {
    requirePositive(each.cubicMetres(), "piece");
    return (int) Math.ceil(volume.ratioTo(each) - EPS);
  }

  public static Mass mass(Volume volume, double poundsPerCubicYard) {
    requirePositive(poundsPerCubicYard, "bulk density");
    return Mass.pounds(volume.cubicYards() * poundsPerCubicYard);
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a " + what + " must be more than zero, got " + value);
    }
  }
}
