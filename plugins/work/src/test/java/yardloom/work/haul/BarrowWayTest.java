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

  /**
   * Round the near end at 5 m, its corners kept 0.4 m off the fence, which is 0.1 m thick: two legs
   * of √(5.4² + 2.55²) = 5.97 m, and 0.9 m past the end, 12.84 in all and a hair more.
   */
  @Test
  void way_fenceBetween_goesRoundItsEnd() {
    Line way = new BarrowWay(List.of(FENCE)).between(Point.metres(0, -3), Point.metres(0, 3));
    assertEquals(12.84, way.length().metres(), 0.02);
    assertTrue(!way.jts().intersects(FENCE.jts()));
  }

  /** The middle of a bed 0.2 m off the fence is reached from its own side. */
  @Test
  void way_endBesideTheFence_staysOnItsSide() {
    Line way = new BarrowWay(List.of(FENCE)).between(Point.metres(-6, 3), Point.metres(0, 0.25));
    assertTrue(!way.jts().intersects(FENCE.jts()));
    assertEquals(Math.hypot(6, 2.75), way.length().metres(), 0.2);
  }

  /**
   * A house 10 m square, from 2 m below to 8 m above the straight way or the other way about: the
   * way keeps 0.4 m off it, 2 √(4.6² + 2.4²) + 10.8 = 21.18 m round its near side, a little less on
   * the rounded corner; 29.95 m round the far one.
   */
  @Test
  void way_goesRoundTheNearerSide() {
    for (double front : new double[] {-2, -8}) {
      Shape house = Shape.rectangle(Point.metres(0, front), Length.metres(10), Length.metres(10));
      Line way = new BarrowWay(List.of(house)).between(Point.metres(-5, 0), Point.metres(15, 0));
      assertEquals(21.1, way.length().metres(), 0.1);
    }
  }

  /** No way leads out of a yard that is closed all round: the straight one is taken. */
  @Test
  void way_outOfAClosedYard_isStraight() {
    Shape ring =
        Shape.rectangle(Point.metres(-4, -4), Length.metres(8), Length.metres(8))
            .minus(Shape.rectangle(Point.metres(-3, -3), Length.metres(6), Length.metres(6)));
    Line way = new BarrowWay(List.of(ring)).between(Point.metres(0, 0), Point.metres(12, 5));
    assertEquals(13, way.length().metres(), 1e-9);
    assertEquals(2, way.points().size());
  }
}
