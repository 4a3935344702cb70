package yardloom.planting.window.formula;

import java.util.List;

/**
 * Whether a climate has its rain in winter and none to speak of in summer: the driest month of the
 * warmer half year has less than 40 mm (1.6 in) and less than a third of the wettest month of the
 * cooler half.
 *
 * <p>References: M. C. Peel, B. L. Finlayson, T. A. McMahon, Updated world map of the Köppen-Geiger
 * climate classification, 2007, Table 1, letter s, as quoted; the warmer half is the six months of
 * April to September or October to March that are warmer on the mean.
 */
public final class DrySummer {
  private static final double DRY_MM = 40;
  private static final double THIRD = 3;
  private static final int FROM = 3;
  private static final int MONTHS = 6;

  private DrySummer() {}

  /**
   * @param rainMm of the twelve months, January first
   * @param meansC of the same
   */
  public static boolean is(List<Double> rainMm, List<Double> meansC) {
    double north = 0;
    double south = 0;
    for (int m = 0; m < 2 * MONTHS; m++) {
      if (isNorthernSummer(m)) {
        north += meansC.get(m);
      } else {
        south += meansC.get(m);
      }
    }
    double driest = Double.POSITIVE_INFINITY;
    double wettest = 0;
    for (int m = 0; m < 2 * MONTHS; m++) {
      if (isNorthernSummer(m) == north >= south) {
        driest = Math.min(driest, rainMm.get(m));
      } else {
        wettest = Math.max(wettest, rainMm.get(m));
      }
    }
    return driest < DRY_MM && driest < wettest / THIRD;
  }

  private static boolean isNorthernSummer(int month) {
    return month >= FROM && month < FROM + MONTHS;
  }
}
