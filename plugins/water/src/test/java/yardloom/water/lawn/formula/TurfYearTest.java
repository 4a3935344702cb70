package yardloom.water.lawn.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Temperature;

/** Months of turf by hand: three different coefficients, so that none stands for another. */
class TurfYearTest {
  private static final TurfYear TURF = new TurfYear(0.8, 0.9, 0.7, Temperature.celsius(5));

  private static List<Double> months(double... meansC) {
    return TURF.monthly(Arrays.stream(meansC).mapToObj(Temperature::celsius).toList());
  }

  /** April (11) is the first above 5 °C, November (just 5) the last that grows. */
  @Test
  void northernTurf_startsInAprilAndEndsInNovember() {
    assertEquals(
        List.of(0.0, 0.0, 0.0, 0.8, 0.9, 0.9, 0.9, 0.9, 0.9, 0.9, 0.7, 0.0),
        months(-4, -2, 4, 11, 17, 22, 24, 23, 19, 12, 5, -2));
  }

  /** In the south it grows through New Year, from September to May. */
  @Test
  void southernTurf_growsThroughNewYear() {
    assertEquals(
        List.of(0.9, 0.9, 0.9, 0.9, 0.7, 0.0, 0.0, 0.0, 0.8, 0.9, 0.9, 0.9),
        months(20, 19, 16, 12, 8, 4, 3, 4, 8, 12, 15, 18));
  }

  /** December and January alone: the first of them starts, the second ends it. */
  @Test
  void twoMonthsAcrossNewYear_areStartAndEnd() {
    assertEquals(
        List.of(0.7, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.8),
        months(6, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 6));
  }

  @Test
  void turfThatNeverSleeps_isInItsMiddleAllYear_andWithoutTwelveMonthsRefused() {
    double[] warm = new double[12];
    Arrays.fill(warm, 20);
    assertEquals(Collections.nCopies(12, 0.9), months(warm));
    assertThrows(IllegalArgumentException.class, () -> months(1, 2, 3));
  }
}
