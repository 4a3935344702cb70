package yardloom.sun.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FallingGroundTest {
  /**
   * A fall of 0.2 towards a bearing: east falls to the right, south rises up the plan. Where true
   * north lies to the right of the plan (90°), true south is its left. What is read back is the
   * bearing that was given.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, -0.2",
    "90, 0, -0.2, 0",
    "180, 0, 0, 0.2",
    "270, 0, 0.2, 0",
    "180, 90, 0.2, 0",
    "0, 90, -0.2, 0",
    "30, 0, -0.1, -0.173205"
  })
  void fall_isTowardsItsBearing(double bearing, double north, double riseX, double riseY) {
    Ground ground = Ground.falling(0.2, Math.toRadians(bearing), Math.toRadians(north));
    assertEquals(riseX, ground.heightM(1, 0), 1e-6);
    assertEquals(riseY, ground.heightM(0, 1), 1e-6);
    assertEquals(0.2, ground.steepest(), 1e-12);
    double back = Math.toDegrees(ground.fallsTowardsRad(Math.toRadians(north)));
    assertEquals(0, Math.IEEEremainder(back - bearing, 360), 1e-6);
  }

  /** Levels on a plane far from the origin and not about it give that plane back. */
  @Test
  void levelsOnAPlane_giveIt() {
    List<double[]> levels = new ArrayList<>();
    for (double[] at : new double[][] {{10, 20}, {14, 21}, {11, 27}, {18, 29}, {13, 40}}) {
      levels.add(new double[] {at[0], at[1], 5 + 0.02 * at[0] - 0.03 * at[1]});
    }
    Ground ground = Ground.nearest(levels);
    assertEquals(0.02, ground.riseX(), 1e-12);
    assertEquals(-0.03, ground.riseY(), 1e-12);
  }

  /**
   * Heights 0, 0, 0 and 4 at the corners of a square of 2 m: about its middle, 1 m off, the sums of
   * x·z and y·z are 1 − 1 + 1 + 3 = 4, those of x² and y² 4: 1 m per metre both ways.
   */
  @Test
  void levelsOffAPlane_giveTheNearest() {
    Ground ground =
        Ground.nearest(
            List.of(
                new double[] {0, 0, 0},
                new double[] {2, 0, 0},
                new double[] {0, 2, 0},
                new double[] {2, 2, 4}));
    assertEquals(1, ground.riseX(), 1e-12);
    assertEquals(1, ground.riseY(), 1e-12);
  }

  /** Two levels, or many in one line across, say nothing of the fall beside it. */
  @Test
  void levelsInALine_areLevelGround() {
    List<double[]> line = new ArrayList<>();
    for (double m : new double[] {1, 2, 4, 8}) {
      line.add(new double[] {10 + m, 3 + 2 * m, m});
    }
    assertEquals(Ground.LEVEL, Ground.nearest(line));
    assertEquals(Ground.LEVEL, Ground.nearest(line.subList(0, 2)));
    List<double[]> along =
        List.of(new double[] {1, 3, 0}, new double[] {5, 3, 1}, new double[] {9, 3, 4});
    assertEquals(Ground.LEVEL, Ground.nearest(along));
  }

  /** Read back it is a bearing from 0 to below 360, also where north lies left of the plan. */
  @ParameterizedTest
  @CsvSource({"10, -30", "350, 200", "0, 359", "180, 10", "359.5, 0"})
  void bearing_isWithinTheCircle(double bearing, double north) {
    Ground ground = Ground.falling(0.1, Math.toRadians(bearing), Math.toRadians(north));
    double back = Math.toDegrees(ground.fallsTowardsRad(Math.toRadians(north)));
    assertEquals(bearing, back == 0 ? 0 : (back + 1e-9) % 360, 1e-6);
  }
}
