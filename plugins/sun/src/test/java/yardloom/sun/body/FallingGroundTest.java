package yardloom.sun.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
}
