package yardloom.climate.normals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Temperature;

/**
 * Monthly normals as a plan states them: twelve plain numbers each of rain, daily maximum and daily
 * minimum. The mean of a month is the middle of both.
 *
 * <p>Errors: PlanException (WRONG_TYPE, OUT_OF_RANGE, CONTRADICTION) without a place, naming row
 * and month.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equation 9 (mean of maximum and minimum).
 */
public final class NormalsReader {
  /** No place has more in a mean month. */
  private static final Length MOST_RAIN = Length.metres(4);

  private static final Temperature COLDEST = Temperature.celsius(-60);
  private static final Temperature HOTTEST = Temperature.celsius(55);

  /** In what the numbers are. */
  public enum Units {
    MM_CELSIUS,
    INCH_FAHRENHEIT
  }

  private NormalsReader() {}

  /** The normals of {@code place}. */
  public static ClimateNormals read(
      String place, List<?> rain, List<?> max, List<?> min, Units units, Source source) {
    List<Double> rains = numbers("rain", rain);
    List<Double> highs = numbers("max", max);
    List<Double> lows = numbers("min", min);
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      Temperature high = temperature("max", m, highs.get(m), units);
      Temperature low = temperature("min", m, lows.get(m), units);
      if (low.compareTo(high) > 0) {
        throw new PlanException(
            ProblemCode.CONTRADICTION,
            "`min:` of "
                + Months.name(m)
                + ", "
                + lows.get(m)
                + ", is above `max:`, "
                + highs.get(m)
                + "; check both rows");
      }
      months.add(
          new ClimateNormals.Month(
              rain(m, rains.get(m), units),
              Temperature.kelvins((high.kelvins() + low.kelvins()) / 2),
              Optional.of(high),
              Optional.of(low)));
    }
    return new ClimateNormals(place, months, source, source);
  }

  static List<Double> numbers(String row, List<?> given) {
    if (given.size() != 12) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "`" + row + ":` takes 12 values, January to December, got " + given.size());
    }
    List<Double> numbers = new ArrayList<>();
    for (Object value : given) {
      if (!(value instanceof Number number)) {
        throw new PlanException(
            ProblemCode.WRONG_TYPE,
            "`" + row + ":` takes plain numbers, got '" + value + "'; `units:` says what they are");
      }
      numbers.add(number.doubleValue());
    }
    return numbers;
  }

  private static Length rain(int month, double value, Units units) {
    boolean isMetric = units == Units.MM_CELSIUS;
    Length rain = isMetric ? Length.millimetres(value) : Length.inches(value);
    if (!(value >= 0 && rain.compareTo(MOST_RAIN) <= 0)) {
      throw outOfRange("rain", month, value, isMetric ? "0 to 4000 mm" : "0 to 157 in");
    }
    return rain;
  }

  static Temperature temperature(String row, int month, double value, Units units) {
    boolean isMetric = units == Units.MM_CELSIUS;
    // Absolute zero and below cannot be made a temperature, so the numbers are looked at first.
    double celsius = isMetric ? value : (value - 32) / 1.8;
    if (!(celsius >= COLDEST.celsius() - 1e-9 && celsius <= HOTTEST.celsius() + 1e-9)) {
      throw outOfRange(row, month, value, isMetric ? "-60 to 55 °C" : "-76 to 131 °F");
    }
    return isMetric ? Temperature.celsius(value) : Temperature.fahrenheit(value);
  }

  static PlanException outOfRange(String row, int month, double value, String allowed) {
    return new PlanException(
        ProblemCode.OUT_OF_RANGE,
        "`"
            + row
            + ":` of "
            + Months.name(month)
            + " must be "
            + allowed
            + ", got "
            + value
            + "; check `units:`");
  }
}
