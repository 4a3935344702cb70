package yardloom.work.haul;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** Ways round fences. Source: Pythagoras, and arcs of a barrow's half width, 0.4 m. */
class BarrowWayTest {
  private static final Shape FENCE =
      Line.between(Point.metres(-20, 0), Point.metres(5, 0)).strip(Length.metres(0.1));

  /** Round the near end at 5 m: two legs of about √(5.4² + 3²) = 6.18 m, 12.2 to 12.7 in all. */
  @Test
  void way_fenceBetween_goesRoundItsEnd() {
    Line way = new BarrowWay(List.of(FENCE)).between(Point.metres(0, -3), Point.metres(0, 3));
    assertEquals(12.45, way.length().metres(), 0.3);
    assertTrue(!way.jts().intersects(FENCE.jts()));
  }

  /** The middle of a bed 0.2 m off the fence is reached from its own side. */
  @Test
  void way_endBesideTheFence_staysOnItsSide() {
    Line way = new BarrowWay(List.of(FENCE)).between(Point.metres(-6, 3), Point.metres(0, 0.25));
    assertTrue(!way.jts().intersects(FENCE.jts()));
    assertEquals(Math.hypot(6, 2.75), way.length().metres(), 0.2);
  }
}
