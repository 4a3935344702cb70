package yardloom.materials.mulch.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;

/**
 * Chips to add each year so that the depth as laid comes back.
 *
 * <p>In the first year the layer loses the share s; what is lost is replaced. In later years the
 * share halves each year, because old chips are settled and only rot. A share outside 0 to 0.9 is
 * OUT_OF_RANGE; year 1 is the first after laying.
 *
 * <p>References: none found; first-year losses of 20 to 50 % are from memory, the halving is an
 * assumption printed with the table.
 */
public final class Settling {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.memory(
          "Chips lose 20 to 50 % of depth in the first year; later years assumed half of the year"
              + " before",
          "recalled from gardening practice", 0, "");

  private Settling() {}

  public static Volume addedInYear(int year, Volume laid, double firstYearShare) {
    if (year < 1 || !(firstYearShare >= 0 && firstYearShare <= 0.9)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "settling is a share from 0 to 0.9 in years from 1 on, got " + firstYearShare);
    }
    return laid.times(firstYearShare / (1 << Math.min(year - 1, 30)));
  }
}
