package yardloom.climate.frost;

import java.time.MonthDay;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.climate.weather.WeatherWords;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.vocab.YearDays;

/** The words for frost and hardiness. */
public final class FrostWords {
  private static final Pattern ZONE_TEXT = Pattern.compile("(1[0-3]|[1-9])([ab])");
  private static final Temperature FREEZING = Temperature.celsius(0);
  private static final Temperature COLDEST_LIMIT = Temperature.celsius(-15);
  private static final double MOST_CHILL = 4000;
  private static final Temperature WARMEST_LIMIT = Temperature.celsius(5);

  /** What the plan says about frost, in place of a weather record. */
  static final AttributeKey<FrostGiven> FROST = new AttributeKey<>("sun.frost", FrostGiven.class);

  /** The hardiness zone that the plan gives, such as {@code 5b}. */
  static final AttributeKey<ZoneGiven> ZONE = new AttributeKey<>("sun.zone", ZoneGiven.class);

  /** The chill of a usual winter as the plan gives it. */
  static final AttributeKey<ChillGiven> CHILL =
      new AttributeKey<>("climate.chill", ChillGiven.class);

  private FrostWords() {}

  /** Frost as the plan gives it. */
  record FrostGiven(MonthDay last, MonthDay first, Temperature limit, Source source) {}

  /** The zone as the plan gives it. */
  record ZoneGiven(int number, boolean warmerHalf, Source source) {}

  /** Chill as the plan gives it. */
  record ChillGiven(double hours, Source source) {}

  @Verb(
      help = "Gives the chill of a usual winter, as an extension office or a chill map has it.",
      example = "winterChill 400, source: 'county extension office'")
  public static void winterChill(
      PlanScope in,
      @Arg(name = "hours", help = "hours below 45 °F (7 °C) in a winter, 0 to 4000") Number hours,
      @Opt(
              name = "source",
              help = "who says so: a text, or a `publication`",
              fallback = "the plan's author")
          Object source) {
    double value = hours.doubleValue();
    if (!(value >= 0 && value <= MOST_CHILL)) {
      throw problem(in, "winterChill must be 0 to 4000 hours, got " + hours);
    }
    WeatherWords.once(in, CHILL, new ChillGiven(value, by(in, source)), "hours of chill");
  }

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
      @Opt(
              name = "source",
              help = "who says so: a text, or a `publication`",
              fallback = "the plan's author")
          Object source) {
    MonthDay spring = YearDays.read(in.place(), last);
    MonthDay fall = YearDays.read(in.place(), first);
    if (spring.equals(fall)) {
      throw problem(in, "last and first frost cannot fall on one day, got " + last + " twice");
    }
    Temperature counts = limit == null ? FREEZING : limit;
    if (counts.compareTo(COLDEST_LIMIT) < 0 || counts.compareTo(WARMEST_LIMIT) > 0) {
      throw problem(in, "limit of frost must be from 5 °F (-15 °C) to 41 °F (5 °C), got " + counts);
    }
    WeatherWords.once(
        in, FROST, new FrostGiven(spring, fall, counts, by(in, source)), "frost dates");
  }

  @Verb(
      help = "Gives the plant hardiness zone, as a zone map shows it.",
      example = "hardinessZone '6a', source: 'zone map of 2023'")
  public static void hardinessZone(
      PlanScope in,
      @Arg(name = "zone", help = "1a (coldest) to 13b") String zone,
      @Opt(
              name = "source",
              help = "which map, of what year: a text, or a `publication`",
              fallback = "the plan's author")
          Object source) {
    Matcher read = ZONE_TEXT.matcher(zone);
    if (!read.matches()) {
      throw problem(
          in, "a hardiness zone runs from '1a' to '13b', whole zone and half; got '" + zone + "'");
    }
    boolean warmer = read.group(2).equals("b");
    int number = Integer.parseInt(read.group(1));
    WeatherWords.once(in, ZONE, new ZoneGiven(number, warmer, by(in, source)), "hardiness zone");
  }

  private static Source by(PlanScope in, Object source) {
    return WeatherWords.source(in, source == null ? "the plan's author" : source);
  }

  private static PlanException problem(PlanScope in, String message) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, in.place(), message);
  }
}
