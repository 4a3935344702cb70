package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

class CurveTest {
  private static final OutsideRows ROWS = OutsideRows.of(CurveTest.class, "curves.csv");

  private static Curve curveFt(double radiusFt, Angle delta, Curve.Definition definition) {
    return new Curve(Length.feet(radiusFt), delta, definition);
  }

  @ParameterizedTest(name = "{0} {5}")
  @CsvFileSource(resources = "curves.csv", numLinesToSkip = 1)
  void element_referenceCurve_hasTheValue(
      String id,
      double radiusFt,
      int deg,
      int min,
      double sec,
      String element,
      double expected,
      double tolerance,
      String source) {
    Curve curve = curveFt(radiusFt, Bearings.dms(deg, min, sec), Curve.Definition.ARC);
    Curve railroad = curveFt(radiusFt, Bearings.dms(deg, min, sec), Curve.Definition.CHORD);
    double got =
        switch (element) {
          case "arc" -> curve.arc().feet();
          case "chord" -> curve.chord().feet();
          case "segment" -> curve.segment().squareFeet();
          default -> railroad.countedLength().feet();
        };
    ROWS.check(id, element, expected, got, tolerance);
  }

  /** C-03: leaving tangent = chord bearing + Δ/2 to the left, N 45°00'00" W within a second. */
  @Test
  void chordBearing_coppellCurve_leadsToTheRecordedTangent() {
    double leaving =
        Bearings.parse("N 30°35'13\"W").degrees() - Bearings.dms(28, 49, 34).degrees() / 2;
    assertEquals(Bearings.parse("N 45 W").degrees(), leaving, 1 / 3600.0);
  }

  /** C-08: values computed; the example's data are recalled from FM 5-233, chapter 3. */
  @Test
  void radiusOf_fifteenDegreeCurve_hasTheComputedElements() {
    Length radius = Curve.radiusOf(Angle.degrees(15), Curve.Definition.ARC);
    Curve curve = new Curve(radius, Angle.degrees(45), Curve.Definition.ARC);
    assertEquals(381.972, radius.feet(), 0.002);
    assertEquals(300.000, curve.arc().feet(), 0.002);
    assertEquals(292.349, curve.chord().feet(), 0.002);
  }

  /** FM 5-430-00-1, appendix F. */
  @Test
  void radiusOf_oneDegree_isTheManualsRadius() {
    assertEquals(5729.578, Curve.radiusOf(Angle.degrees(1), Curve.Definition.ARC).feet(), 5e-4);
    assertEquals(
        50 / Math.sin(Math.toRadians(0.5)),
        Curve.radiusOf(Angle.degrees(1), Curve.Definition.CHORD).feet(),
        1e-6);
  }

  /** C-09, C-10: U. Regina Math Central, QQ 09.08. */
  @Test
  void segment_culDeSacBite_isTheWorkedAnswer() {
    Curve bite =
        new CurveGiven(
                Optional.of(Length.feet(50)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Length.feet(38.94)),
                Curve.Definition.ARC)
            .solve()
            .curve();
    assertEquals(103.29, bite.segment().squareFeet(), 0.01);
    assertEquals(10_458.34, 10_561.63 - bite.segment().squareFeet(), 0.01);
  }

  /** C-11: stations, the tangent being R tan(Δ/2); the end of the curve lies along the arc. */
  @Test
  void stations_fourDegreeCurve_endAlongTheArc() {
    Curve curve =
        new Curve(
            Curve.radiusOf(Angle.degrees(4), Curve.Definition.ARC),
            Angle.degrees(40),
            Curve.Definition.ARC);
    assertEquals(1432.3945, curve.radius().feet(), 1e-3);
    double startFt = 2325 - 1432.3945 * Math.tan(Math.toRadians(20));
    assertEquals(1803.65, startFt, 0.01);
    assertEquals(2803.65, startFt + curve.arc().feet(), 0.01);
  }

  /** C-12: the deflection between two bearings. */
  @Test
  void delta_betweenTwoBearings_isTheirDifference() {
    double delta =
        Bearings.parse("N 56°48'20\"E").degrees() - Bearings.parse("N 40°10'20\"E").degrees();
    assertEquals(Bearings.dms(16, 38, 0).degrees(), delta, 1e-9);
  }

