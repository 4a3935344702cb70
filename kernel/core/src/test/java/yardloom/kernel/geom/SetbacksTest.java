package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

class SetbacksTest {
  private static final OutsideRows ROWS = OutsideRows.of(SetbacksTest.class, "setbacks.csv");

  private static final double FT = 0.3048;

  private static List<Point> ring(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(Point.metres(xy[i], xy[i + 1]));
    }
    return points;
  }

  private static List<Point> rectangleFt(double widthFt, double depthFt) {
    double w = widthFt * FT;
    double d = depthFt * FT;
    return ring(0, 0, w, 0, w, d, 0, d);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "setbacks.csv", numLinesToSkip = 1)
  void buildable_rectangularLot_isTheHalfPlaneRectangle(
      String id,
      double widthFt,
      double depthFt,
      double frontFt,
      double rearFt,
      double leftFt,
      double rightFt,
      double areaFt2,
      String source) {
    List<Point> ring = rectangleFt(widthFt, depthFt);
    List<Setbacks.Side> sides =
        Lots.sides(ring, List.of(frontFt * FT, rightFt * FT, rearFt * FT, leftFt * FT));
    Shape free = Setbacks.buildable(Shape.polygon(ring), sides);
    ROWS.check(id, "left ft2", areaFt2, free.area().squareMetres() / (FT * FT), 1e-4);
    double takenM2 =
        Setbacks.taken(Shape.polygon(ring), sides).stream()
            .mapToDouble(t -> t.ground().area().squareMetres())
            .sum();
    ROWS.check(id, "taken ft2", widthFt * depthFt - areaFt2, takenM2 / (FT * FT), 1e-4);
  }

  /** Z-11: the message must name the rules that ate the lot. */
  @Test
  void culprits_opposingSides_areNamedAlone() {
    List<Point> ring = rectangleFt(60, 120);
    List<Setbacks.Side> sides = Lots.sides(ring, List.of(25 * FT, 31 * FT, 20 * FT, 30 * FT));
    List<String> names =
        Setbacks.culprits(Shape.polygon(ring), sides).stream().map(Setbacks.Side::name).toList();
    assertEquals(List.of("side 2", "side 4"), names);
  }

  /** Setback lines are parallel to the lot lines until they meet (San Mateo 27.04.085). */
  @Test
  void buildable_obtuseCornerWithUnequalSides_linesRunOnUntilTheyMeet() {
    // Interior angle of 120° at (20, 0); only the south side asks.
    double x = 20 + 10 * 0.5;
    double y = 10 * Math.sqrt(3) / 2;
    List<Point> ring = ring(0, 0, 20, 0, x, y, 0, y);
    Shape free =
        Setbacks.buildable(Shape.polygon(ring), Lots.sides(ring, List.of(3.0, 0.0, 0.0, 0.0)));
    assertEquals(3, free.bounds().getMinY(), 1e-6);
    double top = 25;
    double bottom = 20 + 3 / Math.sqrt(3);
    assertEquals((top + bottom) / 2 * (y - 3), free.area().squareMetres(), 1e-4);
  }

  /** L-shaped lot: at the reflex corner the strips leave no notch. */
  @Test
  void buildable_reflexCorner_isSquareAndWithoutNotch() {
    List<Point> ring = ring(0, 0, 24, 0, 24, 12, 12, 12, 12, 24, 0, 24);
    Shape free = Setbacks.buildable(Shape.polygon(ring), Lots.sides(ring, List.of(2.0)));
    assertEquals(20 * 8 + 8 * 12, free.area().squareMetres(), 1e-5);
  }

  @Test
  void buildable_reflexCornerUnequal_largerDistanceTurnsTheCorner() {
    List<Point> ring = ring(0, 0, 24, 0, 24, 12, 12, 12, 12, 24, 0, 24);
    Shape free =
        Setbacks.buildable(
            Shape.polygon(ring), Lots.sides(ring, List.of(0.0, 0.0, 6.0, 1.5, 0.0, 0.0)));
    assertTrue(
        free.distance(Point.metres(12, 12)).metres() >= 6 - 1e-3,
        "no point may be within 6 m of the end of the side that asks 6 m");
  }

  /** A dumb-bell lot: the neck is narrower than the setbacks, so two parts remain. */
  @Test
  void buildable_neck_givesTwoParts() {
    List<Point> ring =
        ring(0, 0, 10, 0, 10, 4, 14, 4, 14, 0, 24, 0, 24, 10, 14, 10, 14, 6, 10, 6, 10, 10, 0, 10);
    Shape free = Setbacks.buildable(Shape.polygon(ring), Lots.sides(ring, List.of(1.5)));
    assertEquals(2, free.parts().size());
    assertEquals(98, free.area().squareMetres(), 1e-4);
  }

  /** Z-14: outside a cul-de-sac of R 50 ft, a setback of 25 ft is the concentric arc R 75. */
  @Test
  void buildable_arcSide_isTheConcentricArc() {
    Point centre = Point.metres(0, 0);
    // The lot lies above the street circle; its front is a quarter of it, about 45° to 135°.
    double c = 50 * FT * Math.sqrt(0.5);
    Arc front = new Arc(Point.metres(-c, c), Point.metres(c, c), centre, false);
    Line chords = front.chords(Arc.SAGITTA);
    List<Point> ring = new ArrayList<>(chords.points());
    ring.add(Point.metres(c, 60));
    ring.add(Point.metres(-c, 60));
    List<Setbacks.Side> sides = new ArrayList<>();
    sides.add(new Setbacks.Side("front", chords, Optional.of(front), Length.feet(25)));
    List<Point> rest =
        List.of(front.end(), Point.metres(c, 60), Point.metres(-c, 60), front.start());
    for (int i = 0; i < 3; i++) {
      sides.add(
          new Setbacks.Side(
              "straight " + i,
              Line.between(rest.get(i), rest.get(i + 1)),
              Optional.empty(),
              Length.ZERO));
    }
    Shape free = Setbacks.buildable(Shape.polygon(ring), sides);
    // The chords of the lot line lie up to 2 mm inside the street's circle.
    assertEquals(75, free.distance(centre).feet(), 0.0085);
    // Along the middle the setback line is the arc; a mitred chord would be off by far more.
    for (double deg = 65; deg <= 115; deg += 5) {
      double a = Math.toRadians(deg);
      Point onArc = Point.metres(75 * FT * Math.cos(a), 75 * FT * Math.sin(a));
      assertTrue(free.distance(onArc).metres() < 0.004, "at " + deg);
      assertTrue(
          !free.contains(Point.metres(74.97 * FT * Math.cos(a), 74.97 * FT * Math.sin(a))),
          "at " + deg);
    }
  }

  @Test
  void side_negativeDistance_isRefused() {
    List<Point> ring = rectangleFt(60, 120);
    assertThrows(PlanException.class, () -> Lots.sides(ring, List.of(-1.0)));
  }

  /** Large local origins (state-plane feet) must not change the result. */
  @Test
  void buildable_twoMillionFeetAway_isTheSame() {
    List<Point> near = ring(0, 0, 24, 0, 24, 12, 12, 12, 12, 24, 0, 24);
    double far = 2_000_000 * FT;
    List<Point> moved = new ArrayList<>();
    for (Point p : near) {
      moved.add(p.moved(Length.metres(far), Length.metres(far)));
    }
    double a =
        Setbacks.buildable(Shape.polygon(near), Lots.sides(near, List.of(2.0, 1.0, 3.0)))
            .area()
            .squareMetres();
    double b =
        Setbacks.buildable(Shape.polygon(moved), Lots.sides(moved, List.of(2.0, 1.0, 3.0)))
            .area()
            .squareMetres();
    assertEquals(a, b, 1e-5);
  }

  /** Memory asked for stands for the work done: it is the same in every run, time is not. */
  private static long workOfTaking(int corners) {
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * i / corners;
      ring.add(Point.metres(25 * StrictMath.cos(a), 25 * StrictMath.sin(a)));
    }
    List<Setbacks.Side> sides = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      sides.add(
          new Setbacks.Side(
              "side " + i,
              Line.between(ring.get(i), ring.get((i + 1) % corners)),
              Optional.empty(),
              Length.metres(1.5)));
    }
    Shape lot = Shape.polygon(ring);
    ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = thread.getThreadAllocatedBytes(Thread.currentThread().getId());
    Setbacks.taken(lot, sides);
    return thread.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
  }

  @Test
  void taken_fourTimesTheCorners_isFarFromSixteenTimesTheWork() {
    workOfTaking(20);
    double ratio = (double) workOfTaking(400) / workOfTaking(100);
    assertTrue(ratio < 9, "400 sides took " + ratio + " times the work of 100");
  }
}
