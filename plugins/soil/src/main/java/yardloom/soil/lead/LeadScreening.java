package yardloom.soil.lead;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

/**
 * How a measured lead content of garden soil stands to the US screening levels.
 *
 * <p>200 ppm for residential soil, 100 ppm where there are other sources of lead, formerly 400 ppm.
 * Screening levels say where to look closer; they are not clean-up standards. Negative or undefined
 * contents are OUT_OF_RANGE.
 *
 * <p>References: [1] US Environmental Protection Agency, Updated Residential Soil Lead Guidance, 17
 * January 2024.
 */
public final class LeadScreening {
  /** Printed beside the results, with the year of the guidance. */
  public static final Source SOURCE =
      Source.read(
          "Updated Residential Soil Lead Guidance",
          "US Environmental Protection Agency",
          2024,
          "17 January 2024");

  private LeadScreening() {}

  /** The outcome, mild to grave. */
  public enum Outcome {
    BELOW,
    /** Below 200, above the level that holds with other sources of lead. */
    BELOW_UNLESS_OTHER_SOURCES,
    ABOVE,
    /** Above even the level before 2024. */
    ABOVE_FORMER_LEVEL
  }

  public static Outcome of(double ppm, boolean otherSources) {
    if (!(ppm >= 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a lead content in ppm is zero or more, got " + ppm);
    }
    if (ppm > 400) {
      return Outcome.ABOVE_FORMER_LEVEL;
    }
    if (ppm > 200 || (otherSources && ppm > 100)) {
      return Outcome.ABOVE;
    }
    return ppm > 100 ? Outcome.BELOW_UNLESS_OTHER_SOURCES : Outcome.BELOW;
  }
}
