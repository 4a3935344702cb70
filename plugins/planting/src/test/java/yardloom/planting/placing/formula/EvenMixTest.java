package yardloom.planting.placing.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

class EvenMixTest {
  /** Of 7 places at 4 : 2 : 1, by hand: the kind that lags most, the first of equals. */
  @Test
  void places_goToTheKindThatLags() {
    assertEquals(List.of(0, 1, 0, 2, 0, 1, 0), EvenMix.of(7, List.of(4.0, 2.0, 1.0)));
  }

  /** The law of the class comment, for every beginning of the places. */
  @ParameterizedTest
  @CsvSource({"5, 3, 1", "1, 1, 1", "70, 29, 1", "2, 7, 7"})
  void everyBeginning_holdsEachKindInItsShare(double a, double b, double c) {
    List<Double> weights = List.of(a, b, c);
    List<Integer> dealt = EvenMix.of(500, weights);
    for (int n = 1; n <= dealt.size(); n++) {
      for (int k = 0; k < 3; k++) {
        double share = n * weights.get(k) / (a + b + c);
        int has = Collections.frequency(dealt.subList(0, n), k);
        assertTrue(has < share + 1 && has > share - 2, n + " places: " + has + " of " + share);
      }
    }
  }

  @Test
  void nothingToShareBy_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> EvenMix.of(3, List.of(0.0)));
  }

  /** The side of a regular hexagon is the radius of its circle (Euclid, Elements IV.15). */
  @Test
  void sixInARing_standARadiusApart() {
    List<Point> at = RingPlaces.round(Point.metres(3, -2), Length.metres(1.7), 6);
    for (int i = 0; i < 6; i++) {
      assertEquals(1.7, at.get(i).distance(at.get((i + 1) % 6)).metres(), 1e-12);
      assertEquals(1.7, at.get(i).distance(Point.metres(3, -2)).metres(), 1e-12);
    }
  }

  /** 7.3 m hold three at 2 m, from 1.65 m on: (7.3 − 4) / 2. */
  @Test
  void row_isCentredOnItsLine() {
    List<Point> at =
        RingPlaces.along(Line.between(Point.metres(1, 1), Point.metres(8.3, 1)), Length.metres(2));
    assertEquals(3, at.size());
    assertEquals(2.65, at.get(0).x().metres(), 1e-9);
    assertEquals(6.65, at.get(2).x().metres(), 1e-9);
  }
}
