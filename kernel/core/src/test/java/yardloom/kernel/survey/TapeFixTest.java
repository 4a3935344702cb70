package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

class TapeFixTest {
  private static TapeFix.Tape tape(String name, double x, double y, double d, double error) {
    return new TapeFix.Tape(name, Point.metres(x, y), Length.metres(d), Length.metres(error));
  }

  private static List<TapeFix.Tape> four(double ea, double eb, double ec, double ed) {
    return List.of(
        tape("A", 0, 0, 25.03, ea),
        tape("B", 60, 0, 42.69, eb),
        tape("C", 60, 40, 47.20, ec),
        tape("D", 0, 40, 32.00, ed));
  }

  /** S-31, two-circle intersection; the side must be given. */
  @Test
  void of_twoTapes_meetOnTheGivenSide() {
    List<TapeFix.Tape> tapes = List.of(tape("A", 0, 0, 35, 1), tape("B", 40, 0, 28, 1));
    TapeFix above = TapeFix.of(tapes, Optional.of(Point.metres(25, 10)));
    TapeFix below = TapeFix.of(tapes, Optional.of(Point.metres(25, -10)));
    assertEquals(25.5125, above.at().x().metres(), 1e-4);
    assertEquals(23.9606, above.at().y().metres(), 1e-4);
    assertEquals(-23.9606, below.at().y().metres(), 1e-4);
    assertFalse(above.isChecked(), "two tapes have no check; not perfect but unchecked");
    assertTrue(above.errorX().isEmpty());
    PlanException e = assertThrows(PlanException.class, () -> TapeFix.of(tapes, Optional.empty()));
    assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
  }

