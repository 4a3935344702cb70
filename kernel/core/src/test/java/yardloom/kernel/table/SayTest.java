package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/** Quantities in words: 1 in is 2.54 cm, 1 ft 0.3048 m, 1 cu yd 0.76455 m³. */
class SayTest {
  /** Inches to the sixteenth, in lowest terms, as a tape is read. */
  @ParameterizedTest
  @CsvSource({
    "5.5, 5 1/2 in",
    "0.75, 3/4 in",
    "3.5, 3 1/2 in",
    "11.25, 11 1/4 in",
    "7.1875, 7 3/16 in",
    "7.375, 7 3/8 in",
    "48, 48 in",
    "0, 0 in",
    "7.97, 8 in",
    "7.02, 7 in"
  })
  void sawnPieces_readAsOnATape(double inches, String text) {
    assertEquals(text, Say.fine(Length.inches(inches), UnitSystem.US));
  }

  @Test
  void sawnPieces_areWholeMillimetresInMetricPlans() {
    assertEquals("140 mm", Say.fine(Length.inches(5.5), UnitSystem.METRIC)); // 139.7
  }

  @Test
  void depths_standInTheSystemOfThePlan() {
    assertEquals("6 in (15.2 cm)", Say.depth(Length.inches(6)));
    assertEquals("15.2 cm (6 in)", Say.depthFor(Length.inches(6), UnitSystem.METRIC));
    assertEquals("3.9 in", Say.depth(Length.metres(0.1), UnitSystem.US));
    assertEquals("10 cm", Say.depth(Length.metres(0.1), UnitSystem.METRIC));
    assertEquals("0.25 in", Say.fineDepth(Length.inches(0.25), UnitSystem.US));
    assertEquals("6.4 mm", Say.fineDepth(Length.inches(0.25), UnitSystem.METRIC)); // 6.35
    assertEquals("25.4 mm", Say.fineDepth(Length.inches(1), UnitSystem.METRIC));
  }

  /** Half a metre is 19.69 in; 0.6 m 1.97 ft. Both sides of the bound, and of zero. */
  @Test
  void lengthsOfAnySize_areSaidAsTheirSizeIs() {
    assertEquals("0.5 in (1.3 cm)", Say.size(Length.inches(0.5)));
    assertEquals("19.6 in (49.9 cm)", Say.size(Length.metres(0.499)));
    assertEquals("1.64 ft (0.50 m)", Say.size(Length.metres(0.5)));
    assertEquals("1.97 ft (0.60 m)", Say.size(Length.metres(0.6)));
    assertEquals("-2.0 in (-5.1 cm)", Say.size(Length.inches(-2)));
    assertEquals("-3.28 ft (-1.00 m)", Say.size(Length.metres(-1)));
  }

  /**
   * 1 psi is 6.895 kPa, 1 gal 3.785 L, 1 sq ft 0.0929 m²: what is tested or sold, by its digits.
   */
  @Test
  void whatIsSoldOrTested_hasItsOwnDigits() {
    assertEquals("25 psi (172 kPa)", Say.both(Measure.SET_PRESSURE, Pressure.psi(25)));
    assertEquals("0.60 gph (2.3 L/h)", Say.both(Measure.OUTLET_FLOW, Flow.gallonsPerHour(0.6)));
    assertEquals("0.57 in (14.5 mm)", Say.both(Measure.BORE, Length.inches(0.57)));
    assertEquals("1.5 in (38 mm)", Say.both(Measure.PIPE, Length.inches(1.5)));
    assertEquals("18 in (46 cm)", Say.both(Measure.WIDTH, Length.inches(18)));
    assertEquals("1.25 ft (0.38 m)", Say.both(Measure.FINE_LENGTH, Length.feet(1.25)));
    assertEquals("10.5 sq ft (0.98 m²)", Say.both(Measure.FINE_AREA, Area.squareFeet(10.5)));
  }

  /** Metric plans say five centimetres or ten, not 10.16. */
  @Test
  void depthsWithinText_areRoundNumbersInMetricPlans() {
    String text = "lay {4 in} of chips on {0.5 in} of compost";
    assertEquals("lay 4 in of chips on 0.5 in of compost", Say.inText(text, UnitSystem.US));
    assertEquals(
        "lay 10 cm of chips, at most 15 cm",
        Say.inText("lay {4 in} of chips, at most {6 in}", UnitSystem.METRIC));
  }

  @Test
  void distancesVolumesAndShares_haveOneDecimalAtMost() {
    assertEquals("10 ft", Say.distance(Length.metres(3.048), UnitSystem.US));
    assertEquals("3.1 m", Say.distance(Length.metres(3.06), UnitSystem.METRIC));
    assertEquals("2 cu yd", Say.volume(Volume.cubicMetres(1.5291), UnitSystem.US));
    assertEquals("1.5 m³", Say.volume(Volume.cubicMetres(1.5291), UnitSystem.METRIC));
    assertEquals("38 %", Say.percent(0.378));
    assertEquals("0.1", Say.number(0.14));
    assertEquals("12", Say.number(11.96));
  }

  /** 4 in are 10.16 cm, 3 in 7.62 cm, 1 in 2.54 cm, 12 in 30.48 cm. */
  @Test
  void layer_metric_isWhatACrewCanRake() {
    assertEquals("10 cm", Say.laid(Length.inches(4), UnitSystem.METRIC));
    assertEquals("7.5 cm", Say.laid(Length.inches(3), UnitSystem.METRIC));
    assertEquals("2.5 cm", Say.laid(Length.inches(1), UnitSystem.METRIC));
    assertEquals("30 cm", Say.laid(Length.inches(12), UnitSystem.METRIC));
    assertEquals("4.5 in", Say.laid(Length.inches(4.5), UnitSystem.US));
  }

  /**
   * 0.3048 m a foot, 3.785412 L a gallon; a thousand is not parted, so that lines break as text.
   */
  @Test
  void measure_isSaidInBothSystems_thePlansFirst() {
    Length length = Length.feet(10);
    assertEquals("10.0 ft", Say.of(Measure.LENGTH, length, UnitSystem.US));
    assertEquals("3.05 m", Say.of(Measure.LENGTH, length, UnitSystem.METRIC));
    assertEquals("10.0 ft (3.05 m)", Say.both(Measure.LENGTH, length, UnitSystem.US));
    assertEquals("3.05 m (10.0 ft)", Say.both(Measure.LENGTH, length, UnitSystem.METRIC));
    assertEquals("1234 gal (4671 L)", Say.both(Measure.WATER, Volume.gallons(1234), UnitSystem.US));
  }
}
