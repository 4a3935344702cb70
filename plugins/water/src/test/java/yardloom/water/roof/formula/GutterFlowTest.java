package yardloom.water.roof.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

class GutterFlowTest {
  /**
   * International Plumbing Code, semicircular gutters (from memory): the columns of 1/8, 1/4 and
   * 1/2 in of fall in a foot, at 1 to 4 in of rain an hour; the program keeps that of 1/16 alone.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 0.125, 1, 960",
    "4, 0.125, 1, 2040",
    "5, 0.125, 2, 1760",
    "6, 0.25, 1, 7680",
    "7, 0.25, 4, 2760",
    "8, 0.5, 1, 22400",
    "10, 0.125, 3, 6800",
  })
  void gutter_drainsWhatTheCodeSays(double width, double perFoot, double rain, double squareFeet) {
    Area drained = GutterFlow.drained(Length.inches(width), perFoot / 12, Length.inches(rain));
    assertEquals(squareFeet, drained.squareFeet(), 0.006 * squareFeet);
  }

  /**
   * As the code's row (from memory) drains, such as 1,440 sq ft by 4 in: no wider gutter is asked.
   */
  @ParameterizedTest
  @CsvSource({"3, 680", "4, 1440", "5, 2500", "6, 3840", "7, 5520", "8, 7960", "10, 14400"})
  void width_ofWhatARowDrains_isThatRow(double inches, double squareFeet) {
    Length hour = Length.inches(1);
    assertEquals(
        Optional.of(Length.inches(inches)),
        GutterFlow.width(Area.squareFeet(squareFeet), GutterFlow.USUAL_FALL, hour));
    assertTrue(
        GutterFlow.width(Area.squareFeet(squareFeet * 1.001), GutterFlow.USUAL_FALL, hour)
            .map(w -> w.inches() > inches)
            .orElse(inches == 10));
  }

  /** A width worked out from metres may be a hair over ten inches. */
  @Test
  void widest_inEitherUnit_isInTheTable() {
    Length hair = Length.inches(10 + 5e-10);
    assertEquals(
        14400,
        GutterFlow.drained(hair, GutterFlow.USUAL_FALL, Length.inches(1)).squareFeet(),
        0.001);
  }

  /** 1,900 sq ft at 1/16 in a foot and 1 in an hour: 4 in drains 1,440, 5 in 2,500. */
  @Test
  void width_isTheNextOfTheTable() {
    assertEquals(
        Optional.of(Length.inches(5)),
        GutterFlow.width(Area.squareFeet(1900), GutterFlow.USUAL_FALL, Length.inches(1)));
    assertTrue(
        GutterFlow.width(Area.squareFeet(15000), GutterFlow.USUAL_FALL, Length.inches(1))
            .isEmpty());
  }

  @Property(tries = 100, seed = "20261128")
  void widerAndSteeper_drainMore(
      @ForAll @DoubleRange(min = 3, max = 9.9) double inches,
      @ForAll @DoubleRange(min = 0.01, max = 0.04) double fall) {
    Area drained = GutterFlow.drained(Length.inches(inches), fall, Length.inches(2));
    assertTrue(
        GutterFlow.drained(Length.inches(inches + 0.1), fall, Length.inches(2)).compareTo(drained)
            > 0);
    assertTrue(
        GutterFlow.drained(Length.inches(inches), fall * 1.1, Length.inches(2)).compareTo(drained)
            > 0);
  }

  @Test
  void nonsense_isRefused() {
    Length rain = Length.inches(1);
    assertThrows(
        IllegalArgumentException.class, () -> GutterFlow.drained(Length.inches(2.9), 0.01, rain));
    assertThrows(
        IllegalArgumentException.class, () -> GutterFlow.drained(Length.inches(10.1), 0.01, rain));
    assertThrows(
        IllegalArgumentException.class, () -> GutterFlow.drained(Length.inches(5), 0, rain));
    assertThrows(
        IllegalArgumentException.class,
        () -> GutterFlow.drained(Length.inches(5), 0.01, Length.ZERO));
  }
}
