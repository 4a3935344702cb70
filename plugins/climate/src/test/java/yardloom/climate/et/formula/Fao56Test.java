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
import yardloom.kernel.outside.OutsideRows;

/** The worked examples of FAO Irrigation and Drainage Paper 56 and the output of REF-ET. */
class Fao56Test {
  private static final OutsideRows FAO56 = OutsideRows.of(Fao56Test.class, "fao56.csv");
  private static final OutsideRows CHAIN = OutsideRows.of(Fao56Test.class, "chain.csv");
  private static final OutsideRows PENMAN_MONTEITH =
      OutsideRows.of(Fao56Test.class, "penman-monteith.csv");
  private static final OutsideRows REF_ET = OutsideRows.of(Fao56Test.class, "ref-et.csv");

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
    FAO56.check(id, expected, step(quantity, a, b, c, d, e), tolerance);
  }

  private static double step(String quantity, double a, Double b, Double c, Double d, Double e) {
    return switch (quantity) {
      case "pressure" -> Air.pressureKpa(a);
      case "psychrometric" -> Air.psychrometricKpaPerC(a);
      case "saturation" -> Air.saturationKpa(a);
      case "mean saturation" -> Air.meanSaturationKpa(a, b);
      case "slope" -> Air.slopeKpaPerC(a);
      case "relative distance" -> day(a, b).relativeDistance();
      case "declination" -> day(a, b).declinationRad();
      case "sunset angle" -> day(a, b).sunsetAngleRad();
      case "radiation" -> day(a, b).radiationMj();
      case "radiation mm" -> day(a, b).radiationMm();
      case "clear sky" -> Radiation.clearSky(a, b);
      case "net longwave" -> Radiation.netLongwave(a, b, c, d, e);
      case "net shortwave" -> Radiation.netShortwave(a);
      // Equation 34: 24 / π times the sunset angle.
      case "day length" -> 24 / Math.PI * day(a, b).sunsetAngleRad();
      case "wind at 2 m" -> Air.windAt2m(a, b);
      case "soil heat" -> Radiation.soilHeat(a, b);
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
    CHAIN.check(id, expected, chain.value(quantity), tolerance);
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
    static final Chain UCCLE = new Chain(50.80, 187, 100, 21.5, 12.3, 16.9, 1.409, 2.078, 9.25);

    double value(String quantity) {
      SolarDay sun = SolarDay.of(Math.toRadians(latitude), day);
      // Example 10: (0.25 + 0.50 n / N) Ra, N = 24 / π times the sunset angle.
      double dayHours = 24 / Math.PI * sun.sunsetAngleRad();
      double solar = (0.25 + 0.50 * sunHours / dayHours) * sun.radiationMj();
      double clear = Radiation.clearSky(sun.radiationMj(), elevationM);
      double longwave = Radiation.netLongwave(maxC, minC, vapourKpa, solar, clear);
      return switch (quantity) {
        case "slope" -> Air.slopeKpaPerC(meanC);
        case "psychrometric" -> Air.psychrometricKpaPerC(Air.pressureKpa(elevationM));
        case "saturation" -> Air.meanSaturationKpa(maxC, minC);
        case "radiation" -> sun.radiationMj();
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
    PENMAN_MONTEITH.check(id, expected, et, tolerance);
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
    REF_ET.check(id, expected, et, tolerance);
  }

  /** FAO-56 example 14, from memory of its print: 3.2 m/s at 10 m are 2.4 m/s at 2 m. */
  @org.junit.jupiter.api.Test
  void windAtTenMetres_ofExample14() {
    assertEquals(2.4, Air.windAt2m(3.2, 10), 0.05);
  }

  /** FAO-56 example 15 (F14): Lyon in July, 40.6 MJ above the air, 26.6 and 14.8 °C: 22.3 MJ. */
  @org.junit.jupiter.api.Test
  void radiationFromRange_ofExample15() {
    assertEquals(22.3, Radiation.fromRange(26.6, 14.8, 40.6, 30.6), 0.05);
    assertEquals(20.0, Radiation.fromRange(26.6, 14.8, 40.6, 20.0), "never more than a clear sky");
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
    return new StandardizedEt(
            meanC,
            net,
            soilHeatMj,
            windMs,
            Air.meanSaturationKpa(maxC, minC),
            vapourKpa,
            Air.pressureKpa(elevationM))
        .mmPerDay(StandardizedEt.Surface.SHORT);
  }

  @Property(seed = "20261125")
  void sun_atEveryLatitudeAndDay_staysInItsBounds(
      @ForAll @DoubleRange(min = -90, max = 90) double latitude,
      @ForAll @IntRange(min = 1, max = 366) int day) {
    SolarDay sun = SolarDay.of(Math.toRadians(latitude), day);
    assertTrue(sun.radiationMj() >= 0 && sun.radiationMj() < 50);
    assertTrue(sun.sunsetAngleRad() >= 0 && sun.sunsetAngleRad() <= Math.PI);
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
