package yardloom.climate.frost;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Temperature;

/**
 * What a weather record tells about cold and warmth; means over its complete years.
 *
 * @param freezes from the lightest limit to the hardest
 * @param years how many years were complete
 * @param zone of the mean lowest temperature, or words where it lies outside the scale
 */
public record ColdAndWarmth(
    List<FreezeRow> freezes,
    int years,
    Derived<Temperature> meanLowest,
    Derived<String> zone,
    Derived<Double> chillHours,
    Derived<Double> chillHoursAboveFreezing,
    Derived<Double> utahUnits,
    Derived<Double> degreeDays,
    Derived<Double> modifiedDegreeDays,
    String source) {
  /** The plugin's own fact; frost and zone are in the shared ones. */
  public static final FactKey<ColdAndWarmth> KEY =
      FactKey.one("sun.cold", ColdAndWarmth.class).called("frost and hardiness");

  public ColdAndWarmth {
    freezes = List.copyOf(freezes);
  }

  /**
   * Freezes of one limit: days by which a tenth, half and nine tenths of the years had their last
   * freeze of spring, and their first of fall; empty where that share of years has none.
   */
  public record FreezeRow(
      Temperature limit, List<Optional<MonthDay>> spring, List<Optional<MonthDay>> fall) {
    public FreezeRow {
      spring = List.copyOf(spring);
      fall = List.copyOf(fall);
    }
  }
}
