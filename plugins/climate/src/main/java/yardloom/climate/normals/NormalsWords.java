package yardloom.climate.normals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
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
    Map<String, ClimateNormals> own = new TreeMap<>();
    in.draft()
        .attributes()
        .all(OwnClimates.Named.KEY)
        .forEach(e -> own.put(e.value().name(), e.value().normals()));
    climate(in, ClimateCatalogue.shipped().climate(name, own));
  }

  @Verb(
      help =
          "Takes climates from a table, for `climate` to name: columns climate, place, quantity,"
              + " unit, jan to dec and those of a source, with a row each of rain, max and min (or"
              + " mean and range), and where known wind, dew or humidity, wet days.",
      example =
          "climateBook('climate,place,quantity,unit,jan,feb,mar,apr,may,jun,jul,aug,sep,oct,nov,dec\\n"
              + "' + 'hill,Hill farm,rain,mm,60,50,55,45,40,30,20,25,40,55,65,70\\n"
              + "' + 'hill,Hill farm,mean,degC,3,3,5,8,11,14,16,16,13,9,5,3\\n"
              + "' + 'hill,Hill farm,range,degC,6,7,8,9,9,9,9,9,8,7,6,6')")
  public static void climateBook(
      PlanScope in,
      @Arg(name = "csv", help = "the table, as from fileText('climates.csv')") String csv,
      @Opt(
              name = "windHeight",
              help = "how high above the ground the wind was measured",
              fallback = "2 m (7 ft)")
          Length windHeight,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "climate book")
          String name) {
    double heightM = WeatherWords.windHeightM(in, windHeight);
    OwnTable table = OwnTable.of(in, csv, name, "climate book");
    table.reading(() -> OwnClimates.read(table.name(), csv, heightM).forEach(c -> add(in, c)));
  }

  private static void add(PlanScope in, OwnClimates.Named own) {
    Making.once(
        in,
        own.row(),
        OwnClimates.Named.KEY,
        o -> o.name().equals(own.name()),
        "the climate '" + own.name() + "'");
    in.draft().attributes().add(OwnClimates.Named.KEY, own, in.place());
  }

  @Verb(
      help =
          "Gives the monthly normals of a place that the catalogue does not know, as a weather"
              + " service prints them; January first.",
      example =
          "climateNormals('our town', rain: [60, 50, 55, 45, 40, 30, 20, 25, 40, 55, 65, 70], max:"
              + " [7, 8, 11, 14, 18, 21, 23, 23, 20, 15, 10, 7], min: [1, 1, 3, 5, 8, 11, 13, 13,"
              + " 10, 7, 4, 2], units: 'mm celsius', source: 'weather service, 1991-2020')")
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
      @Opt(
              name = "source",
              help = "who published them, over which years: a text, or a `publication`",
              required = true)
          Object source,
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
    ClimateNormals normals =
        NormalsReader.read(place, rain, max, min, given, WeatherWords.source(in, source));
    AirReader air = new AirReader(normals, given, WeatherWords.windHeightM(in, windHeight));
    climate(in, air.with(wind, dew, humidity, wetDays));
  }

  /** A plan may say otherwise than its regional file, not twice in one file. */
  private static void climate(PlanScope in, ClimateNormals normals) {
    Making.once(in, CLIMATE, c -> true, "the climate");
    in.draft().attributes().add(CLIMATE, normals, in.place());
  }
}
