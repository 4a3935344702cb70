package yardloom.kernel.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

  @ParameterizedTest(name = "{1} {0}")
  @CsvFileSource(resources = "nist-factors.csv", numLinesToSkip = 1)
  void factor_publishedDefinition_agrees(
      Unit unit, double value, double si, double tolerance, String source, String mark) {
    assertEquals(si, unit.toSi(value), Math.abs(si) * tolerance, source + " [" + mark + "]");
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void roundTrip_anyUnit_returnsTheValue(Unit unit) {
    assertEquals(123.456, unit.fromSi(unit.toSi(123.456)), 1e-10);
  }

  @Test
  void words_areUnique() {
    Set<String> words = new HashSet<>();
    for (Unit unit : Unit.values()) {
      assertTrue(words.add(unit.word()), unit.word());
      assertEquals(unit, Unit.byWord(unit.word()).orElseThrow());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void quantity_notFinite_isRefused(double bad) {
    assertThrows(IllegalArgumentException.class, () -> Length.metres(bad));
  }

  @Test
  void quantity_overflowingSum_isRefused() {
    Length huge = Length.metres(Double.MAX_VALUE);
    assertThrows(IllegalArgumentException.class, () -> huge.plus(huge));
  }

  @Test
  void temperature_belowAbsoluteZero_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Temperature.celsius(-273.16));
  }

  @Test
  void conversion_toAnotherDimension_isRefused() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> Length.metres(1).in(Unit.SQUARE_FOOT));
    assertEquals("sq ft measures area, not length", e.getMessage());
  }

  @Test
  void div_byZero_isRefused() {
    assertThrows(ArithmeticException.class, () -> Length.metres(1).div(0));
    assertThrows(ArithmeticException.class, () -> Length.metres(1).ratioTo(Length.ZERO));
  }

  @Test
  void products_makeAreasAndVolumes() {
    // 324 sq ft at 1 in is one cubic yard: 27 × 12, exact.
    Area area = Length.feet(18).by(Length.feet(18));
    assertEquals(1, area.deep(Length.inches(1)).cubicYards(), 1e-12);
    // 1 in of rain on 1 sq ft: 144/231 gal, exact.
    assertEquals(144.0 / 231.0, Area.squareFeet(1).deep(Length.inches(1)).gallons(), 1e-12);
  }

  @Test
  void flow_duringATime_isTheVolume() {
    assertEquals(1, Flow.gallonsPerMinute(2).during(TimeSpan.seconds(30)).gallons(), 1e-12);
    assertEquals(60, Volume.gallons(1).per(TimeSpan.minutes(1)).gallonsPerHour(), 1e-9);
    assertThrows(ArithmeticException.class, () -> Volume.gallons(1).per(TimeSpan.ZERO));
  }

  @Test
  void negativeZero_equalsZeroAndPrintsAsZero() {
    assertEquals(Length.ZERO, Length.metres(0).negative());
    assertEquals("0.0 m", Length.metres(-0.0).toString());
  }

  @Property(seed = "20261125")
  void sumAndDifference_undoEachOther(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double a,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double b) {
    Length sum = Length.metres(a).plus(Length.metres(b));
    assertEquals(a, sum.minus(Length.metres(b)).metres(), 1e-9);
  }

  @Property(seed = "20261125")
  void area_doublingTheDepth_doublesTheVolume(
      @ForAll @DoubleRange(min = 0, max = 1e4) double m2,
      @ForAll @DoubleRange(min = 0, max = 2) double depthM) {
    Volume once = Area.squareMetres(m2).deep(Length.metres(depthM));
    Volume twice = Area.squareMetres(m2).deep(Length.metres(2 * depthM));
    assertEquals(once.times(2), twice);
  }

  @Test
  void both_ofEachSystem_putsItsOwnMeasureFirst() {
    assertEquals("1 ft (0.30 m)", UnitSystem.US.both("1 ft", "0.30 m"));
    assertEquals("0.30 m (1 ft)", UnitSystem.METRIC.both("1 ft", "0.30 m"));
  }

  /** What a yard is sold and measured in (common practice); depths and all else apart. */
  @ParameterizedTest
  @CsvSource({
    "LENGTH, FOOT, METRE",
    "AREA, SQUARE_FOOT, SQUARE_METRE",
    "VOLUME, CUBIC_YARD, CUBIC_METRE",
    "MASS, POUND, KILOGRAM",
    "ANGLE, DEGREE, DEGREE",
    "FLOW, GALLON_PER_MINUTE, LITRE_PER_HOUR",
    "PRESSURE, POUND_PER_SQUARE_INCH, KILOPASCAL",
    "TEMPERATURE, FAHRENHEIT, CELSIUS",
    "DURATION, HOUR, HOUR",
    "MONEY, MONEY_UNIT, MONEY_UNIT"
  })
  void unitOfEachSystem_isTheUsualOne(Dimension dimension, Unit us, Unit metric) {
    assertEquals(us, UnitSystem.US.unit(dimension));
    assertEquals(metric, UnitSystem.METRIC.unit(dimension));
    assertEquals(Unit.INCH, UnitSystem.US.depthUnit());
    assertEquals(Unit.CENTIMETRE, UnitSystem.METRIC.depthUnit());
  }

  /** Water boils at 212 °F, 100 °C, 373.15 K (the definition of the scales). */
  @Test
  void temperature_boilingWater_isTheSameOnAllScales() {
    assertEquals(212, Temperature.celsius(100).fahrenheit(), 1e-9);
    assertEquals(373.15, Temperature.fahrenheit(212).kelvins(), 1e-9);
    assertEquals(100, Temperature.kelvins(373.15).celsius(), 1e-9);
    assertEquals(Dimension.TEMPERATURE, Temperature.celsius(100).dimension());
  }

  /** A pound is 0.45359237 kg (NIST Handbook 44, Appendix C, from memory). */
  @Test
  void pound_isTheInternationalOne() {
    assertEquals(0.45359237, Mass.pounds(1).kilograms(), 1e-12);
    assertEquals(2.2046226, Mass.kilograms(1).pounds(), 1e-7);
    assertEquals(3.5, Money.amount(1.75).times(2).amount(), 1e-12);
  }
}
