package yardloom.kernel.unit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The units that scripts may write and sheets may show, each with its exact factor to SI.
 *
 * <p>{@code si = value * factor + offset}. Factors are exact by definition: the international foot
 * is 0.3048 m, the US survey foot 1200/3937 m, the avoirdupois pound 0.45359237 kg, the US gallon
 * 231 cubic inches, the pound-force uses standard gravity 9.80665 m/s².
 *
 * <p>References: [1] NIST Special Publication 811, Guide for the Use of the International System of
 * Units, 2008, Appendix B. [2] NIST, U.S. Survey Foot: Revised Unit Conversion Factors, 2022.
 */
public enum Unit {
  METRE(Dimension.LENGTH, "m", "m", 1, "metre", "metres", "meter", "meters"),
  CENTIMETRE(Dimension.LENGTH, "cm", "cm", 0.01, "centimetres", "centimeters"),
  MILLIMETRE(Dimension.LENGTH, "mm", "mm", 0.001, "millimetres", "millimeters"),
  KILOMETRE(Dimension.LENGTH, "km", "km", 1000),
  FOOT(Dimension.LENGTH, "ft", "ft", Unit.FT, "foot", "feet"),
  INCH(Dimension.LENGTH, "in", "inch", Unit.FT / 12, "inches", "in"),
  YARD(Dimension.LENGTH, "yd", "yd", Unit.FT * 3, "yard", "yards"),
  SURVEY_FOOT(Dimension.LENGTH, "ft(US)", "usft", 1200.0 / 3937.0),
  CHAIN(Dimension.LENGTH, "ch", "ch", Unit.FT * 66),
  LINK(Dimension.LENGTH, "li", "li", Unit.FT * 0.66),
  ROD(Dimension.LENGTH, "rd", "rd", Unit.FT * 16.5),

  SQUARE_METRE(Dimension.AREA, "m²", "sqm", 1, "m2", "m²"),
  SQUARE_FOOT(Dimension.AREA, "sq ft", "sqft", Unit.FT * Unit.FT, "ft2", "ft²"),
  SQUARE_YARD(Dimension.AREA, "sq yd", "sqyd", Unit.FT * Unit.FT * 9, "yd2", "yd²"),
  HECTARE(Dimension.AREA, "ha", "ha", 10_000, "hectare", "hectares"),
  ACRE(Dimension.AREA, "acre", "acre", Unit.FT * Unit.FT * 43_560, "acres"),

  CUBIC_METRE(Dimension.VOLUME, "m³", "m3", 1, "cum", "m³"),
  LITRE(Dimension.VOLUME, "L", "L", 0.001, "l", "litre", "litres", "liter", "liters"),
  CUBIC_FOOT(Dimension.VOLUME, "cu ft", "ft3", Unit.FT3, "cuft", "ft³"),
  CUBIC_YARD(Dimension.VOLUME, "cu yd", "yd3", Unit.FT3 * 27, "cuyd", "yd³"),
  GALLON(Dimension.VOLUME, "gal", "gal", Unit.FT3 / 1728 * 231, "gallon", "gallons"),

  KILOGRAM(Dimension.MASS, "kg", "kg", 1),
  GRAM(Dimension.MASS, "g", "g", 0.001),
  TONNE(Dimension.MASS, "t", "t", 1000, "tonne", "tonnes"),
  POUND(Dimension.MASS, "lb", "lb", Unit.LB, "lbs", "pound", "pounds"),
  OUNCE(Dimension.MASS, "oz", "oz", Unit.LB / 16, "ounce", "ounces"),
  SHORT_TON(Dimension.MASS, "ton", "ton", Unit.LB * 2000, "tons"),

  RADIAN(Dimension.ANGLE, "rad", "rad", 1),
  DEGREE(Dimension.ANGLE, "°", "deg", Math.PI / 180, "degree", "degrees"),

