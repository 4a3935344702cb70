package yardloom.materials.pile;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * The size of a heap tipped on level ground.
 *
 * <p>A cone of base diameter D and height h holds πD²h/12; at the angle of repose θ, h = (D/2) tan
 * θ. A windrow is a triangular prism b·h·L/2 with half a cone at each end. A triangular section
 * underestimates a rounded windrow, a semicircle (h = b/2) is the other convention. Angles strictly
 * between 0° and 80°, lengths and volumes above zero; otherwise OUT_OF_RANGE.
 *
 * <p>References: solid geometry; [1] stockpile table of constructionwork.com (37°), [2] New Jersey
 * Department of Environmental Protection, Leaf composting manual, Appendix A, Table A1.
 */
public final class Pile {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.computed(
          "Stockpile table, cone at the angle of repose", "constructionwork.com", 0, "");

  private Pile() {}

  /** A round heap. */
  public record Cone(Length diameter, Length height) {
    public Volume volume() {
      double d = diameter.metres();
      return Volume.cubicMetres(Math.PI * d * d * height.metres() / 12);
    }
  }

  /**
   * A long heap.
   *
   * @param base width on the ground
   * @param ridge length of the level top; the ends are half cones beyond it
   */
  public record Windrow(Length base, Length height, Length ridge) {
    public Volume volume() {
      double prismM3 = base.metres() * height.metres() * ridge.metres() / 2;
      return Volume.cubicMetres(prismM3).plus(new Cone(base, height).volume());
    }

    /** Length on the ground, ends included. */
    public Length length() {
      return ridge.plus(base);
    }
  }

  public static Cone coneOfHeight(Length height, Angle repose) {
    requirePositive(height.metres(), "height");
    return new Cone(height.times(2 / slope(repose)), height);
  }

  public static Cone coneHolding(Volume volume, Angle repose) {
    requirePositive(volume.cubicMetres(), "volume");
    double tan = slope(repose);
    return coneOfHeight(
        Length.metres(Math.cbrt(3 * volume.cubicMetres() * tan * tan / Math.PI)), repose);
  }

  public static Windrow windrow(Length base, Length ridge, Angle repose) {
    requirePositive(base.metres(), "base");
    return new Windrow(base, base.times(slope(repose) / 2), ridge);
  }

  /**
   * The windrow of {@code base} width that holds {@code volume}; a narrower cone if even no ridge
   * would be needed.
   */
  public static Windrow windrowHolding(Volume volume, Length base, Angle repose) {
    Windrow ends = windrow(base, Length.ZERO, repose);
    double restM3 = volume.cubicMetres() - ends.volume().cubicMetres();
    if (restM3 <= 0) {
      Cone cone = coneHolding(volume, repose);
      return new Windrow(cone.diameter(), cone.height(), Length.ZERO);
    }
    double sectionM2 = base.metres() * ends.height().metres() / 2;
    return new Windrow(base, ends.height(), Length.metres(restM3 / sectionM2));
  }

  private static double slope(Angle repose) {
    if (!(repose.degrees() > 0 && repose.degrees() < 80)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "an angle of repose lies between 0 and 80 degrees, got " + repose.degrees());
    }
    return StrictMath.tan(repose.radians());
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "the " + what + " of a heap must be above zero, got " + value);
    }
  }
}
