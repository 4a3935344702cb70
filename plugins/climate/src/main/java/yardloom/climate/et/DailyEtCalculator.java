package yardloom.climate.et;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.climate.et.formula.Air;
import yardloom.climate.et.formula.Hargreaves;
import yardloom.climate.et.formula.StandardizedEt.Surface;
import yardloom.climate.radiation.formula.SolarDay;
import yardloom.climate.weather.DailyWeather;
import yardloom.climate.weather.HourlyWeather;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.DailyEt;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.unit.Length;

/**
 * Gives reference evapotranspiration of each day of the plan's weather records: by the standardized
 * equation where the day has its hours or its radiation, else by Hargreaves. Nothing without a site
 * or a record.
 */
public final class DailyEtCalculator implements Calculator {
  @Override
  public String id() {
    return "climate.daily-et";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.DAILY_ET);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    if (plan.site().isEmpty()) {
      return;
    }
    Site site = plan.site().get();
    Optional<HourlyWeather> hours = plan.said(WeatherWords.HOURS).map(Entry::value);
    Optional<DailyWeather> record = plan.said(WeatherWords.WEATHER).map(Entry::value);
    boolean isDry = in.find(YardFacts.CLIMATE).map(c -> EtCalculator.isDry(site, c)).orElse(false);
    SortedMap<LocalDate, Length> grass = new TreeMap<>();
    SortedMap<LocalDate, Length> tall = new TreeMap<>();
    List<String> methods = new ArrayList<>();
    record.ifPresent(r -> methods.add(days(site, r, isDry, grass, tall)));
    // Hours know more of a day than its extremes do.
    hours.ifPresent(
        h -> {
          grass.putAll(HourlyEt.days(site, h, Surface.SHORT));
          tall.putAll(HourlyEt.days(site, h, Surface.TALL));
          methods.add("the same hour by hour on whole days of " + h.source());
        });
    if (!grass.isEmpty()) {
      out.give(YardFacts.DAILY_ET, new DailyEt(grass, tall, String.join("; ", methods)));
    }
  }

  private static String days(
      Site site,
      DailyWeather record,
      boolean isDry,
      SortedMap<LocalDate, Length> grass,
      SortedMap<LocalDate, Length> tall) {
    boolean whole = true;
    for (SortedMap.Entry<LocalDate, DailyWeather.Day> entry : record.days().entrySet()) {
      LocalDate date = entry.getKey();
      DailyWeather.Day day = entry.getValue();
      if (day.solarMj().isPresent()) {
        AirOfDay air = air(site, date.getDayOfYear(), day, isDry);
        double solarMj = day.solarMj().getAsDouble();
        grass.put(date, Length.millimetres(air.mmPerDay(Surface.SHORT, solarMj)));
        tall.put(date, Length.millimetres(air.mmPerDay(Surface.TALL, solarMj)));
      } else {
        whole = false;
        grass.put(date, Length.millimetres(hargreaves(site, date.getDayOfYear(), day)));
      }
    }
    return (whole
            ? "the ASCE standardized equation, day by day"
            : "the ASCE standardized equation on days with radiation, Hargreaves on the others")
        + ", from "
        + record.source();
  }

  private static double hargreaves(Site site, int dayOfYear, DailyWeather.Day day) {
    SolarDay sun = SolarDay.of(site.latitude().radians(), dayOfYear);
    double meanC = (day.maxC() + day.minC()) / 2;
    return Hargreaves.et0MmPerDay(meanC, day.maxC(), day.minC(), sun.radiationMm());
  }

  private static AirOfDay air(Site site, int dayOfYear, DailyWeather.Day day, boolean isDry) {
    return new AirOfDay(
        site.latitude().radians(),
        site.elevation().metres(),
        dayOfYear,
        day.maxC(),
        day.minC(),
        day.dewC().orElse(Air.dewPointByMinimum(day.minC(), isDry)),
        day.windMs().orElse(MonthlyEt.USUAL_WIND_MS),
        0);
  }
}