  CUBIC_METRE_PER_SECOND(Dimension.FLOW, "m³/s", "m3s", 1),
  LITRE_PER_HOUR(Dimension.FLOW, "L/h", "lph", 0.001 / 3600),
  LITRE_PER_MINUTE(Dimension.FLOW, "L/min", "lpm", 0.001 / 60),
  GALLON_PER_MINUTE(Dimension.FLOW, "gpm", "gpm", Unit.FT3 / 1728 * 231 / 60),
  GALLON_PER_HOUR(Dimension.FLOW, "gph", "gph", Unit.FT3 / 1728 * 231 / 3600),

  PASCAL(Dimension.PRESSURE, "Pa", "Pa", 1),
  KILOPASCAL(Dimension.PRESSURE, "kPa", "kPa", 1000),
  BAR(Dimension.PRESSURE, "bar", "bar", 100_000),
  POUND_PER_SQUARE_INCH(
      Dimension.PRESSURE, "psi", "psi", Unit.LB * 9.80665 / (Unit.FT * Unit.FT / 144)),

  KELVIN(Dimension.TEMPERATURE, "K", "K", 1),
  CELSIUS(Dimension.TEMPERATURE, "°C", "degC", 1, 273.15),
  FAHRENHEIT(Dimension.TEMPERATURE, "°F", "degF", 5.0 / 9.0, 273.15 - 32 * 5.0 / 9.0),

  SECOND(Dimension.DURATION, "s", "s", 1, "seconds"),
  MINUTE(Dimension.DURATION, "min", "min", 60, "minute", "minutes"),
  HOUR(Dimension.DURATION, "h", "h", 3600, "hour", "hours", "hr"),
  DAY(Dimension.DURATION, "d", "days", 86_400, "day"),
  WEEK(Dimension.DURATION, "wk", "weeks", 604_800, "week"),

  /** Money in the plan's own currency; the plan says how to print it. */
  MONEY_UNIT(Dimension.MONEY, "", "money", 1);

  private static final double FT = 0.3048;
  private static final double FT3 = FT * FT * FT;
  private static final double LB = 0.45359237;

  private final Dimension dimension;
  private final String symbol;
  private final String word;
  private final double factor;
  private final double offset;
  private final List<String> also;

  Unit(Dimension dimension, String symbol, String word, double factor, String... also) {
    this(dimension, symbol, word, factor, 0, also);
  }

  Unit(
      Dimension dimension,
      String symbol,
      String word,
      double factor,
      double offset,
      String... also) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.word = word;
    this.factor = factor;
    this.offset = offset;
    this.also = List.of(also);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The symbol that sheets and tables print, such as {@code sq ft}. */
  public String symbol() {
    return symbol;
  }

  /** The name that scripts write after a number, such as {@code sqft} in {@code 600.sqft}. */
  public String word() {
    return word;
  }

  /** The SI value of {@code value} in this unit. */
  public double toSi(double value) {
    return value * factor + offset;
  }

  /** The value in this unit of an SI value. */
  public double fromSi(double si) {
    return (si - offset) / factor;
  }

  /** Other spellings that scripts and tables may use, such as {@code litre} and {@code liter}. */
  public List<String> also() {
    return also;
  }

  /** The unit that scripts call {@code word}, by its own word or another spelling. */
  public static Optional<Unit> byWord(String word) {
    return Arrays.stream(values())
        .filter(u -> u.word.equals(word) || u.also.contains(word))
        .findFirst();
  }

  /** The words of one dimension for messages: {@code cm, ft, inch …}. */
  public static String words(Dimension dimension) {
    return of(dimension).stream().map(Unit::word).collect(Collectors.joining(", "));
  }

  /** All words by dimension for messages: {@code length: cm, ft …; area: …}. */
  public static String words() {
    return Arrays.stream(Dimension.values())
        .map(d -> d.word() + ": " + words(d))
        .collect(Collectors.joining("; "));
  }

  /** All units of one dimension, in the order of their script words. */
  public static List<Unit> of(Dimension dimension) {
    return Arrays.stream(values())
        .filter(u -> u.dimension == dimension)
        .sorted(Comparator.comparing(Unit::word))
        .toList();
  }
}
