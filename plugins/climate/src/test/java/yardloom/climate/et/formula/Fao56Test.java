package yardloom.climate.et.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.climate.radiation.formula.SolarDay;

/** The worked examples of FAO Irrigation and Drainage Paper 56 and the output of REF-ET. */
class Fao56Test {
  @ParameterizedTest
  @CsvFileSource(resources = "fao56.csv", numLinesToSkip = 1)
  void step_ofWorkedExample_givesThePrintedValue(
      String id,
      String quantity,
      double a,
      Double b,
      Double c,
      Double d,
      Double e,
      double expected,
      double tolerance) {
    assertEquals(expected, step(quantity, a, b, c, d, e), tolerance, id);
  }

  private static double step(String quantity, double a, Double b, Double c, Double d, Double e) {
    return switch (quantity) {
      case "pressure" -> Air.pressureKpa(a);
      case "psychrometric" -> Air.psychrometricKpaPerC(a);
      case "saturation" -> Air.saturationKpa(a);
      case "mean saturation" -> Air.meanSaturationKpa(a, b);
      case "wet bulb" -> Air.vapourFromWetBulbKpa(a, b, c);
      case "vapour" -> Air.vapourKpa(a, b, c, d);
      case "vapour from mean" -> Air.vapourFromMeanKpa(a, b, c);
      case "slope" -> Air.slopeKpaPerC(a);
      case "wind at 2 m" -> Air.windAt2m(a, b);
      case "relative distance" -> day(a, b).relativeDistance();
      case "declination" -> day(a, b).declinationRad();
      case "sunset angle" -> day(a, b).sunsetAngleRad();
      case "radiation" -> day(a, b).radiationMj();
      case "radiation mm" -> day(a, b).radiationMm();
      case "day length" -> day(a, b).dayLengthHours();
      case "from sunshine" -> Radiation.fromSunshine(a, b, c);
      case "from temperature" -> Radiation.fromTemperature(a, b, c, d);
      case "clear sky" -> Radiation.clearSky(a, b);
      case "net longwave" -> Radiation.netLongwave(a, b, c, d, e);
      case "net shortwave" -> Radiation.netShortwave(a);
      case "soil heat" -> Radiation.soilHeat(a, b);
      case "soil heat from previous" -> Radiation.soilHeatFromPrevious(a, b);
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static SolarDay day(double latitude, double day) {
    return SolarDay.of(Math.toRadians(latitude), (int) day);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "chain.csv", numLinesToSkip = 1)
  void chain_ofExamples17And18_givesEveryPrintedIntermediate(
      String id, String quantity, String place, double expected, double tolerance) {
    Chain chain = place.equals("bangkok") ? Chain.BANGKOK : Chain.UCCLE;
    assertEquals(expected, chain.value(quantity), tolerance, id);
  }

  /** The inputs of examples 17 and 18 and what follows from them. */
  private record Chain(
      double latitude,
      int day,
      double elevationM,
      double maxC,
      double minC,
      double meanC,
      double vapourKpa,
      double windMs,
      double sunHours) {
    static final Chain BANGKOK = new Chain(13.73, 105, 2, 34.8, 25.6, 30.2, 2.85, 2.0, 8.5);
    static final Chain UCCLE =
        new Chain(
            50.80,
            187,
            100,
            21.5,
            12.3,
            16.9,
            Air.vapourKpa(21.5, 12.3, 84, 63),
            Air.windAt2m(10 / 3.6, 10),
            9.25);

    double value(String quantity) {
      SolarDay sun = SolarDay.of(Math.toRadians(latitude), day);
      double solar = Radiation.fromSunshine(sun.radiationMj(), sunHours, sun.dayLengthHours());
      double clear = Radiation.clearSky(sun.radiationMj(), elevationM);
      double longwave = Radiation.netLongwave(maxC, minC, vapourKpa, solar, clear);
      return switch (quantity) {
        case "slope" -> Air.slopeKpaPerC(meanC);
        case "psychrometric" -> Air.psychrometricKpaPerC(Air.pressureKpa(elevationM));
        case "saturation" -> Air.meanSaturationKpa(maxC, minC);
        case "vapour" -> vapourKpa;
        case "wind" -> windMs;
        case "radiation" -> sun.radiationMj();
        case "day length" -> sun.dayLengthHours();
        case "solar" -> solar;
        case "clear sky" -> clear;
        case "net longwave" -> longwave;
        case "net shortwave" -> Radiation.netShortwave(solar);
        case "net" -> Radiation.netShortwave(solar) - longwave;
        default -> throw new IllegalArgumentException(quantity);
      };
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "penman-monteith.csv", numLinesToSkip = 1)
  void penmanMonteith_ofWorkedExamples_givesThePrintedEt(
      String id,
      double latitude,
      int day,
      double elevationM,
      double maxC,
      double minC,
      double meanC,
      double vapourKpa,
      double windMs,
      double solarMj,
      double soilHeatMj,
      double expected,
      double tolerance) {
    double et =
        et0(latitude, day, elevationM, maxC, minC, meanC, vapourKpa, windMs, solarMj, soilHeatMj);
    assertEquals(expected, et, tolerance, id);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "ref-et.csv", numLinesToSkip = 1)
  void penmanMonteith_ofStationDays_agreesWithRefEt(
      String id,
      double latitude,
      double elevationM,
      double windHeightM,
      int day,
      double maxC,
      double minC,
      double solarMj,
      double wind,
      double dewC,
      double expected,
      double tolerance) {
    double et =
        et0(
            latitude,
            day,
            elevationM,
            maxC,
            minC,
            (maxC + minC) / 2,
            Air.saturationKpa(dewC),
            Air.windAt2m(wind, windHeightM),
            solarMj,
            0);
    assertEquals(expected, et, tolerance, id);
  }

  private static double et0(
      double latitude,
      int day,
      double elevationM,
      double maxC,
      double minC,
      double meanC,
      double vapourKpa,
      double windMs,
      double solarMj,
      double soilHeatMj) {
    double ra = SolarDay.of(Math.toRadians(latitude), day).radiationMj();
    double net =
        Radiation.netShortwave(solarMj)
            - Radiation.netLongwave(
                maxC, minC, vapourKpa, solarMj, Radiation.clearSky(ra, elevationM));
    return new PenmanMonteith(
            meanC,
            net,
            soilHeatMj,
            windMs,
            Air.meanSaturationKpa(maxC, minC),
            vapourKpa,
            Air.pressureKpa(elevationM))
        .et0MmPerDay();
  }

  @Property(seed = "20261125")
  void sun_atEveryLatitudeAndDay_staysInItsBounds(
      @ForAll @DoubleRange(min = -90, max = 90) double latitude,
      @ForAll @IntRange(min = 1, max = 366) int day) {
    SolarDay sun = SolarDay.of(Math.toRadians(latitude), day);
    assertTrue(sun.radiationMj() >= 0 && sun.radiationMj() < 50);
    assertTrue(sun.dayLengthHours() >= 0 && sun.dayLengthHours() <= 24 + 1e-12);
  }

  @Property(seed = "20261125")
  void hargreaves_isNeverNegative_andGrowsWithTheDailyRange(
      @ForAll @DoubleRange(min = -40, max = 40) double meanC,
      @ForAll @DoubleRange(min = 0, max = 20) double rangeC) {
    double narrow = Hargreaves.et0MmPerDay(meanC, meanC + rangeC / 2, meanC - rangeC / 2, 12);
    double wide = Hargreaves.et0MmPerDay(meanC, meanC + rangeC, meanC - rangeC, 12);
    assertTrue(narrow >= 0);
    assertTrue(wide >= narrow);
  }
}
