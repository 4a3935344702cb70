package yardloom.sun;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.sun.data.DailyWeatherText;
import yardloom.sun.model.SunKeys;

/** The words for frost, cold and radiation at the site. */
public final class ClimateWords {
  private static final Pattern ZONE = Pattern.compile("(1[0-3]|[1-9])([ab])");
  private static final Temperature FREEZING = Temperature.celsius(0);
  private static final Temperature COLDEST_LIMIT = Temperature.celsius(-15);
  private static final Temperature WARMEST_LIMIT = Temperature.celsius(5);

  private static final double MJ_PER_KWH = 3.6;

  /** A little more than a clear day anywhere on earth brings. */
  private static final double MOST_MJ = 45;

  private ClimateWords() {}

  @Verb(
      help = "Says when frost is usual, as a local table or the weather service gives it.",
      example = "frost last: '04-25', first: '10-14', source: 'state climatologist, county table'")
  public static void frost(
      PlanScope in,
      @Opt(name = "last", help = "usual last frost of spring, month-day", required = true)
          String last,
      @Opt(name = "first", help = "usual first frost of autumn, month-day", required = true)
          String first,
      @Opt(name = "limit", help = "what counts as frost, -15 to 5 °C", fallback = "32 °F (0 °C)")
          Temperature limit,
      @Opt(name = "source", help = "who says so", fallback = "the plan's author") String source) {
    MonthDay spring = YearDays.read(in.place(), last);
    MonthDay fall = YearDays.read(in.place(), first);
    if (spring.equals(fall)) {
      throw problem(in, "last and first frost cannot fall on one day, got " + last + " twice");
    }
    Temperature counts = limit == null ? FREEZING : limit;
    if (counts.compareTo(COLDEST_LIMIT) < 0 || counts.compareTo(WARMEST_LIMIT) > 0) {
      throw problem(in, "limit of frost must be from 5 °F (-15 °C) to 41 °F (5 °C), got " + counts);
    }
    once(
        in, SunKeys.FROST, new SunKeys.FrostGiven(spring, fall, counts, by(source)), "frost dates");
  }

  @Verb(
      help = "Gives the plant hardiness zone, as a zone map shows it.",
      example = "hardinessZone '6a', source: 'zone map of 2023'")
  public static void hardinessZone(
      PlanScope in,
      @Arg(name = "zone", help = "1a (coldest) to 13b") String zone,
      @Opt(name = "source", help = "which map, of what year", fallback = "the plan's author")
          String source) {
    Matcher read = ZONE.matcher(zone);
    if (!read.matches()) {
      throw problem(
          in, "a hardiness zone runs from '1a' to '13b', whole zone and half; got '" + zone + "'");
    }
    boolean warmer = read.group(2).equals("b");
    int number = Integer.parseInt(read.group(1));
    once(in, SunKeys.ZONE, new SunKeys.ZoneGiven(number, warmer, by(source)), "hardiness zone");
  }

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
    once(in, SunKeys.WEATHER, DailyWeatherText.read(text, fahrenheit, source), "weather records");
  }

  /** Units of temperature in records. */
  public enum Degrees {
    CELSIUS,
    FAHRENHEIT
  }

  @Verb(
      help = "Gives measured sunlight by month, cloud included, for daily light and water need.",
      example =
          "solarRadiation([1.9, 2.7, 3.6, 4.7, 5.7, 6.3, 6.2, 5.5, 4.6, 3.3, 2.1, 1.6], source:"
              + " 'nearest station')")
  public static void solarRadiation(
      PlanScope in,
      @Arg(name = "months", help = "global radiation on level ground a day, January to December")
          List<?> months,
      @Opt(name = "source", help = "who measured it, over which years", required = true)
          String source,
      @Opt(
              name = "unit",
              help = "of a square metre and day",
              fallback = "kwh",
              choices = Energy.class)
          String unit) {
    boolean kwh = Choices.parse(Energy.class, unit, Energy.KWH) == Energy.KWH;
    List<Double> megajoules = new ArrayList<>();
    for (Object month : months) {
      if (!(month instanceof Number number)) {
        throw problem(in, "solarRadiation takes 12 plain numbers, got '" + month + "'");
      }
      double value = number.doubleValue() * (kwh ? MJ_PER_KWH : 1);
      if (!(value >= 0 && value <= MOST_MJ)) {
        throw problem(
            in,
            "radiation must be from 0 to 12.5 kWh (45 MJ) per square metre and day, got "
                + month
                + "; check the unit");
      }
      megajoules.add(value);
    }
    if (megajoules.size() != 12) {
      throw problem(in, "solarRadiation takes 12 monthly values, got " + megajoules.size());
    }
    once(
        in,
        SunKeys.RADIATION,
        new SolarRadiation.Given(megajoules, Source.plan(source)),
        "radiation values");
  }

  /** Units of a day's radiation on a square metre. */
  public enum Energy {
    KWH,
    MJ
  }

  @Verb(
      help = "Says how much winter chill a fruit tree asks for, as the nursery gives it.",
      example = "chillNeed 800")
  public static void chillNeed(
      TreeScope in,
      @Arg(name = "hours", help = "hours below 45 °F (7 °C) in a winter, 0 to 2500") Number hours) {
    double value = hours.doubleValue();
    if (!(value >= 0 && value <= 2500)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, in.place(), "chillNeed must be 0 to 2500 hours, got " + hours);
    }
    in.element().attributes().add(SunKeys.CHILL, value, in.place());
  }

  private static String by(String source) {
    return source == null ? "the plan's author" : source;
  }

  /** Refuses a second statement in one file; a plan may say otherwise than its regional file. */
  private static <T> void once(PlanScope in, AttributeKey<T> key, T value, String what) {
    if (in.draft().attributes().saidInFile(key, in.place(), v -> true).isPresent()) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), what + " are already given; a yard has one set");
    }
    in.draft().attributes().add(key, value, in.place());
  }

  private static PlanException problem(PlanScope in, String message) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, in.place(), message);
  }
}