  /** S-32. */
  @Test
  void of_tapesThatCannotMeet_namesBoth() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                TapeFix.of(
                    List.of(tape("A", 0, 0, 10, 1), tape("B", 40, 0, 20, 1)),
                    Optional.of(Point.metres(20, 1))));
    assertEquals(ProblemCode.CONTRADICTION, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("A (10.000 m = 32.81 ft) and B (20.000 m = 65.62 ft)"));
    assertThrows(
        PlanException.class,
        () ->
            TapeFix.of(
                List.of(tape("A", 0, 0, 100, 1), tape("B", 40, 0, 20, 1)),
                Optional.of(Point.metres(20, 1))),
        "one circle inside the other");
  }

  /** S-34, computed; method outline in Mahun, Least Squares Lite, chapter H. */
  @Test
  void of_redundantTapes_isTheLeastSquaresPoint() {
    TapeFix fix = TapeFix.of(four(1, 1, 1, 1), Optional.empty());
    assertEquals(20.0063, fix.at().x().metres(), 1e-4);
    assertEquals(15.0022, fix.at().y().metres(), 1e-4);
    double[] v = {-0.02364, 0.02487, -0.03660, 0.01787};
    double sum = 0;
    for (int i = 0; i < 4; i++) {
      assertEquals(v[i], fix.residuals().get(i).metres(), 1e-4);
      sum += Math.pow(fix.residuals().get(i).metres(), 2);
    }
    assertEquals(0.0028365, sum, 1e-6);
    assertEquals(2, fix.freedom());
    assertEquals(0.03766, fix.unitWeight().getAsDouble(), 1e-4);
    assertEquals(0.0233, fix.errorX().get().metres(), 1e-4);
    assertEquals(0.0322, fix.errorY().get().metres(), 1e-4);
  }

  /** S-35, computed. */
  @Test
  void of_weightedTapes_isTheWeightedPoint() {
    TapeFix fix = TapeFix.of(four(0.02, 0.05, 0.05, 0.02), Optional.empty());
    assertEquals(20.0112, fix.at().x().metres(), 2e-4);
    assertEquals(15.0250, fix.at().y().metres(), 2e-4);
    double s0 = fix.unitWeight().getAsDouble();
    assertEquals(0.8811, s0, 2e-4);
    assertEquals(1.55278, s0 * s0 * 2, 2e-4);
  }

  @Test
  void suspect_oneBlunderAmongFive_isFound() {
    List<TapeFix.Tape> tapes = new ArrayList<>();
    Point true0 = Point.metres(42, 12);
    double[][] from = {{0, 0}, {60, 0}, {60, 40}, {0, 40}, {30, 50}};
    for (int i = 0; i < 5; i++) {
      Point p = Point.metres(from[i][0], from[i][1]);
      // The third tape was read 0.3 m short: one foot.
      double d = p.distance(true0).metres() - (i == 2 ? 0.3048 : 0);
      tapes.add(new TapeFix.Tape("T" + (i + 1), p, Length.metres(d), Length.metres(0.02)));
    }
    TapeFix fix = TapeFix.of(tapes, Optional.empty());
    assertEquals("T3", fix.suspect().orElseThrow().name());
    tapes.remove(2);
    TapeFix clean = TapeFix.of(tapes, Optional.empty());
    assertTrue(clean.suspect().isEmpty());
    assertEquals(0, clean.at().distance(true0).metres(), 1e-9);
  }

  @Test
  void of_threeTapesFromOneLine_cannotTellTheSide() {
    Point at = Point.metres(10, 10);
    List<TapeFix.Tape> tapes = new ArrayList<>();
    for (double x : new double[] {0, 20, 40}) {
      Point from = Point.metres(x, 0);
      tapes.add(new TapeFix.Tape("x" + x, from, from.distance(at), Length.metres(0.02)));
    }
    PlanException e = assertThrows(PlanException.class, () -> TapeFix.of(tapes, Optional.empty()));
    assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
    TapeFix fix = TapeFix.of(tapes, Optional.of(Point.metres(10, 1)));
    assertEquals(0, fix.at().distance(at).metres(), 1e-8);
  }

  @Test
  void of_oneTapeOrOneStation_isRefused() {
    assertThrows(
        PlanException.class, () -> TapeFix.of(List.of(tape("A", 0, 0, 5, 1)), Optional.empty()));
    assertThrows(
        PlanException.class,
        () ->
            TapeFix.of(
                List.of(tape("A", 0, 0, 5, 1), tape("B", 0, 0, 5, 1)),
                Optional.of(Point.metres(1, 1))));
  }

  @Provide
  Arbitrary<List<Double>> noise() {
    return Arbitraries.doubles().between(-0.05, 0.05).list().ofSize(4);
  }

  /** S-36: at the solution the weighted residuals balance: Aᵀ P v = 0. */
  @Property(tries = 200, seed = "20261125")
  void of_anyNoise_satisfiesTheNormalEquations(@ForAll("noise") List<Double> noise) {
    Point truth = Point.metres(21, 17);
    double[][] from = {{0, 0}, {60, 0}, {60, 40}, {0, 40}};
    double[] errors = {0.02, 0.05, 0.03, 0.04};
    List<TapeFix.Tape> tapes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Point p = Point.metres(from[i][0], from[i][1]);
      tapes.add(
          new TapeFix.Tape(
              "T" + i,
              p,
              Length.metres(p.distance(truth).metres() + noise.get(i)),
              Length.metres(errors[i])));
    }
    TapeFix fix = TapeFix.of(tapes, Optional.empty());
    double gx = 0;
    double gy = 0;
    for (int i = 0; i < 4; i++) {
      double dx = fix.at().x().metres() - from[i][0];
      double dy = fix.at().y().metres() - from[i][1];
      double d = Math.hypot(dx, dy);
      double p = 1 / (errors[i] * errors[i]);
      gx += dx / d * p * fix.residuals().get(i).metres();
      gy += dy / d * p * fix.residuals().get(i).metres();
    }
    assertEquals(0, gx, 1e-6);
    assertEquals(0, gy, 1e-6);
  }

  /** Moving the whole yard moves the point. */
  @Property(tries = 50, seed = "20261125")
  void of_movedStations_movesThePoint(@ForAll("noise") List<Double> shift) {
    double dx = shift.get(0) * 1e4;
    double dy = shift.get(1) * 1e4;
    TapeFix here = TapeFix.of(four(0.02, 0.05, 0.05, 0.02), Optional.empty());
    List<TapeFix.Tape> moved =
        here.tapes().stream()
            .map(
                t ->
                    new TapeFix.Tape(
                        t.name(),
                        t.from().moved(Length.metres(dx), Length.metres(dy)),
                        t.distance(),
                        t.error()))
            .toList();
    Point there = TapeFix.of(moved, Optional.empty()).at();
    assertEquals(here.at().x().metres() + dx, there.x().metres(), 1e-7);
    assertEquals(here.at().y().metres() + dy, there.y().metres(), 1e-7);
  }

  @Test
  void baseline_offset_liesLeftOfItsDirection() {
    Baseline line = new Baseline(Point.metres(0, 0), Point.metres(30, 40));
    Point p = line.at(Length.metres(10), Length.metres(5));
    assertEquals(6 - 4, p.x().metres(), 1e-12);
    assertEquals(8 + 3, p.y().metres(), 1e-12);
    assertThrows(PlanException.class, () -> new Baseline(Point.metres(1, 1), Point.metres(1, 1)));
  }

  /** Three tapes to (3, 4), or to (3, −4): the third, off the line of the others, tells which. */
  @Test
  void of_threeTapes_findTheirSideThemselves() {
    double b = Math.sqrt(65);
    for (boolean above : new boolean[] {true, false}) {
      double c = above ? Math.sqrt(53) : Math.sqrt(5);
      List<TapeFix.Tape> tapes =
          List.of(tape("A", 0, 0, 5, 0.01), tape("B", 10, 0, b, 0.01), tape("C", 5, -3, c, 0.01));
      TapeFix fix = TapeFix.of(tapes, Optional.empty());
      assertEquals(3, fix.at().x().metres(), 1e-6);
      assertEquals(above ? 4 : -4, fix.at().y().metres(), 1e-6);
    }
  }

  /** Two tapes that just meet on their line need no side: 25 and 15 m over 40 m, or 50 and 10. */
  @Test
  void of_tapesThatJustMeet_meetOnTheLine() {
    for (double[] both : new double[][] {{25, 15}, {50, 10}, {10, 50}}) {
      TapeFix fix =
          TapeFix.of(
              List.of(tape("A", 0, 0, both[0], 1), tape("B", 40, 0, both[1], 1)),
              Optional.of(Point.metres(20, 1)));
      assertEquals(both[0] == 10 ? -10 : both[0], fix.at().x().metres(), 1e-6);
      assertEquals(0, fix.at().y().metres(), 1e-3);
    }
    assertThrows(
        PlanException.class,
        () ->
            TapeFix.of(
                List.of(tape("A", 0, 0, 25, 1), tape("B", 40, 0, 14.999, 1)),
                Optional.of(Point.metres(20, 1))));
    assertThrows(
        PlanException.class,
        () ->
            TapeFix.of(
                List.of(tape("A", 0, 0, 50.001, 1), tape("B", 40, 0, 10, 1)),
                Optional.of(Point.metres(20, 1))));
  }

  /**
   * Of three tapes two may miss by four of their joint errors: 4 × √(0.03² + 0.04²) = 0.2 m of 40.
   */
  @Test
  void of_threeTapes_mayMissByTheirErrors() {
    List<TapeFix.Tape> near =
        List.of(
            tape("A", 0, 0, 24.9, 0.03), tape("B", 40, 0, 14.95, 0.04), tape("C", 25, 10, 10, 1));
    assertEquals(25, TapeFix.of(near, Optional.of(Point.metres(25, 1))).at().x().metres(), 0.2);
    List<TapeFix.Tape> apart =
        List.of(
            tape("A", 0, 0, 24.8, 0.03), tape("B", 40, 0, 14.95, 0.04), tape("C", 25, 10, 10, 1));
    assertThrows(PlanException.class, () -> TapeFix.of(apart, Optional.of(Point.metres(25, 1))));
  }
}
