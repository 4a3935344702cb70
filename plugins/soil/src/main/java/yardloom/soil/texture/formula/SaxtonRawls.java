package yardloom.soil.texture.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

/**
 * Water held by a soil at wilting point, field capacity and saturation, and its saturated
 * conductivity, from texture and organic matter.
 *
 * <p>Sand and clay are shares 0-1, organic matter is in percent: mixing the two up gives plausible
 * wrong numbers, so percentages for the shares are refused. Fitted for organic matter up to 8 % and
 * clay up to 60 % (limits from memory); outside, OUT_OF_RANGE. Against the paper's own table the
 * water contents agree within half a percent of volume. Density and gravel effects are left out.
 *
 * <p>References: [1] K. E. Saxton, W. J. Rawls, Soil water characteristic estimates by texture and
 * organic matter for hydrologic solutions, Soil Science Society of America Journal 70, 2006, pp.
 * 1569-1578, equations 1-5, 15, 16, 18. (The factor 1.283 is printed as 1.238 in one public code.)
 */
public final class SaxtonRawls {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Soil water characteristic estimates by texture and organic matter",
          "K. E. Saxton and W. J. Rawls, Soil Science Society of America Journal 70:1569",
          2006,
          "equations 1-5, 15, 16, 18");

  private SaxtonRawls() {}

  public static WaterPoints of(double sandShare, double clayShare, double organicPercent) {
    requireRange(sandShare, clayShare, organicPercent);
    double s = sandShare;
    double c = clayShare;
    double om = organicPercent;
    double wiltT =
        -0.024 * s
            + 0.487 * c
            + 0.006 * om
            + 0.005 * s * om
            - 0.013 * c * om
            + 0.068 * s * c
            + 0.031;
    double wilt = wiltT + 0.14 * wiltT - 0.02;
    double fieldT =
        -0.251 * s
            + 0.195 * c
            + 0.011 * om
            + 0.006 * s * om
            - 0.027 * c * om
            + 0.452 * s * c
            + 0.299;
    double field = fieldT + 1.283 * fieldT * fieldT - 0.374 * fieldT - 0.015;
    double freeT =
        0.278 * s
            + 0.034 * c
            + 0.022 * om
            - 0.018 * s * om
            - 0.027 * c * om
            - 0.584 * s * c
            + 0.078;
    double free = freeT + 0.636 * freeT - 0.107;
    double saturated = field + free - 0.097 * s + 0.043;
    double lambda = (StrictMath.log(field) - StrictMath.log(wilt)) / StrictMath.log(1500.0 / 33);
    double mmPerHour = 1930 * StrictMath.pow(saturated - field, 3 - lambda);
    return new WaterPoints(wilt, field, saturated, mmPerHour);
  }

  private static void requireRange(double sandShare, double clayShare, double organicPercent) {
    boolean shares = sandShare >= 0 && clayShare >= 0 && sandShare + clayShare <= 1;
    if (!shares || !(clayShare <= 0.6) || !(organicPercent >= 0 && organicPercent <= 8)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "water points are fitted for sand and clay as shares with a sum of at most 1, clay up to"
              + " 0.6 and organic matter from 0 to 8 percent; got sand "
              + sandShare
              + ", clay "
              + clayShare
              + ", organic matter "
              + organicPercent
              + " %");
    }
  }
}
