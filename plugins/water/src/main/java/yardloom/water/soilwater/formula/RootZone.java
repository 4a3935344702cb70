package yardloom.water.soilwater.formula;

import java.util.List;
import yardloom.kernel.unit.Length;
import yardloom.water.timetable.formula.SoilWater;

/**
 * The daily balance of a root zone: rain and irrigation in, crop use and deep percolation out.
 *
 * <p>Depletion begins at 0, field capacity, and follows Dr = Dr₋₁ − P − I + ETc + DP, held from 0
 * to the total; what is more than the soil holds percolates on the same day. Rain of less than a
 * fifth of the day's reference ET is lost to the air. Nothing runs off and nothing rises from
 * below: beds are level and mulched. As roots deepen they reach soil at field capacity; where new
 * ones begin short, what lies below them counts no more. Watering, if any, refills the root zone in
 * the evening of the day on which the easy water is used up.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equations 82 to 88 and the footnote of Table 22, as coded in pyfao56
 * (USDA-ARS).
 */
public final class RootZone {
  /** Least depth of roots (FAO-56 example values for seedlings, from memory). */
  private static final double LEAST_ROOT_M = 0.15;

  private static final double LOST_RAIN = 0.2;

  private RootZone() {}

  /**
   * One day's weather and plant.
   *
   * @param kc crop coefficient without stress
   * @param rootM depth of the roots
   */
  public record Day(double rainMm, double et0Mm, double kc, double rootM) {}

  /**
   * What the days came to; depths in mm.
   *
   * @param useMm what the plants drew
   * @param rainMm rain that reached the soil
   * @param irrigationMm net, in the root zone
   * @param waterings days with irrigation
   * @param percolationMm below the roots
   * @param shortDays days on which plants drew less than they would have
   * @param longestShort most such days in a row
   * @param firstShort the first such day, from 0; −1 if none
   * @param endMm depletion on the last evening
   */
  public record Sum(
      double useMm,
      double rainMm,
      double irrigationMm,
      int waterings,
      double percolationMm,
      int shortDays,
      int longestShort,
      int firstShort,
      double endMm) {}

  /** The depth of roots in a month, by how far the coefficient has risen towards its highest. */
  public static double rootM(double fullM, double kc, double highestSoFar, double highest) {
    if (highest <= 0) {
      return LEAST_ROOT_M;
    }
    double grown = Math.min(1, Math.max(kc, highestSoFar) / highest);
    return Math.max(Math.min(LEAST_ROOT_M, fullM), fullM * grown);
  }

  /**
   * Runs the days.
   *
   * @param available share of the soil's volume that holds water for plants
   * @param easyShare of a day with 5 mm of use
   */
  public static Sum run(List<Day> days, double available, double easyShare, boolean watered) {
    double depletion = 0;
    double use = 0;
    double rain = 0;
    double irrigation = 0;
    int waterings = 0;
    double percolation = 0;
    int shortDays = 0;
    int shortRun = 0;
    int longest = 0;
    int first = -1;
    for (int i = 0; i < days.size(); i++) {
      Day day = days.get(i);
      double fullUse = day.kc * day.et0Mm;
      Length total = SoilWater.total(available, 0, Length.metres(day.rootM));
      double share = SoilWater.easyShare(easyShare, Length.millimetres(fullUse));
      Length ready = SoilWater.ready(total, share);
      double stress = SoilWater.stress(total, ready, Length.millimetres(depletion));
      double fell = day.rainMm < LOST_RAIN * day.et0Mm ? 0 : day.rainMm;
      double within = Math.max(0, total.millimetres() - depletion + fell);
      double actual = Math.min(stress * fullUse, within);
      percolation += Math.max(0, fell - actual - depletion);
      depletion =
          SoilWater.depleted(
                  Length.millimetres(depletion),
                  Length.millimetres(actual),
                  Length.millimetres(fell),
                  total)
              .millimetres();
      use += actual;
      rain += fell;
      if (watered && depletion > 0 && depletion >= ready.millimetres() && fullUse > 0) {
        irrigation += depletion;
        waterings++;
        depletion = 0;
      }
      boolean isShort = stress < 1 && fullUse > 0;
      shortRun = isShort ? shortRun + 1 : 0;
      shortDays += isShort ? 1 : 0;
      longest = Math.max(longest, shortRun);
      first = isShort && first < 0 ? i : first;
    }
    return new Sum(
        use, rain, irrigation, waterings, percolation, shortDays, longest, first, depletion);
  }
}
