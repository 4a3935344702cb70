package yardloom.climate.weather;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that gives a record of daily temperatures. */
public final class WeatherWords {
  /** A weather record of the site or a station near by. */
  public static final AttributeKey<DailyWeather> WEATHER =
      new AttributeKey<>("sun.weather", DailyWeather.class);

  private WeatherWords() {}

  @Verb(
      help = "Gives a weather record, from which frost, hardiness zone, chill and warmth follow.",
      example = "dailyWeather 'date,max,min', source: 'airport station, 1991-2020'")
  public static void dailyWeather(
      PlanScope in,
      @Arg(
              name = "text",
              help =
                  "comma-separated text with the columns date, max, min, as from"
                      + " fileText('station.csv')")
          String text,
      @Opt(name = "source", help = "which station, which years", required = true) String source,
      @Opt(
              name = "unit",
              help = "of the temperatures",
              fallback = "celsius",
              choices = Degrees.class)
          String unit) {
    boolean fahrenheit = Choices.parse(Degrees.class, unit, Degrees.CELSIUS) == Degrees.FAHRENHEIT;
    once(in, WEATHER, DailyWeatherText.read(text, fahrenheit, source), "weather records");
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
