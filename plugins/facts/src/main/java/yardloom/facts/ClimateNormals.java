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
 */
public record ClimateNormals(
    String place, List<Month> months, Source source, Source temperatureRangeSource) {
  public ClimateNormals {
    months = List.copyOf(months);
    if (months.size() != 12) {
      throw new IllegalArgumentException("normals need 12 months, got " + months.size());
    }
  }

  /** The mean daily maximum of the hottest month; empty where no month has one. */
  public Optional<Temperature> hottestDays() {
    return months.stream().flatMap(m -> m.dailyMax().stream()).max(Comparator.naturalOrder());
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
}
