package yardloom.planting.placing.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Who belongs nearer the pole, and on which ground. */
class TallKindsTest {
  /** By the rule of the class comment: 3 ft at least, and twice the other. */
  @ParameterizedTest
  @CsvSource({"3, 1.5, true", "2.9, 0.5, false", "5, 2.6, false", "5.3, 2.6, true"})
  void tall_isThreeFeetAndTwiceTheOther(double tall, double low, boolean is) {
    assertEquals(is, TallKinds.overtops(Length.feet(tall), Length.feet(low)));
  }

  /**
   * Of 0.75, 6, 2.5, 4, 1 and 2 ft: 6 overtops all up to 3, so 4 stands with it; of what is left
   * none reaches 3 ft.
   */
  @Test
  void tiers_areGroupsOfWhichNoneOvertopsAnother() {
    List<Length> heights = DoubleStream.of(0.75, 6, 2.5, 4, 1, 2).mapToObj(Length::feet).toList();
    assertEquals(List.of(List.of(1, 3), List.of(0, 2, 4, 5)), TallKinds.tiers(heights));
    // 8 overtops 4, and 4 overtops 2.
    List<Length> steps = DoubleStream.of(2, 4, 8).mapToObj(Length::feet).toList();
    assertEquals(List.of(List.of(2), List.of(1), List.of(0)), TallKinds.tiers(steps));
  }

  /** Each kind has as many places as in an even mix; none of a later tier is nearer the pole. */
  @Test
  void dealtMix_keepsCounts_andTallKindsAreNearestThePole() {
    Random random = new Random(12);
    for (int trial = 0; trial < 200; trial++) {
      int places = random.nextInt(60);
      List<Double> poleward = random.doubles(places).boxed().toList();
      List<Double> weights = random.doubles(5, 0.1, 1).boxed().toList();
      List<Integer> even = EvenMix.of(places, weights);
      List<Integer> dealt =
          TieredMix.of(poleward, weights, List.of(List.of(3, 1), List.of(4), List.of(0, 2)));
      for (int kind = 0; kind < 5; kind++) {
        assertEquals(Collections.frequency(even, kind), Collections.frequency(dealt, kind));
      }
      double first = least(dealt, poleward, List.of(1, 3));
      double second = least(dealt, poleward, List.of(4));
      assertTrue(first >= most(dealt, poleward, List.of(0, 2, 4)));
      assertTrue(second >= most(dealt, poleward, List.of(0, 2)));
    }
  }

  private static double least(List<Integer> dealt, List<Double> poleward, List<Integer> of) {
    return -most(dealt, poleward.stream().map(p -> -p).toList(), of);
  }

  private static double most(List<Integer> dealt, List<Double> poleward, List<Integer> of) {
    return IntStream.range(0, dealt.size())
        .filter(i -> of.contains(dealt.get(i)))
        .mapToDouble(poleward::get)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * A triangle with its base of 4 m at y = 0 and its tip at y = 2: a quarter of its 4 m² lies above
   * half its height, as areas go with the square of lengths (Euclid, Elements VI.19).
   */
  @ParameterizedTest
  @CsvSource({"0, 0.25, 1.5", "180, 0.75, 0.5"})
  void cut_isByArea_fromTheEndThatTheBearingLeadsTo(double bearing, double share, double middleY) {
    Shape triangle =
        Shape.polygon(List.of(Point.metres(0, 0), Point.metres(4, 0), Point.metres(2, 2)));
    List<Shape> pieces = AreaCut.cut(triangle, Angle.degrees(bearing), List.of(share, 1 - share));
    assertEquals(4 * share, pieces.get(0).area().squareMetres(), 1e-5);
    assertEquals(4 - 4 * share, pieces.get(1).area().squareMetres(), 1e-5);
    assertTrue(pieces.get(0).insideTest().test(Point.metres(2, middleY)));
    assertTrue(!pieces.get(1).insideTest().test(Point.metres(2, middleY)));
  }
}
