package yardloom.water.need.formula;

import java.util.List;
import yardloom.kernel.unit.Length;

/**
 * Watering of new plants through the first 45 days: often and little at first, then less often and
 * more.
 *
 * <p>Each watering brings what the days until the next one take, so that the sum of all is the use
 * of all days. New plants in mulched ground take their table's coefficient, at least that of small
 * vegetables in their first stage.
 *
 * <p>References: [1] University of Minnesota Extension, Watering newly planted trees and shrubs
 * (daily in weeks 1 and 2, every 2 to 3 days in weeks 3 to 12). [2] Allen, Pereira, Raes, Smith,
 * Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, 1998, Table 12, small vegetables,
 * initial 0.7 (from memory). [3] 45 days: common practice, most water in the first 30 to 45 days.
 */
public final class Taper {
  /** Coefficient of new plants at least. */
  public static final double LEAST_KC = 0.7;

  /** How often in which days, the first being 1. */
  public record Step(int from, int until, int everyDays) {
    public int days() {
      return until - from + 1;
    }

    /** All of them last equally long. */
    public int waterings() {
      return days() / everyDays;
    }
  }

  /** In order, without gaps. */
  public static final List<Step> STEPS =
      List.of(new Step(1, 14, 1), new Step(15, 30, 2), new Step(31, 45, 3));

  /** From planting to the end of the last of them. */
  public static final int DAYS = STEPS.get(STEPS.size() - 1).until();

  private Taper() {}

  /** The net depth of one watering that lasts some days. */
  public static Length depth(double kc, Length referenceEtOfDay, int lastsDays) {
    return referenceEtOfDay.times(Math.max(LEAST_KC, kc) * lastsDays);
  }
}
