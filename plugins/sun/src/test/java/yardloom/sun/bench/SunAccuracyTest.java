package yardloom.sun.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.position.SunYear;

/** The whole year of the benchmark's scene beside a ray test of every 5 minutes of it. */
class SunAccuracyTest {
  private static void compare(double cellM, int stride) {
    BenchScene scene = new BenchScene(14);
    CellGrid grid = BenchScene.grid(cellM);
    BruteForce brute =
        new BruteForce(
            BenchScene.LATITUDE, BenchScene.LONGITUDE, SunYear.REFERENCE_YEAR, 5, scene.blockers);
    double[] off =
        SunBenchmark.difference(
            SunBenchmark.engineYear(scene, grid, 288), brute.yearHours(grid, stride), stride);
    assertTrue(off[0] < 0.02, "worst cell off by " + off[0]);
    assertTrue(off[1] < 0.002, "mean off by " + off[1]);
  }

  @Test
  void yearOfFewCells_equalsRayTest() {
    compare(1, 97);
  }

  @Test
  @Tag("heavy")
  void yearOfManyCells_equalsRayTest() {
    // Centres of cells of 25 cm lie on no wall's face, where both sides would be right.
    compare(0.25, 7);
  }
}
