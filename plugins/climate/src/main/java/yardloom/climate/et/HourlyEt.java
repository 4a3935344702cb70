package yardloom.climate.et;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.climate.et.formula.StandardizedEt.Surface;
import yardloom.climate.radiation.formula.SolarHour;
import yardloom.climate.weather.HourlyWeather;
import yardloom.kernel.plan.Site;
import yardloom.kernel.unit.Length;

/** Reference evapotranspiration of days, summed over their hours. */
final class HourlyEt {
  private static final int WHOLE_DAY = 24;

  /** A clear night, until the first high sun tells otherwise. */
  private static final double CLEAR = 1;

  private HourlyEt() {}

  /** Of all days with 24 hours; never negative. */
  static SortedMap<LocalDate, Length> days(Site site, HourlyWeather weather, Surface surface) {
    SortedMap<LocalDate, double[]> sums = new TreeMap<>();
    double cloud = CLEAR;
    for (SortedMap.Entry<LocalDateTime, HourlyWeather.Hour> entry : weather.hours().entrySet()) {
      AirOfHour air = air(site, entry.getKey(), entry.getValue());
      cloud = air.cloud(cloud);
      double[] sum = sums.computeIfAbsent(entry.getKey().toLocalDate(), d -> new double[2]);
      sum[0] += air.mmPerHour(surface, cloud);
      sum[1]++;
    }
    SortedMap<LocalDate, Length> days = new TreeMap<>();
    sums.forEach(
        (date, sum) -> {
          if (sum[1] == WHOLE_DAY) {
            days.put(date, Length.millimetres(Math.max(0, sum[0])));
          }
        });
    return days;
  }

  static AirOfHour air(Site site, LocalDateTime begins, HourlyWeather.Hour hour) {
    ZoneOffset standard =
        site.zone().getRules().getStandardOffset(begins.toInstant(ZoneOffset.UTC));
    double middleUtc =
        begins.getHour() + begins.getMinute() / 60.0 + 0.5 - standard.getTotalSeconds() / 3600.0;
    SolarHour sun =
        SolarHour.of(
            site.latitude().radians(),
            site.longitude().degrees(),
            begins.getDayOfYear(),
            middleUtc);
    return new AirOfHour(
        sun, site.elevation().metres(), hour.airC(), hour.dewC(), hour.windMs(), hour.solarMj());
  }
}
