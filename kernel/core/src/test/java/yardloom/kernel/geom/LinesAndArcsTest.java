package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Lines, arcs and axes. Source: plane geometry, worked beside each value. */
class LinesAndArcsTest {
  private static Point p(double xM, double yM) {
    return Point.metres(xM, yM);
  }

  private static Length m(double metres) {
    return Length.metres(metres);
  }

  /** East 3 m, then north 4 m: 7 m along, and 5 m from end to end. */
  private static final Line BENT = Line.through(List.of(p(1, 2), p(4, 2), p(4, 6)));

  private static void assertAt(double x, double y, Point got) {
    assertEquals(0, got.distance(p(x, y)).metres(), 1e-9, got.toString());
  }

  /** A quarter of a circle of 10 m: 15.708 m, from east to north by the left, and back. */
  @Test
  void arc_hasItsLength_andCanBeDrawnBackwards() {
    Arc quarter = new Arc(p(10, 0), p(0, 10), p(0, 0), true);
    assertEquals(Math.PI * 5, quarter.length().metres(), 1e-9);
    Arc back = quarter.reversed();
    assertAt(0, 10, back.start());
    assertAt(10, 0, back.end());
    assertFalse(back.left());
    assertEquals(Math.PI * 5, back.length().metres(), 1e-9);
    Arc rest = new Arc(p(10, 0), p(0, 10), p(0, 0), false);
    assertEquals(Math.PI * 15, rest.length().metres(), 1e-9);
    assertTrue(rest.reversed().left());
  }

  /**
   * A chord of the angle a lies r (1 − cos(a/2)) off its arc: for 0.1 m at 10 m a is 0.28307 rad,
   * so a quarter turn takes 5.55, six chords; the corners lie on the arc, turned 15° each.
   */
  @Test
  void chords_keepTheSagitta_withCornersOnTheArc() {
    Angle quarter = Angle.degrees(90);
    assertEquals(6, Arc.chordCount(m(10), quarter, m(0.1)));
    double six = 10 * (1 - Math.cos(Math.toRadians(7.5)));
    assertEquals(6, Arc.chordCount(m(10), quarter, m(six)), "just six");
    assertEquals(7, Arc.chordCount(m(10), quarter, m(six * 0.999)));
    assertEquals(1, Arc.chordCount(m(10), quarter, m(50)));
    List<Point> corners = new Arc(p(10, 0), p(0, 10), p(0, 0), true).chords(m(0.1)).points();
    assertEquals(7, corners.size());
    for (int i = 0; i < 7; i++) {
      double a = Math.toRadians(15 * i);
      assertAt(10 * Math.cos(a), 10 * Math.sin(a), corners.get(i));
    }
    List<Point> back = new Arc(p(0, 10), p(10, 0), p(0, 0), false).chords(m(0.1)).points();
    assertAt(10 * Math.cos(Math.toRadians(75)), 10 * Math.sin(Math.toRadians(75)), back.get(1));
  }

  /** From 1 to 5 m along the bent line: from (2, 2) round its bend to (4, 4). */
  @Test
  void part_followsTheLine() {
    Line part = BENT.part(m(1), m(5));
    assertEquals(4, part.length().metres(), 1e-9);
    assertAt(2, 2, part.start());
    assertAt(4, 2, part.points().get(1));
    assertAt(4, 4, part.end());
    assertEquals(7, BENT.part(m(0), m(7)).length().metres(), 1e-9);
    for (double[] wrong : new double[][] {{-0.1, 2}, {2, 2}, {3, 2}, {0, 7.1}}) {
      assertThrows(PlanException.class, () -> BENT.part(m(wrong[0]), m(wrong[1])));
    }
  }

  @Test
  void places_alongTheLine_areFoundBothWays() {
    assertAt(4, 3, BENT.at(m(4)));
    assertAt(1, 2, BENT.at(m(0)));
    assertAt(4, 6, BENT.at(m(7)));
    assertAt(4, 2.5, BENT.middle());
    assertThrows(PlanException.class, () -> BENT.at(m(7.1)));
    assertThrows(PlanException.class, () -> BENT.at(m(-0.1)));
    assertEquals(4, BENT.along(p(9, 3)).metres(), 1e-9);
    assertEquals(2, BENT.along(p(3, -5)).metres(), 1e-9);
    Line moved = BENT.moved(m(10), m(-1));
    assertAt(11, 1, moved.start());
    assertAt(14, 5, moved.end());
    assertAt(1, 2, p(1, 2).to(p(3, 3)).start());
  }

  /** 5 m of a straight line at a width of 2 m: 10 m²; beside it, from 1 to 3 m off, on its left. */
  @Test
  void strips_lieAboutTheLineAndOnItsLeft() {
    Line straight = Line.between(p(0, 0), p(5, 0));
    assertEquals(10, straight.strip(m(2)).area().squareMetres(), 1e-9);
    assertAt(2.5, 0, straight.strip(m(2)).centroid());
    assertEquals(10, straight.strip(m(1), m(2)).area().squareMetres(), 1e-9);
    assertAt(2.5, 2, straight.strip(m(1), m(2)).centroid());
  }

