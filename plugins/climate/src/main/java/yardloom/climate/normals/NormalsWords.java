package yardloom.climate.normals;

import java.util.List;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words that name or give the monthly normals of the yard. */
public final class NormalsWords {
  /** The climate of the yard, from the catalogue or given in the plan. */
  static final AttributeKey<ClimateNormals> CLIMATE =
      new AttributeKey<>("water.climate", ClimateNormals.class);

  private NormalsWords() {}

  @Verb(
      help = "Names the climate whose monthly normals hold for the yard.",
      example = "climate 'urbana-il'")
  public static void climate(
      PlanScope in, @Arg(name = "name", help = "a climate of the catalogue") String name) {
    climate(in, ClimateCatalogue.shipped().climate(name));
  }

  @Verb(
      help =
          "Gives the monthly normals of a place that the catalogue does not know, as a weather"
              + " service prints them; January first.",
      example =
          "climateNormals('our town', rain: [60, 50, 55, 45, 40, 30, 20, 25, 40, 55, 65, 70], max: [7,"
              + " 8, 11, 14, 18, 21, 23, 23, 20, 15, 10, 7], min: [1, 1, 3, 5, 8, 11, 13, 13, 10, 7,"
              + " 4, 2], units: 'mm celsius', source: 'weather service, 1991-2020')")
  public static void climateNormals(
      PlanScope in,
      @Arg(name = "place", help = "what place the figures describe") String place,
      @Opt(name = "rain", help = "total of each month", required = true) List<?> rain,
      @Opt(name = "max", help = "mean daily maximum of each month", required = true) List<?> max,
      @Opt(name = "min", help = "mean daily minimum of each month", required = true) List<?> min,
      @Opt(
              name = "units",
              help = "of rain and temperature",
              required = true,
              choices = NormalsReader.Units.class)
          String units,
      @Opt(name = "source", help = "who published them, over which years", required = true)
          String source,
      @Opt(
              name = "wind",
              help = "mean of each month, m/s with mm celsius, mph with inch fahrenheit",
              fallback = "2 m/s (4.5 mph) all year")
          List<?> wind,
      @Opt(
              name = "windHeight",
              help = "how high above the ground the wind was measured",
              fallback = "2 m (7 ft)")
          Length windHeight,
      @Opt(
              name = "dew",
              help = "mean dew point of each month",
              fallback = "the mean minimum, 2 °C (3.6 °F) less in dry places")
          List<?> dew,
      @Opt(
              name = "humidity",
              help = "mean relative humidity of each month in percent, instead of the dew point",
              fallback = "none")
          List<?> humidity,
      @Opt(
              name = "wetDays",
              help = "days of each month with 0.01 in (0.25 mm) of rain or more",
              fallback = "one for each 8 mm (0.31 in) of rain")
          List<?> wetDays) {
    NormalsReader.Units given = Choices.parse(NormalsReader.Units.class, units);
    ClimateNormals normals = NormalsReader.read(place, rain, max, min, given, Source.plan(source));
    AirReader air = new AirReader(normals, given, WeatherWords.windHeightM(in, windHeight));
    climate(in, air.with(wind, dew, humidity, wetDays));
  }

  /** A plan may say otherwise than its regional file, not twice in one file. */
  private static void climate(PlanScope in, ClimateNormals normals) {
    Making.once(in, CLIMATE, c -> true, "the climate");
    in.draft().attributes().add(CLIMATE, normals, in.place());
  }
}
