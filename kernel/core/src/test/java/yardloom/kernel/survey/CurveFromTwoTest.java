package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** A curve from each pair of its elements. */
class CurveFromTwoTest {
  private static CurveGiven given(
      Double radiusFt, Double deltaDeg, Double lengthFt, Double chordFt, Curve.Definition by) {
    return new CurveGiven(
        Optional.ofNullable(radiusFt).map(Length::feet),
        Optional.ofNullable(deltaDeg).map(Angle::degrees),
        Optional.ofNullable(lengthFt).map(Length::feet),
        Optional.ofNullable(chordFt).map(Length::feet),
        by);
  }

  /**
   * Radius 100 ft. A quarter: length 100 π/2 = 157.0796, chord 100 √2 = 141.4214. 240°: length 400
   * π/3 = 418.8790, chord 100 √3 = 173.2051, which with the radius alone is that of the shorter arc
   * and is left out there. A half: chord 200, the diameter.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 90, , , 90",
    "100, , 157.0796327, , 90",
    "100, , , 141.4213562, 90",
    ", 90, 157.0796327, , 90",
    ", 90, , 141.4213562, 90",
    ", , 157.0796327, 141.4213562, 90",
    "100, 240, , , 240",
    "100, , 418.8790205, , 240",
    ", 240, 418.8790205, , 240",
    ", 240, , 173.2050808, 240",
    ", , 418.8790205, 173.2050808, 240",
    "100, , , 200, 180"
  })
  void anyTwoElements_giveTheCurve(
      Double radiusFt, Double deltaDeg, Double lengthFt, Double chordFt, double expectedDeg) {
    CurveGiven.Solved solved =
        given(radiusFt, deltaDeg, lengthFt, chordFt, Curve.Definition.ARC).solve();
    assertEquals(100, solved.curve().radius().feet(), 1e-5);
    assertEquals(expectedDeg, solved.curve().delta().degrees(), 1e-5);
    assertEquals(List.of(), solved.discrepancies());
  }

  /**
   * By chords of 100 ft, 60° of a radius of 100 ft count as one of them, since its chord is as long
   * as the radius: 90° count as 150 ft, though the arc is 157.08 ft.
   */
  @Test
  void lengthByChords_isCountedInChords() {
    assertEquals(
        90,
        given(100.0, null, 150.0, null, Curve.Definition.CHORD).solve().curve().delta().degrees(),
        1e-9);
    assertEquals(
        100,
        given(null, 90.0, 150.0, null, Curve.Definition.CHORD).solve().curve().radius().feet(),
        1e-9);
  }

  @Test
  void whatNoCurveHas_isRefused() {
    CurveGiven tooWide = given(100.0, null, null, 200.1, Curve.Definition.ARC);
    assertEquals(
        ProblemCode.CONTRADICTION,
        assertThrows(PlanException.class, tooWide::solve).problems().get(0).code());
    CurveGiven straight = given(null, null, 100.0, 100.0, Curve.Definition.ARC);
    assertEquals(
        ProblemCode.CONTRADICTION,
        assertThrows(PlanException.class, straight::solve).problems().get(0).code());
    CurveGiven alone = given(null, null, null, 100.0, Curve.Definition.ARC);
    assertEquals(
        ProblemCode.MISSING_OPTION,
        assertThrows(PlanException.class, alone::solve).problems().get(0).code());
  }

  /**
   * The quarter's chord said as 141.45 is 0.03 ft too long, more than two roundings; 141.44 not.
   */
  @Test
  void thirdElement_thatDisagrees_isTold() {
    assertEquals(
        List.of(
            "chord is given as 141.45 ft (43.114 m), the other elements make it 141.42 ft (43.105"
                + " m)"),
        given(100.0, 90.0, null, 141.45, Curve.Definition.ARC).solve().discrepancies().stream()
            .map(CurveGiven.Discrepancy::toString)
            .toList());
    assertEquals(
        List.of(), given(100.0, 90.0, null, 141.44, Curve.Definition.ARC).solve().discrepancies());
  }

  /** South 26°10' east is 180° − 26°10' from north, and so on round. */
  @ParameterizedTest
  @CsvSource({
    "26, 10, N 26°10'00\" E", "153, 50, S 26°10'00\" E", "206, 10, S 26°10'00\" W",
    "333, 50, N 26°10'00\" W", "0, 0, N 00°00'00\" E", "90, 0, N 90°00'00\" E",
    "180, 0, S 00°00'00\" E", "270, 0, N 90°00'00\" W", "359, 59.999, N 00°00'00\" E",
    "-45, 0, N 45°00'00\" W", "705, 0, N 15°00'00\" W", "101, 2.05, S 78°57'57\" E"
  })
  void azimuth_isWrittenAsAQuadrantBearing(double degrees, double minutes, String bearing) {
    assertEquals(bearing, Bearings.quadrant(Angle.degrees(degrees + minutes / 60)));
  }

  /** What is said of an element that no curve has; the others would make one. */
  @ParameterizedTest
  @CsvSource({
    "-1, 90, , , the radius of a curve must be more than zero",
    "0, 90, , , the radius of a curve must be more than zero",
    ", 90, -1, , the length of a curve must be more than zero",
    "100, , 0, , the length of a curve must be more than zero",
    ", 90, , -1, the chord of a curve must be more than zero",
    "100, , , 0, the chord of a curve must be more than zero",
    "100, 0, , , the central angle of a curve must lie between 0 and 360 degrees",
    "100, 360, , , the central angle of a curve must lie between 0 and 360 degrees",
    ", -5, 100, , the central angle of a curve must lie between 0 and 360 degrees",
    "100, , 628.4, , the central angle of a curve must lie between 0 and 360 degrees"
  })
  void elementThatCannotBe_isNamed(
      Double radius, Double delta, Double length, Double chord, String said) {
    CurveGiven given = given(radius, delta, length, chord, Curve.Definition.ARC);
    PlanException e = assertThrows(PlanException.class, given::solve);
    assertTrue(e.getMessage().contains(said), e.getMessage());
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
  }
}
