package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Two elements rounded to the hundredth of a foot may differ by two hundredths, no more.
 *
 * <p>By hand: a quarter of a circle of 100 ft is 100 × π / 2 = 157.0796 ft long.
 */
class CurveToleranceTest {
  @ParameterizedTest
  @CsvSource({"157.06, 0", "157.09, 0", "157.11, 1", "157.05, 1", "157.20, 1"})
  void length_besideRadiusAndAngle_isReportedBeyondTwoHundredths(double lengthFt, int reported) {
    CurveGiven given =
        new CurveGiven(
            Optional.of(Length.feet(100)),
            Optional.of(Angle.degrees(90)),
            Optional.of(Length.feet(lengthFt)),
            Optional.empty(),
            Curve.Definition.ARC);
    assertEquals(reported, given.solve().discrepancies().size());
  }
}
