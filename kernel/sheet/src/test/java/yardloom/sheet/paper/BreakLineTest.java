package yardloom.sheet.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class BreakLineTest {
  private static final Box AREA = new Box(0, 0, 100, 80);

  private static List<Xy> ring(double x, double y, double width, double height) {
    return Quad.of(new Box(x, y, width, height)).corners();
  }

  @Test
  void ring_within_hasNone() {
    assertTrue(BreakLine.where(ring(10, 10, 50, 50), AREA).isEmpty());
  }

  @Test
  void ring_outside_hasNone() {
    assertTrue(BreakLine.where(ring(110, 10, 50, 50), AREA).isEmpty());
  }

  @Test
  void ring_overTheLeftEdge_isBrokenThereOverItsHeight() {
    List<Ink> lines = BreakLine.where(ring(-20, 30, 50, 20), AREA);
    assertEquals(1, lines.size());
    List<Xy> points = ((Ink.Path) lines.get(0)).tracks().get(0).points();
    assertEquals(0, points.get(0).x());
    assertTrue(points.get(0).y() <= 30 && points.get(points.size() - 1).y() >= 50);
  }

  @Test
  void ring_overACorner_isBrokenAtBothEdges() {
    assertEquals(2, BreakLine.where(ring(80, 60, 50, 50), AREA).size());
  }

  @Test
  void ring_twoArmsOverTheEdge_areBrokenEach() {
    List<Xy> fork =
        List.of(
            new Xy(10, 10),
            new Xy(90, 10),
            new Xy(90, 95),
            new Xy(70, 95),
            new Xy(70, 40),
            new Xy(30, 40),
            new Xy(30, 95),
            new Xy(10, 95));
    assertEquals(2, BreakLine.where(fork, AREA).size());
  }
}
