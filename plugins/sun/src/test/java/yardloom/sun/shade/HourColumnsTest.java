package yardloom.sun.shade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import yardloom.sun.body.Ground;

class HourColumnsTest {
  /** Abramowitz and Stegun 4.4.49 says 2e-8; the library is the judge of the recalled figures. */
  @Test
  void arcTangent_anyDirection_isThatOfTheLibrary() {
    Random random = new Random(20261128);
    for (int i = 0; i < 200_000; i++) {
      double x = random.nextGaussian() * (i % 3 == 0 ? 1e-3 : 1);
      double y = random.nextGaussian();
      assertEquals(StrictMath.atan2(y, x), HourColumns.arcTangent(y, x), 2.1e-8, x + ", " + y);
    }
  }

  @Test
  void between_anyDirectionAndThoseAtColumns_liesBetweenTheSameColumns() {
    HourColumns columns =
        new HourColumns(new EquatorialFrame(0.7, 0), Ground.LEVEL, 360, Math.tan(0.41));
    Random random = new Random(20261128);
    for (int i = 0; i < 200_000; i++) {
      double hourAngle = (random.nextInt(721) - 360) * StrictMath.PI / 360;
      double off = i % 2 == 0 ? random.nextDouble() : random.nextGaussian() * 1e-9;
      double x = StrictMath.cos(hourAngle + off);
      double y = StrictMath.sin(hourAngle + off);
      assertSame(columns, x, y);
    }
    for (double[] d : new double[][] {{0, 0}, {-1, 0.0}, {-1, -0.0}, {1, 0}, {0, 1}, {0, -1}}) {
      assertSame(columns, d[0], d[1]);
    }
  }

  private static void assertSame(HourColumns columns, double x, double y) {
    assertEquals(Math.ceil(columns.position(x, y)), Math.ceil(columns.between(x, y)), x + ", " + y);
  }
}
