package yardloom.facts;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.source.Source;

/**
 * Solar radiation on level open ground, in MJ per square metre and day.
 *
 * @param extraterrestrial above the air (Ra) on each month's middle day, January to December
 * @param clearSky at the ground under a clear sky (Rso), on the same days
 * @param method the formula of {@code clearSky}
 * @param skies the clear air of each month, for the sun at any height
 * @param given what the plan states for the ground with usual cloud (Rs)
 */
public record SolarRadiation(
    List<Double> extraterrestrial,
    List<Double> clearSky,
    String method,
    List<Sky> skies,
    Source source,
    Optional<Given> given) {
  public SolarRadiation {
    extraterrestrial = twelve(extraterrestrial);
    clearSky = twelve(clearSky);
    skies = twelve(skies);
  }

  /**
   * Clear air of a month, through which the sun shines.
   *
   * @param normalMjPerHour above the air on a surface square to the sun, MJ per square metre and
   *     hour
   * @param pressureKpa mean pressure of the air at the ground
   * @param waterMm water in the column of air, as a depth
   */
  public record Sky(double normalMjPerHour, double pressureKpa, double waterMm) {}

  /** Monthly means of global radiation that the plan states, January to December. */
  public record Given(List<Double> monthly, Source source) {
    public Given {
      monthly = twelve(monthly);
    }
  }

  private static <T> List<T> twelve(List<T> months) {
    if (months.size() != 12) {
      throw new IllegalArgumentException("radiation needs 12 months, got " + months.size());
    }
    return List.copyOf(months);
  }
}
