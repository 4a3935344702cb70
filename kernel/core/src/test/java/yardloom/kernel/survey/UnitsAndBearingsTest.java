package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

class UnitsAndBearingsTest {
  private static final OutsideRows UNITS = OutsideRows.of(UnitsAndBearingsTest.class, "units.csv");

  @ParameterizedTest(name = "{0} {3}")
  @CsvFileSource(resources = "units.csv", numLinesToSkip = 1)
  void foot_measuresMadeOfIt_haveTheNistValues(
      String id,
      String unit,
      double count,
      SurveyFoot foot,
      double metres,
      double tolerance,
      String source) {
    Length value =
        switch (unit) {
          case "foot" -> foot.feet(count);
          case "chain" -> foot.chains(count);
          case "rod" -> foot.rods(count);
          default -> foot.links(count);
        };
    UNITS.check(id, unit + " " + foot, metres, value.metres(), tolerance);
  }

  /** S-05, S-06: NIST, squares of the units above. */
  @ParameterizedTest
  @CsvSource({
    "INTERNATIONAL, 43560, 4046.8564224, 1e-8",
    "US_SURVEY, 43560, 4046.872609874, 1e-8",
    "INTERNATIONAL, 272.25, 25.29285264, 1e-8"
  })
  void foot_squares_haveTheNistValues(
      SurveyFoot foot, double squareFeet, double squareMetres, double tolerance) {
    double one = foot.feet(1).metres();
    assertEquals(squareMetres, squareFeet * one * one, tolerance);
    double acreFromChains = 10 * foot.chains(1).by(foot.chains(1)).squareMetres();
    double acreFromRods = 160 * foot.rods(1).by(foot.rods(1)).squareMetres();
    assertEquals(acreFromChains, acreFromRods, 1e-9);
    assertEquals(43560 * one * one, acreFromChains, 1e-8);
  }

  /** S-07: 2 parts in a million. */
  @Test
  void foot_twoMillionFeetReadWrongly_shiftsFourFeet() {
    Length shift =
        SurveyFoot.US_SURVEY.feet(2_000_000).minus(SurveyFoot.INTERNATIONAL.feet(2_000_000));
    assertEquals(4.0, shift.feet(), 1e-4);
    Length onALot = SurveyFoot.US_SURVEY.feet(120).minus(SurveyFoot.INTERNATIONAL.feet(120));
    assertEquals(0.00024, onALot.feet(), 1e-6);
  }

  /** S-08, and other ways deeds write a distance. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "5 ch 40 li; 356.4",
        "5 chains, 40 links; 356.4",
        "1 ch; 66",
        "12 rods; 198",
        "4 poles; 66",
        "725.32 feet; 725.32",
        "1,250.5'; 1250.5",
        "30.48 m; 100"
      })
  void parse_deedDistance_isInFeet(String text, double feet) {
    assertEquals(feet, SurveyFoot.INTERNATIONAL.parse(text).feet(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"725.32", "", "100 yd", "50 ft more or less", "ft", "0 ft"})
  void parse_noDistance_isRefused(String text) {
    assertThrows(PlanException.class, () -> SurveyFoot.INTERNATIONAL.parse(text));
  }

  @ParameterizedTest(name = "{1}")
  @CsvFileSource(
      resources = "bearings.csv",
      numLinesToSkip = 1,
      delimiter = ';',
      quoteCharacter = '|')
  void parse_bearing_isTheAzimuth(String id, String text, int degrees, int minutes, String source) {
    assertEquals(degrees + minutes / 60.0, Bearings.parse(text).degrees(), 1e-12);
  }

  /** Trap seen in a recorded description: degree signs lost in copying. */
  @Test
  void parse_lostDegreeSign_isRefusedInWords() {
    PlanException e = assertThrows(PlanException.class, () -> Bearings.parse("S 63028 50 W"));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("was a degree sign lost in copying?"), e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"N 95 E", "N 26-75 E", "26-10 E", "N 26 10", "X 26 E", "az 361", "", "N E"})
  void parse_noBearing_isRefused(String text) {
    assertThrows(PlanException.class, () -> Bearings.parse(text));
  }

  @Property(tries = 300, seed = "20261125")
  void quadrant_everySecondOfTheCircle_readsBackToItself(
      @ForAll @IntRange(max = 360 * 3600 - 1) int seconds) {
    Angle azimuth = Angle.degrees(seconds / 3600.0);
    assertEquals(azimuth.degrees(), Bearings.parse(Bearings.quadrant(azimuth)).degrees(), 1e-9);
  }

  /**
   * Half an inch over 120 ft is 0.5/1440 = 0.00034722 rad = 1.19 minutes, so to 5; over 200 ft 0.72
   * minutes, so to 1; over 30 ft 4.8 minutes, to 5; over 20 ft 7.2, to 10; over 10 ft 14.3, to 30.
   */
  @ParameterizedTest
  @CsvSource({
    "120, 0.0103, N 00°00' E",
    "120, 359.95, N 00°05' W",
    "200, 45.7126, N 45°43' E",
    "30, 134.45, S 45°35' E",
    "20, 225.10, S 45°10' W",
    "10, 269.70, S 89°30' W",
    "10, 359.90, N 00°00' E",
    "0, 90, N 90°00' E"
  })
  void quadrant_ofALine_isNoFinerThanItsTape(double feet, double degrees, String written) {
    assertEquals(
        written, Bearings.quadrant(Angle.degrees(degrees), Length.feet(feet), Length.inches(0.5)));
  }

  /** 0.826111 × 60 are 49.5667 minutes, 0.5667 × 60 are 34 seconds; 0.036 seconds short is full. */
  @ParameterizedTest
  @CsvSource({"1.5, 01°30'00\"", "28.826111, 28°49'34\"", "179.99999, 180°00'00\""})
  void angle_isWrittenToTheSecond(double degrees, String written) {
    assertEquals(written, Bearings.dms(Angle.degrees(degrees)));
  }
}