  @Test
  void linesAreAlike_byTheirPointsInOrder() {
    Line same = Line.through(List.of(p(1, 2), p(4, 2), p(4, 6)));
    assertEquals(BENT, same);
    assertEquals(BENT.hashCode(), same.hashCode());
    assertFalse(BENT.equals(BENT.reversed()));
    assertTrue(BENT.hashCode() != BENT.moved(m(1), m(1)).hashCode());
    assertEquals("LINESTRING (1 2, 4 2, 4 6)", BENT.toString());
    assertTrue(p(1, 9).compareTo(p(2, 0)) < 0 && p(2, 0).compareTo(p(1, 9)) > 0);
    assertTrue(p(1, 2).compareTo(p(1, 3)) < 0 && p(1, 3).compareTo(p(1, 2)) > 0);
    assertEquals(0, p(1, 2).compareTo(p(1, 2)));
  }

  /**
   * Seen along a bearing a box of 6 by 2 m has other measures: to the north 2 long and 6 wide; to
   * the north-east (6 + 2) / √2 both.
   */
  @ParameterizedTest
  @CsvSource({"90, 6, 2, 90", "0, 2, 6, 0", "45, 5.65685, 5.65685, 45", "270, 6, 2, 90"})
  void axis_alongABearing_measuresThatWay(
      double bearing, double length, double width, double seen) {
    Shape box = Shape.rectangle(p(10, 20), m(6), m(2));
    LongAxis axis = LongAxis.along(box, Angle.degrees(bearing));
    assertEquals(length, axis.length().metres(), 1e-5);
    assertEquals(width, axis.width().metres(), 1e-5);
    assertEquals(seen, axis.bearing().degrees(), 1e-9);
    assertThrows(IllegalStateException.class, () -> LongAxis.along(Shape.EMPTY, Angle.degrees(0)));
  }

  /**
   * A U of 6 by 3 m open upwards, its gap from 2 to 4 m: above 1 m a row has two pieces of 2 m, the
   * left one first, both to the right.
   */
  @Test
  void row_throughAGap_hasItsPiecesInOrder() {
    Shape u = Shape.rectangle(p(0, 0), m(6), m(3)).minus(Shape.rectangle(p(2, 1), m(2), m(2)));
    List<Line> pieces = LongAxis.of(u).row(m(2));
    assertEquals(2, pieces.size());
    assertAt(0, 2, pieces.get(0).start());
    assertAt(2, 2, pieces.get(0).end());
    assertAt(4, 2, pieces.get(1).start());
    assertAt(6, 2, pieces.get(1).end());
    assertEquals(1, LongAxis.of(u).row(m(0.5)).size());
    assertEquals(0, LongAxis.of(u).row(m(3.5)).size());
    LongAxis turned = LongAxis.of(u.turned(Angle.degrees(180), p(0, 0)));
    List<Line> back = turned.row(m(1));
    assertAt(-6, -2, back.get(0).start());
    assertAt(0, -2, back.get(1).end());
  }

  /** A way that comes back on itself does so whatever its length; a bend of 179° does not. */
  @Test
  void turningBack_isExactly() {
    Coordinate at = new Coordinate(3, 4);
    Coordinate before = new Coordinate(1, 1);
    assertTrue(Quads.turnsBack(before, at, new Coordinate(1, 1)));
    assertTrue(Quads.turnsBack(before, at, new Coordinate(-1, -2)));
    assertFalse(Quads.turnsBack(before, at, new Coordinate(5, 7)), "straight on");
    assertFalse(Quads.turnsBack(before, at, new Coordinate(1, 1.05)));
    assertFalse(Quads.turnsBack(before, at, new Coordinate(6, 2)), "square");
  }

  /**
   * A circle of 200 pieces and 10 m, freehand, and the ground within 1 m: a ring from 9 to 11 m, π
   * (121 − 81) = 125.7 m², put together from two halves with nothing missing in the middle.
   */
  @Test
  void ground_aboutALongClosedLine_isARing() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 200; i++) {
      double a = 2 * Math.PI * (i % 200) / 200;
      points.add(p(10 * Math.cos(a), 10 * Math.sin(a)));
    }
    LineString ring = Line.through(points).jts();
    Geometry ground = Overlay.FACTORY.createPolygon();
    for (Geometry piece : Around.pieces(ring, 1)) {
      ground = ground.union(piece);
    }
    assertEquals(40 * Math.PI, ground.getArea(), 0.2);
    assertFalse(ground.contains(spot(0, 0)));
    for (int degrees = 0; degrees < 360; degrees += 15) {
      double a = Math.toRadians(degrees);
      assertTrue(ground.contains(spot(10.9 * Math.cos(a), 10.9 * Math.sin(a))), "" + degrees);
    }
  }

  private static Geometry spot(double x, double y) {
    return Overlay.FACTORY.createPoint(new Coordinate(x, y));
  }
}
