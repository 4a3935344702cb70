package yardloom.water.drip.formula;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Rows led beside plants, worked by hand beside each; lengths in metres. */
class BesidePlantsTest {
  private static double[] beside(double[] rows, double[] plants, double feed) {
    return BesidePlants.of(rows, 0.4, 1.3, plants, 0.075, feed);
  }

  /** 0.63 lies 0.02 below a plant at 0.65: 0.575 is 0.055 away, 0.725 is 0.095. */
  @Test
  void row_goesToTheNearestFreePlace() {
    assertArrayEquals(
        new double[] {0.23, 0.575, 1.03},
        beside(new double[] {0.23, 0.63, 1.03}, new double[] {0.65}, 1.9),
        1e-12);
  }

  /** Right on the plant both sides are as near: the feed at 1.9 or at −0.7 decides. */
  @Test
  void tie_goesTowardsTheFeed() {
    double[] rows = {0.25, 0.65};
    assertArrayEquals(new double[] {0.25, 0.725}, beside(rows, new double[] {0.65}, 1.9), 1e-12);
    assertArrayEquals(new double[] {0.25, 0.575}, beside(rows, new double[] {0.65}, -0.7), 1e-12);
  }

  /** Plants at 0.60 and 0.72 leave 0.525 and 0.795: 0.115 and 0.155 from 0.64, of 0.1 allowed. */
  @Test
  void withoutAPlaceWithinAQuarterOfTheSpacing_rowStays() {
    assertArrayEquals(
        new double[] {0.64}, beside(new double[] {0.64}, new double[] {0.60, 0.72}, 0), 1e-12);
  }

  /** 0.09 under a plant at 0.13: 0.055 is nearer, but within a hand of the side; 0.205 is not. */
  @Test
  void row_keepsAHandFromTheSides_too() {
    assertArrayEquals(
        new double[] {0.09}, beside(new double[] {0.09}, new double[] {0.13}, 0), 1e-12);
    assertArrayEquals(
        new double[] {0.205}, beside(new double[] {0.11}, new double[] {0.13}, 0), 1e-12);
    assertArrayEquals(
        new double[] {1.115}, beside(new double[] {1.2}, new double[] {1.19}, 0), 1e-12);
  }

  @Test
  void free_isAHandAndMore() {
    assertTrue(BesidePlants.isFree(0.3, new double[] {0.2249, 0.9}, 0.075));
    assertFalse(BesidePlants.isFree(0.3, new double[] {0.226, 0.9}, 0.075));
  }

  /** Exactly a hand from either side, and exactly a quarter of the spacing away, is allowed. */
  @Test
  void limits_areAllowed() {
    assertArrayEquals(
        new double[] {0.075}, beside(new double[] {0.13}, new double[] {0.15}, 0), 1e-12);
    assertArrayEquals(
        new double[] {1.225}, beside(new double[] {1.17}, new double[] {1.15}, 0), 1e-12);
    // 0.55 is 0.1 from 0.65; 0.70 is too near the plant at 0.77, 0.695 to the one at 0.625.
    assertArrayEquals(
        new double[] {0.55}, beside(new double[] {0.65}, new double[] {0.625, 0.77}, 0), 1e-12);
  }

  /** Water that comes from within the bed, at 0.6: 0.575 is 0.025 from it, 0.725 is 0.125. */
  @Test
  void tie_goesTowardsAFeedInTheBed() {
    double[] row = {0.65};
    assertArrayEquals(new double[] {0.575}, beside(row, new double[] {0.65}, 0.6), 1e-12);
    assertArrayEquals(new double[] {0.725}, beside(row, new double[] {0.65}, 0.7), 1e-12);
  }
}
