package yardloom.sheet.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Xy;

/** Arcs of the plan are arcs on paper; C-07 of the reference: a curb return of 20 ft and 90°. */
class PathDataTest {
  private static final double MM_PER_M = 1000 / 120.0;

  private static List<Xy> onPaper(Line line) {
    return line.points().stream()
        .map(p -> new Xy(p.x().metres() * MM_PER_M, 100 - p.y().metres() * MM_PER_M))
        .toList();
  }

  private static Line curbReturn() {
    Point start = new Point(Length.feet(40), Length.ZERO);
    Point end = new Point(Length.feet(60), Length.feet(20));
    Point centre = new Point(Length.feet(40), Length.feet(20));
    return new Arc(start, end, centre, true).chords(Arc.SAGITTA);
  }

  private static String data(List<Xy> points) {
    return PathData.of(new Ink.Track(points, false));
  }

  /** 20 ft at 1:120 are 50.8 mm; a left turn on the plan runs counter-clockwise on paper too. */
  @Test
  void of_curbReturn_isOneArcOfItsRadius() {
    Matcher arc =
        Pattern.compile("M\\S+ \\S+A(\\S+) \\S+ 0 0 ([01]) (\\S+) (\\S+)")
            .matcher(data(onPaper(curbReturn())));
    assertTrue(arc.matches(), data(onPaper(curbReturn())));
    assertEquals(50.8, Double.parseDouble(arc.group(1)), 0.01);
    assertEquals("0", arc.group(2));
    assertEquals(60 * 0.3048 * MM_PER_M, Double.parseDouble(arc.group(3)), 0.01);
  }

  @Test
  void of_curbReturnBackwards_turnsTheOtherWay() {
    assertTrue(data(onPaper(curbReturn().reversed())).contains(" 0 0 1 "));
  }

  /** A lot with a rounded corner: its straight sides stay straight. */
  @Test
  void of_lineArcLine_keepsTheStraightParts() {
    List<Xy> points = new ArrayList<>();
    points.add(new Xy(0, 100));
    points.addAll(onPaper(curbReturn()));
    points.add(new Xy(60 * 0.3048 * MM_PER_M, 0));
    String data = data(points);
    assertEquals(1, data.chars().filter(c -> c == 'A').count(), data);
    assertEquals(2, data.chars().filter(c -> c == 'L').count(), data);
  }

  /** An octagon is an octagon, and so is a regular figure of 24 sides with sides to be seen. */
  @Test
  void of_regularPolygon_staysOne() {
    for (int sides : new int[] {8, 24}) {
      List<Xy> points = new ArrayList<>();
      for (int i = 0; i < sides; i++) {
        double a = 2 * Math.PI * i / sides;
        points.add(new Xy(50 + 30 * Math.cos(a), 50 + 30 * Math.sin(a)));
      }
      assertFalse(data(points).contains("A"), sides + " sides");
    }
  }

  /** Points on a straight line lie on no circle; a doubled point is no arc. */
  @Test
  void of_straightOrDoubledPoints_isLines() {
    List<Xy> straight = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      straight.add(new Xy(i, 2 * i));
    }
    straight.add(new Xy(11, 22));
    String data = data(straight);
    assertFalse(data.contains("A") || data.contains("NaN"), data);
  }

  /** Points on a circle of 30 mm about (50, 50), a step of degrees apart. */
  private static List<Xy> onCircle(int chords, double stepDegrees) {
    List<Xy> points = new ArrayList<>();
    for (int i = 0; i <= chords; i++) {
      points.add(at(i * stepDegrees));
    }
    return points;
  }

  private static Xy at(double degrees) {
    double a = Math.toRadians(degrees);
    return new Xy(50 + 30 * Math.cos(a), 50 + 30 * Math.sin(a));
  }

  private static long count(String data, char command) {
    return data.chars().filter(c -> c == command).count();
  }

  /** Four chords are lines, five an arc to their last point. */
  @Test
  void of_fewChords_staysLines() {
    assertEquals(0, count(data(onCircle(4, 4)), 'A'));
    String arc = data(onCircle(5, 4));
    assertEquals(1, count(arc, 'A'));
    assertEquals(0, count(arc, 'L'));
    Xy end = at(20);
    assertTrue(
        arc.endsWith(" 0 0 1 " + SvgXml.number(end.x()) + " " + SvgXml.number(end.y())), arc);
  }

  /** No arc turns by more than 120°, so that no reader takes the other way round. */
  @Test
  void of_wideArc_isCutAtAThirdOfACircle() {
    assertEquals(1, count(data(onCircle(29, 4)), 'A'));
    assertEquals(1, count(data(onCircle(30, 3.99)), 'A'));
    assertEquals(2, count(data(onCircle(40, 4)), 'A'));
    assertEquals(3, count(data(onCircle(90, 3.99)), 'A'));
  }

  /** A longer chord ends the arc, a shorter one too; both parts stay arcs of their own. */
  @Test
  void of_unequalChords_isTwoArcs() {
    List<Xy> points = onCircle(8, 4);
    for (int i = 1; i <= 8; i++) {
      points.add(at(32 + 3 * i));
    }
    String data = data(points);
    assertEquals(2, count(data, 'A'), data);
    assertEquals(0, count(data, 'L'), data);
  }

  /** Back on the same circle by equal chords is no arc, nor is a circle that one point leaves. */
  @Test
  void of_pointsThatTurnBackOrLeaveTheCircle_isLines() {
    List<Xy> back = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      back.add(at(i % 2 == 0 ? 0 : 4));
    }
    assertEquals(0, count(data(back), 'A'));
    List<Xy> off = onCircle(8, 4);
    Xy fourth = off.get(4);
    off.set(4, new Xy(50 + (fourth.x() - 50) * 1.0003, 50 + (fourth.y() - 50) * 1.0003));
    assertFalse(data(off).startsWith("M80 50A30 30 0 0 1 " + SvgXml.number(at(32).x())));
  }
}