  /** C-13: a page gives L = 630.266 for R 420 m and Δ 71°39'; that answer is wrong. */
  @Test
  void arc_wrongPublishedAnswer_isNotReproduced() {
    Curve curve = new Curve(Length.metres(420), Bearings.dms(71, 39, 0), Curve.Definition.ARC);
    assertEquals(525.222, curve.arc().metres(), 1e-3);
    assertNotEquals(630.266, curve.arc().metres(), 100);
  }

  /** C-14. */
  @Test
  void chordCount_hundredthOfAFoot_isTheFormulas() {
    assertEquals(39, Arc.chordCount(Length.feet(475), Angle.degrees(28.826), Length.feet(0.01)));
  }

  /** C-16 and the redundant elements of C-01: all agree, so nothing is reported. */
  @Test
  void solve_consistentElements_reportsNothing() {
    CurveGiven given =
        new CurveGiven(
            Optional.of(Length.feet(1040)),
            Optional.of(Bearings.dms(8, 16, 17)),
            Optional.of(Length.feet(150.14)),
            Optional.of(Length.feet(150.01)),
            Curve.Definition.ARC);
    assertEquals(java.util.List.of(), given.solve().discrepancies());
  }

  /** C-04 with the wrong definition must be reported, not reconciled. */
  @Test
  void solve_statuteCurveReadAsArc_reportsTheLength() {
    CurveGiven.Solved arc = statute(Curve.Definition.ARC);
    assertEquals(1, arc.discrepancies().size());
    assertEquals("length of the curve", arc.discrepancies().get(0).element());
    assertTrue(arc.discrepancies().get(0).computed().startsWith("379.28 ft"));
    assertTrue(statute(Curve.Definition.CHORD).discrepancies().isEmpty());
  }

  private static CurveGiven.Solved statute(Curve.Definition definition) {
    return new CurveGiven(
            Optional.of(Length.feet(487.79)),
            Optional.of(Bearings.dms(44, 33, 0)),
            Optional.of(Length.feet(378.63)),
            Optional.empty(),
            definition)
        .solve();
  }

  @Test
  void solve_oneElement_isRefused() {
    CurveGiven given =
        new CurveGiven(
            Optional.of(Length.feet(50)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Curve.Definition.ARC);
    assertThrows(PlanException.class, given::solve);
  }

  @Test
  void solve_chordLongerThanTheDiameter_isRefused() {
    CurveGiven given =
        new CurveGiven(
            Optional.of(Length.feet(50)),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Length.feet(101)),
            Curve.Definition.ARC);
    assertThrows(PlanException.class, given::solve);
  }

  /** Any two elements of an arc give back the curve. */
  @Property(tries = 200, seed = "20261125")
  void solve_anyTwoElements_giveTheCurve(
      @ForAll @DoubleRange(min = 3, max = 2000) double radiusM,
      @ForAll @DoubleRange(min = 1, max = 175) double deltaDeg) {
    Curve curve = new Curve(Length.metres(radiusM), Angle.degrees(deltaDeg), Curve.Definition.ARC);
    Optional<Length> r = Optional.of(curve.radius());
    Optional<Angle> d = Optional.of(curve.delta());
    Optional<Length> l = Optional.of(curve.arc());
    Optional<Length> c = Optional.of(curve.chord());
    Optional<Length> no = Optional.empty();
    Curve.Definition arc = Curve.Definition.ARC;
    for (CurveGiven given :
        java.util.List.of(
            new CurveGiven(r, Optional.empty(), l, no, arc),
            new CurveGiven(r, Optional.empty(), no, c, arc),
            new CurveGiven(no, d, l, no, arc),
            new CurveGiven(no, d, no, c, arc),
            new CurveGiven(no, Optional.empty(), l, c, arc))) {
      Curve found = given.solve().curve();
      assertEquals(radiusM, found.radius().metres(), 1e-5 * radiusM);
      assertEquals(deltaDeg, found.delta().degrees(), 1e-4 * deltaDeg);
    }
  }
}
