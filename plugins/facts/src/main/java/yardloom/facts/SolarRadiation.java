package yardloom.facts;

import java.util.List;
import yardloom.kernel.source.Source;

/**
 * Solar radiation on level open ground on each month's mean day, in MJ per square metre and day.
 *
 * @param extraterrestrial above the air (Ra), January to December
 * @param clearSky at the ground under a clear sky (Rso), January to December
 * @param method the formula of {@code clearSky}
 */
public record SolarRadiation(
    List<Double> extraterrestrial, List<Double> clearSky, String method, Source source) {
  public SolarRadiation {
    extraterrestrial = List.copyOf(extraterrestrial);
    clearSky = List.copyOf(clearSky);
    if (extraterrestrial.size() != 12 || clearSky.size() != 12) {
      throw new IllegalArgumentException("radiation needs 12 months");
    }
  }
}
