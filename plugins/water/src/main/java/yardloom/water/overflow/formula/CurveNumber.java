package yardloom.water.overflow.formula;

import java.util.List;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * Runoff of one storm by the curve number method.
 *
 * <p>S = 1000/CN − 10 inches; Q = (P − λS)² / (P + (1 − λ)S) above P = λS, else nothing. λ is 0.2
 * in the handbook; 0.05 is a later proposal for which S should be fitted anew. Valid for CN above 0
 * up to 100; made for storms of a day on small catchments.
 *
 * <p>Runoff is not linear in CN: where roofs and lawns mix, add the runoff of each instead of
 * averaging their numbers.
 *
 * <p>References: [1] USDA NRCS, TR-55, Urban Hydrology for Small Watersheds, 1986, equations 2-1 to
 * 2-4. [2] USGS, Soil-Water-Balance code documentation, Appendix 1, equations 1-4 to 1-6.
 */
public final class CurveNumber {
  /** Share of the retention that fills before runoff starts, in the handbook. */
  public static final double HANDBOOK_LOSS = 0.2;

  /** Ground of one kind. */
  public record Patch(Area area, double curveNumber) {}

  private CurveNumber() {}

  /** The most that the ground can hold back. */
  public static Length retention(double curveNumber) {
    if (!(curveNumber > 0 && curveNumber <= 100)) {
      throw new IllegalArgumentException(
          "a curve number lies above 0 and up to 100, got " + curveNumber);
    }
    return Length.inches(1000 / curveNumber - 10);
  }

  public static Length runoff(Length rain, double curveNumber) {
    return runoff(rain, curveNumber, HANDBOOK_LOSS);
  }

  public static Length runoff(Length rain, double curveNumber, double lossShare) {
    double s = retention(curveNumber).inches();
    double p = rain.inches();
    if (p <= lossShare * s) {
      return Length.ZERO;
    }
    double over = p - lossShare * s;
    return Length.inches(over * over / (p + (1 - lossShare) * s));
  }

  /** The area-weighted number; see the class comment for when not to use it. */
  public static double composite(List<Patch> patches) {
    double area = patches.stream().mapToDouble(x -> x.area.squareMetres()).sum();
    if (area <= 0) {
      throw new IllegalArgumentException("a composite needs some area");
    }
    return patches.stream().mapToDouble(x -> x.area.squareMetres() * x.curveNumber).sum() / area;
  }

  /** The mean runoff of ground of several kinds, each running off by itself. */
  public static Length weightedRunoff(Length rain, List<Patch> patches) {
    double area = patches.stream().mapToDouble(x -> x.area.squareMetres()).sum();
    if (area <= 0) {
      throw new IllegalArgumentException("runoff needs some area");
    }
    double volume =
        patches.stream()
            .mapToDouble(x -> x.area.deep(runoff(rain, x.curveNumber)).cubicMetres())
            .sum();
    return Length.metres(volume / area);
  }
}
