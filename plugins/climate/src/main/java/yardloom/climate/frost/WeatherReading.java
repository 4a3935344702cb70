package yardloom.climate.frost;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.climate.frost.formula.FreezeRecord;
import yardloom.climate.frost.formula.HardinessZone;
import yardloom.climate.frost.formula.WeatherYears;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;

/** What a plan's weather record gives as facts. For a record with at least one complete year. */
final class WeatherReading {
  private static final double[] SHARES = {0.1, 0.5, 0.9};
  private static final double[] LIMITS_F = {32, 28, 24};
  private static final Source FREEZES =
      Source.computed(
          "Freeze Date Tool: percentiles of the years' dates; 24 July parts spring from fall",
          "Midwestern Regional Climate Center; Utah Climate Center",
          0,
          "");
  private static final Source ZONES =
      Source.computed(
          "Plant hardiness zones: 10 °F wide from -60 °F, halves of 5 °F",
          "USDA Agricultural Research Service",
          2023,
          "planthardiness.ars.usda.gov");
  private static final Source CHILL =
      Source.computed(
          "About chilling units", "University of California, Davis, Fruit and Nut Research", 0, "");
  private static final Source WARMTH =
      Source.computed("Agronomy 541, lesson 2b", "Iowa State University", 0, "");

  private final WeatherYears years;
  private final String station;

  WeatherReading(WeatherYears years, String station) {
    this.years = years;
    this.station = station;
  }

  /** The usual dates; empty where half of the years or more have no frost. */
  Optional<FrostDates> frost() {
    FreezeRecord record = years.freezes(0);
    Optional<MonthDay> last = record.lastOfSpring(0.5);
    Optional<MonthDay> first = record.firstOfFall(0.5);
    return last.flatMap(
        l ->
            first.map(
                f ->
                    new FrostDates(
                        by("day by which half of the years had their last frost", FREEZES).gives(l),
                        by("day by which half of the years had their first frost", FREEZES)
                            .gives(f),
                        Temperature.celsius(0))));
  }

  /** The zone; empty outside the scale. */
  Optional<Hardiness> hardiness() {
    Temperature lowest = years.meanLowest();
    return HardinessZone.of(lowest) instanceof HardinessZone.Zone zone
        ? Optional.of(
            new Hardiness(
                zone.number(),
                zone.half() == 'b',
                Optional.of(lowest),
                Source.plan("zone of the mean yearly minimum at " + station)))
        : Optional.empty();
  }

  ColdAndWarmth all() {
    Derived<Temperature> lowest =
        by("mean of the years' lowest temperatures", ZONES).gives(years.meanLowest());
    return new ColdAndWarmth(
        freezeRows(),
        years.years().size(),
        lowest,
        Derived.by("half zones of 5 °F from -60 °F", ZONES)
            .from("mean of the years' lowest temperatures", lowest)
            .gives(zoneText(lowest.value())),
        chill("hours below 45 °F").gives(years.chillHours()),
        chill("hours from 32 to 45 °F").gives(years.chillHoursAboveFreezing()),
        chill("Utah units").gives(years.utahUnits()),
        by("sum of day means above 50 °F over a year", WARMTH).gives(years.degreeDays()),
        by("sum by the 86/50 method over a year", WARMTH).gives(years.modifiedDegreeDays()),
        station);
  }

  private List<ColdAndWarmth.FreezeRow> freezeRows() {
    List<ColdAndWarmth.FreezeRow> rows = new ArrayList<>();
    for (double limit : LIMITS_F) {
      FreezeRecord record = years.freezes(Math.rint((limit - 32) * 5 / 9 * 1e6) / 1e6);
      List<Optional<MonthDay>> spring = new ArrayList<>();
      List<Optional<MonthDay>> fall = new ArrayList<>();
      for (double share : SHARES) {
        spring.add(record.lastOfSpring(share));
        fall.add(record.firstOfFall(share));
      }
      rows.add(new ColdAndWarmth.FreezeRow(Temperature.fahrenheit(limit), spring, fall));
    }
    return rows;
  }

  private static String zoneText(Temperature lowest) {
    HardinessZone zone = HardinessZone.of(lowest);
    if (zone instanceof HardinessZone.Zone inside) {
      return inside.text();
    }
    return zone instanceof HardinessZone.BelowScale ? "colder than zone 1a" : "warmer than 13b";
  }

  private Derived.Builder chill(String what) {
    return by(
        what
            + " from November to February (south: May to August), hours by cosine waves"
            + " between the days' extremes",
        CHILL);
  }

  private Derived.Builder by(String formula, Source source) {
    return Derived.by(formula, source)
        .from("weather record", station)
        .from("complete years", years.years().size());
  }
}
