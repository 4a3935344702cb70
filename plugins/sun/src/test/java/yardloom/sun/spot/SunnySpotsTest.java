package yardloom.sun.spot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Field;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

class SunnySpotsTest {
  private static final Shape ALL =
      Shape.rectangle(Point.metres(0, 0), Length.metres(20), Length.metres(10));

  /** Sun grows from 4 h in the west to 9 h in the east. */
  private static final Field SLOPE =
      Field.of(Point.metres(0, 0), Length.metres(0.5), 40, 20, i -> 4 + 5 * (i % 40) / 39.0);

  @Test
  void sunniestPlace_liesAtTheSunnySide() {
    SunnySpots.Spot best = new SunnySpots(SLOPE, ALL, 1).find(20, 1).get(0);
    assertTrue(best.ground().area().squareMetres() >= 20);
    assertTrue(best.ground().bounds().getMinX() >= 17, "as far east as 20 m² reach");
    assertEquals(20, best.ground().bounds().getMaxX(), 1e-9);
    assertTrue(best.least() <= best.mean());
  }

  @Test
  void places_doNotOverlapAndGetLessSunny() {
    List<SunnySpots.Spot> spots = new SunnySpots(SLOPE, ALL, 1).find(20, 3);
    assertEquals(3, spots.size());
    for (int i = 1; i < 3; i++) {
      assertTrue(spots.get(i).least() <= spots.get(i - 1).least());
      assertTrue(!spots.get(i).ground().overlaps(spots.get(i - 1).ground()));
    }
  }

  @Test
  void narrowStrip_isNotAPlace() {
    Shape strip = Shape.rectangle(Point.metres(0, 0), Length.metres(20), Length.metres(0.6));
    assertTrue(new SunnySpots(SLOPE, strip, 1.2).find(5, 1).isEmpty());
  }

  @Test
  void groundSplitInTwo_isNotAddedUp() {
    Shape left = Shape.rectangle(Point.metres(0, 0), Length.metres(4), Length.metres(4));
    Shape right = Shape.rectangle(Point.metres(10, 0), Length.metres(4), Length.metres(4));
    SunnySpots spots = new SunnySpots(SLOPE, left.plus(right), 1);
    assertTrue(spots.find(20, 1).isEmpty(), "neither half has 20 m²");
    assertEquals(1, spots.find(16, 1).size());
  }
}
