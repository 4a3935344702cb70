package yardloom.climate.weather;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that gives a record of daily temperatures. */
public final class WeatherWords {
  /** A weather record of the site or a station near by. */
  public static final AttributeKey<DailyWeather> WEATHER =
      new AttributeKey<>("sun.weather", DailyWeather.class);

  /** Hours of weather at the site or a station near by. */
  public static final AttributeKey<HourlyWeather> HOURS =
      new AttributeKey<>("climate.hours", HourlyWeather.class);

  private WeatherWords() {}

  @Verb(
      help =
          "Gives a weather record, from which frost, hardiness zone, chill, warmth and the water"
              + " that the air takes follow.",
      example = "dailyWeather 'date,max,min', source: 'airport station, 1991-2020'")
  public static void dailyWeather(
      PlanScope in,
      @Arg(
              name = "text",
              help =
                  "comma-separated text with the columns date, max, min and, where measured, dew,"
                      + " wind_ms or wind_mph, solar_mj or solar_kwh, as from"
                      + " fileText('station.csv')")
          String text,
      @Opt(name = "source", help = "which station, which years", required = true) String source,
      @Opt(
              name = "unit",
              help = "of the temperatures",
              fallback = "celsius",
              choices = Degrees.class)
          String unit,
      @Opt(
              name = "windHeight",
              help = "how high above the ground the wind was measured",
              fallback = "2 m (7 ft)")
          Length windHeight) {
    double heightM = windHeightM(in, windHeight);
    boolean fahrenheit = Choices.parse(Degrees.class, unit, Degrees.CELSIUS) == Degrees.FAHRENHEIT;
    once(in, WEATHER, DailyWeatherText.read(text, fahrenheit, heightM, source), "weather records");
  }

  @Verb(
      help =
          "Gives hours of weather, by which the water that the air takes is reckoned hour by hour.",
      example = "hourlyWeather 'time,temp,dew,wind_ms,solar_mj', source: 'own station, 2025'")
  public static void hourlyWeather(
      PlanScope in,
      @Arg(
              name = "text",
              help =
                  "comma-separated text with the columns time (beginning of the hour, standard"
                      + " time), temp, dew, wind_ms or wind_mph, solar_mj or solar_kwh")
          String text,
      @Opt(name = "source", help = "which station, which days", required = true) String source,
      @Opt(
              name = "unit",
              help = "of the temperatures",
              fallback = "celsius",
              choices = Degrees.class)
          String unit,
      @Opt(
              name = "windHeight",
              help = "how high above the ground the wind was measured",
              fallback = "2 m (7 ft)")
          Length windHeight) {
    double heightM = windHeightM(in, windHeight);
    boolean fahrenheit = Choices.parse(Degrees.class, unit, Degrees.CELSIUS) == Degrees.FAHRENHEIT;
    once(in, HOURS, HourlyWeatherText.read(text, fahrenheit, heightM, source), "hours of weather");
  }

  /** The height of a wind gauge in metres, 2 where nothing is said. */
  public static double windHeightM(PlanScope in, Length height) {
    if (height == null) {
      return 2;
    }
    if (height.metres() < 1 || height.metres() > 100) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`windHeight:` is 1 m (3 ft) to 100 m (328 ft) above the ground, got "
              + Say.size(height));
    }
    return height.metres();
  }

  /** What stands behind {@code source:}, a text or a publication. */
  public static Source source(PlanScope in, Object given) {
    try {
      return Source.given(given);
    } catch (IllegalArgumentException e) {
      throw new PlanException(ProblemCode.WRONG_TYPE, in.place(), e.getMessage());
    }
  }

  /** Units of temperature in records. */
  public enum Degrees {
    CELSIUS,
    FAHRENHEIT
  }

  /** Refuses a second statement in one file; a plan may say otherwise than its regional file. */
  public static <T> void once(PlanScope in, AttributeKey<T> key, T value, String what) {
    if (in.draft().attributes().saidInFile(key, in.place(), v -> true).isPresent()) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), what + " are already given; a yard has one set");
    }
    in.draft().attributes().add(key, value, in.place());
  }
}
