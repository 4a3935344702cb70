package yardloom.facts;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.source.Source;

/**
 * Solar radiation on level open ground, in MJ per square metre and day.
 *
 * @param extraterrestrial above the air (Ra) on each month's mean day, January to December
 * @param clearSky at the ground under a clear sky (Rso), on the same days
 * @param method the formula of {@code clearSky}
 * @param given what the plan states for the ground with usual cloud (Rs)
 */
public record SolarRadiation(
    List<Double> extraterrestrial,
    List<Double> clearSky,
    String method,
    Source source,
    Optional<Given> given) {
  public SolarRadiation {
    extraterrestrial = twelve(extraterrestrial);
    clearSky = twelve(clearSky);
  }

  /** Monthly means of global radiation that the plan states, January to December. */
  public record Given(List<Double> monthly, Source source) {
    public Given {
      monthly = twelve(monthly);
    }
  }

  private static List<Double> twelve(List<Double> months) {
    if (months.size() != 12) {
      throw new IllegalArgumentException("radiation needs 12 months, got " + months.size());
    }
    return List.copyOf(months);
  }
}
