package yardloom.facts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;

/**
 * Monthly means at the site.
 *
 * @param place what place the figures describe
 * @param months January to December
 * @param temperatureRangeSource where the daily range of temperature comes from; often another
 *     source than the means
 * @param air wind and vapour of the air, as far as they are known
 */
public record ClimateNormals(
    String place, List<Month> months, Source source, Source temperatureRangeSource, Air air) {
  private static final Temperature FREEZING = Temperature.celsius(0);

  public ClimateNormals {
    months = List.copyOf(months);
    if (months.size() != 12) {
      throw new IllegalArgumentException("normals need 12 months, got " + months.size());
    }
  }

  /** Normals of rain and temperature alone. */
  public ClimateNormals(
      String place, List<Month> months, Source source, Source temperatureRangeSource) {
    this(place, months, source, temperatureRangeSource, Air.UNKNOWN);
  }

  /** The mean temperature of each month, in degrees Celsius. */
  public List<Double> meansC() {
    return months.stream().map(m -> m.mean().celsius()).toList();
  }

  /** The mean daily maximum of the hottest month; empty where no month has one. */
  public Optional<Temperature> hottestDays() {
    return months.stream().flatMap(m -> m.dailyMax().stream()).max(Comparator.naturalOrder());
  }

  /** Whether the mean of the coldest month is below freezing. */
  public boolean hasFrozenWinters() {
    return months.stream().anyMatch(m -> m.mean().compareTo(FREEZING) < 0);
  }

  /**
   * One month.
   *
   * @param rain total depth of the month
   * @param mean mean temperature
   * @param dailyMax mean daily maximum, where known
   * @param dailyMin mean daily minimum, where known
   */
  public record Month(
      Length rain,
      Temperature mean,
      Optional<Temperature> dailyMax,
      Optional<Temperature> dailyMin) {}

  /**
   * What else the air brings, January to December.
   *
   * @param windMs mean wind at 2 m, metres per second; empty where unknown
   * @param dewPoints mean dew point; empty where unknown
   * @param wetDays days with 0.01 in (0.25 mm) of rain or more; empty where unknown
   * @param wetDaySource who counted them; of no matter where they are unknown
   */
  public record Air(
      List<Double> windMs, List<Temperature> dewPoints, List<Double> wetDays, Source wetDaySource) {
    /** Where only rain and temperature are known. */
    public static final Air UNKNOWN =
        new Air(List.of(), List.of(), List.of(), Source.commonPractice("not known"));

    public Air {
      windMs = noneOrTwelve(windMs);
      dewPoints = noneOrTwelve(dewPoints);
      wetDays = noneOrTwelve(wetDays);
    }

    private static <T> List<T> noneOrTwelve(List<T> months) {
      if (!months.isEmpty() && months.size() != 12) {
        throw new IllegalArgumentException("normals need 12 months, got " + months.size());
      }
      return List.copyOf(months);
    }
  }
}
