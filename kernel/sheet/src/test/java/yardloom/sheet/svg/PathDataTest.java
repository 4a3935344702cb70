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
}
