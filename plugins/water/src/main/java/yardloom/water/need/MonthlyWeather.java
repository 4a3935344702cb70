package yardloom.water.need;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Length;

/**
 * What the air takes and the rain gives, January to December, as depths of a whole month.
 *
 * @param referenceEt evapotranspiration of short grass
 * @param effectiveRain the part of the rain that plants can use
 * @param method how {@code referenceEt} was found, for notes
 * @param rainBy how {@code effectiveRain} was found
 */
public record MonthlyWeather(
    List<Derived<Length>> referenceEt,
    List<Derived<Length>> effectiveRain,
    String method,
    EffectiveRain rainBy) {
  /** The key of the fact. */
  public static final FactKey<MonthlyWeather> KEY =
      FactKey.one("water.weather", MonthlyWeather.class).called("weather by month");

  public MonthlyWeather {
    referenceEt = List.copyOf(referenceEt);
    effectiveRain = List.copyOf(effectiveRain);
  }
}
