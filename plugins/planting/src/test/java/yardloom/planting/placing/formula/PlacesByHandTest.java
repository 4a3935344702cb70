package yardloom.planting.placing.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

/** Where plants stand. Source: plane geometry, worked beside each value. */
class PlacesByHandTest {
  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static Shape box(double width, double depth) {
    return Shape.rectangle(Point.metres(0, 0), m(width), m(depth));
  }

  /** Sorted from front to rear, then from left to right, in whole millimetres. */
  private static List<List<Long>> millimetres(List<Point> points) {
    return points.stream()
        .map(p -> List.of(Math.round(p.x().metres() * 1000), Math.round(p.y().metres() * 1000)))
        .sorted(
            java.util.Comparator.comparing((List<Long> p) -> p.get(1)).thenComparing(p -> p.get(0)))
        .toList();
  }

  /**
   * 2.2 by 1.2 m at 0.5 m: 1.7 m of room take three spacings and leave 0.2 m, half of it at either
   * end: 0.35, 0.85, 1.35 and 1.85 m; across 0.7 m take one and leave as much: 0.35 and 0.85 m.
   */
  @Test
  void squareLattice_liesInTheMiddle() {
    assertEquals(
        List.of(
            List.of(350L, 350L),
            List.of(850L, 350L),
            List.of(1350L, 350L),
            List.of(1850L, 350L),
            List.of(350L, 850L),
            List.of(850L, 850L),
            List.of(1350L, 850L),
            List.of(1850L, 850L)),
        millimetres(Lattice.points(box(2.2, 1.2), m(0.5), m(0.5), Layout.SQUARE)));
  }

  /** The second row is shifted by 0.25 m: 0.6, 1.1 and 1.6 m; 2.1 m is too near the end. */
  @Test
  void staggeredLattice_shiftsItsSecondRow() {
    assertEquals(
        List.of(
            List.of(350L, 375L),
            List.of(850L, 375L),
            List.of(1350L, 375L),
            List.of(1850L, 375L),
            List.of(600L, 775L),
            List.of(1100L, 775L),
            List.of(1600L, 775L)),
        millimetres(Lattice.points(box(2.2, 1.15), m(0.5), m(0.4), Layout.STAGGERED)));
  }

  /** A bed narrower than a spacing holds none, one just as wide a row. */
  @Test
  void bedAsWideAsASpacing_holdsARow_aNarrowerNone() {
    assertEquals(4, Lattice.points(box(2, 0.5), m(0.5), m(0.5), Layout.SQUARE).size());
    assertTrue(Lattice.points(box(2, 0.49), m(0.5), m(0.5), Layout.SQUARE).isEmpty());
    assertTrue(Lattice.points(Shape.EMPTY, m(0.5), m(0.5), Layout.SQUARE).isEmpty());
    assertThrows(
        IllegalArgumentException.class,
        () -> Lattice.points(box(2, 1), m(0), m(0.5), Layout.SQUARE));
    assertThrows(
        IllegalArgumentException.class,
        () -> Lattice.points(box(2, 1), m(0.5), m(0), Layout.SQUARE));
  }

  /** Ten metres: 0.3 of them, a half, and what is left, from the left end on. */
  @Test
  void shares_cutTheBedAcross_withoutOverlap() {
    List<Shape> pieces =
        BedShares.cut(box(10, 2), List.of(Optional.of(0.3), Optional.empty(), Optional.of(0.5)));
    double[] ends = {0, 3, 5, 10};
    for (int i = 0; i < 3; i++) {
      assertEquals(2 * (ends[i + 1] - ends[i]), pieces.get(i).area().squareMetres(), 1e-6);
      assertEquals((ends[i] + ends[i + 1]) / 2, pieces.get(i).centroid().x().metres(), 1e-6);
    }
  }

  @Test
  void oneShare_isAPart_andOneWithoutShareTheWholeBed() {
    Shape bed = box(10, 2);
    Shape part = BedShares.cut(bed, List.of(Optional.of(0.4))).get(0);
    assertEquals(8, part.area().squareMetres(), 1e-6);
    assertEquals(2, part.centroid().x().metres(), 1e-6);
    assertEquals(List.of(bed), BedShares.cut(bed, List.of(Optional.empty())));
    assertEquals(List.of(bed), BedShares.cut(bed, List.of(Optional.of(1.0))));
    assertThrows(PlanException.class, () -> BedShares.cut(bed, List.of(Optional.of(0.0))));
    assertThrows(PlanException.class, () -> BedShares.cut(bed, List.of(Optional.of(1.1))));
    assertEquals(2, BedShares.cut(bed, List.of(Optional.of(0.4), Optional.of(0.6))).size());
  }

  /**
   * Shares that make up the whole leave nothing for a kind without one; more than it is refused.
   */
  @Test
  void shares_mayBeTheWholeBed_notMore() {
    Shape bed = box(10, 2);
    assertEquals(
        List.of(10.0, 10.0),
        BedShares.cut(bed, List.of(Optional.of(0.5), Optional.of(0.5))).stream()
            .map(p -> Math.round(p.area().squareMetres() * 1e6) / 1e6)
            .toList());
    PlanException none =
        assertThrows(
            PlanException.class,
            () ->
                BedShares.cut(bed, List.of(Optional.of(0.5), Optional.of(0.5), Optional.empty())));
    assertTrue(
        none.getMessage().contains("add up to 1.0 and leave nothing for the other plants"),
        none.getMessage());
    PlanException more =
        assertThrows(
            PlanException.class,
            () -> BedShares.cut(bed, List.of(Optional.of(0.5), Optional.of(0.6))));
    assertTrue(
        more.getMessage().contains("add up to 1.1; together they may be at most 1"),
        more.getMessage());
    // Two without a share halve what one leaves: 4 m of ten, then 3 and 3.
    List<Shape> pieces =
        BedShares.cut(bed, List.of(Optional.of(0.4), Optional.empty(), Optional.empty()));
    assertEquals(8, pieces.get(0).area().squareMetres(), 1e-6);
    assertEquals(6, pieces.get(1).area().squareMetres(), 1e-6);
    assertEquals(8.5, pieces.get(2).centroid().x().metres(), 1e-6);
  }

  /** Two kinds by equal weight take turns, the first one first. */
  @Test
  void evenMix_beginsWithTheFirst() {
    assertEquals(List.of(0, 1, 0, 1), EvenMix.of(4, List.of(2.0, 2.0)));
    // Of three to one: lags 0.75, then 0.5 for the other, 1.25 and 1 again.
    assertEquals(List.of(0, 0, 1, 0), EvenMix.of(4, List.of(3.0, 1.0)));
    assertThrows(IllegalArgumentException.class, () -> EvenMix.of(4, List.of(0.0)));
  }

  /** 7.3 m at 2 m: three plants over 4 m, 1.65 m from either end. */
  @Test
  void row_alongALine_isCentred_andAsLongAsItsSpacingHoldsOne() {
    List<Point> row =
        RingPlaces.along(Line.between(Point.metres(1, 1), Point.metres(8.3, 1)), m(2));
    assertEquals(
        List.of(2650L, 4650L, 6650L), millimetres(row).stream().map(p -> p.get(0)).toList());
    assertEquals(
        3, RingPlaces.along(Line.between(Point.metres(0, 0), Point.metres(0.9, 0)), m(0.3)).size());
  }

  /** Distances 5, 1, 2 and 3 m: the two nearest, in the order in which they were given. */
  @Test
  void drift_takesTheNearestPlaces() {
    List<Point> places =
        List.of(Point.metres(3, 4), Point.metres(1, 0), Point.metres(0, 2), Point.metres(-3, 0));
    assertEquals(
        List.of(Point.metres(1, 0), Point.metres(0, 2)),
        RingPlaces.nearest(places, Point.metres(0, 0), 2));
    assertEquals(places, RingPlaces.nearest(places, Point.metres(0, 0), 9));
    // Equally far: the one further left.
    assertEquals(
        List.of(Point.metres(-3, 0)),
        RingPlaces.nearest(
            List.of(Point.metres(3, 0), Point.metres(-3, 0)), Point.metres(0, 0), 1));
  }

  /**
   * A strip of 2.2 by 0.4 m at 0.5 m: four fit, over 1.5 m, so 0.35 m from either end, down the
   * middle, 0.2 m from both sides. More than those 0.2 m cannot be kept.
   */
  @Test
  void oneRow_downTheMiddleOfAStrip_isCentred() {
    Shape strip = box(2.2, 0.4);
    assertEquals(
        List.of(
            List.of(350L, 200L), List.of(850L, 200L), List.of(1350L, 200L), List.of(1850L, 200L)),
        millimetres(Lattice.oneRow(strip, m(0.5), m(0.2))));
    assertTrue(Lattice.oneRow(strip, m(0.5), m(0.201)).isEmpty());
    assertEquals(
        List.of(List.of(250L, 150L)), millimetres(Lattice.oneRow(box(0.5, 0.3), m(0.5), m(0.1))));
    assertTrue(Lattice.oneRow(box(0.49, 0.3), m(0.5), m(0.1)).isEmpty());
    assertTrue(Lattice.oneRow(Shape.EMPTY, m(0.5), m(0.1)).isEmpty());
  }

  /**
   * Two strips of 1 m, one of them half a metre shorter at one end: only places pushed to the other
   * end, 1, 2 and 3 m off this one, stand half a metre inside both. Centred, the short one holds
   * two.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void bedCutBackAtOneEnd_isPlantedFromTheOther(boolean mirrored) {
    Shape shortOne = Shape.rectangle(Point.metres(mirrored ? 0 : 0.5, 0), m(3), m(1));
    Shape bed = Shape.union(List.of(shortOne, Shape.rectangle(Point.metres(0, 1), m(3.5), m(1))));
    long x = mirrored ? 500 : 1000;
    List<List<Long>> places = new ArrayList<>();
    for (long y : new long[] {500, 1500}) {
      for (int i = 0; i < 3; i++) {
        places.add(List.of(x + 1000 * i, y));
      }
    }
    assertEquals(places, millimetres(Lattice.points(bed, m(1), m(1), Layout.SQUARE)));
  }

  /**
   * The same across: left of 2 m the bed is half a metre narrower, so rows keep to its far side.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void bedCutBackAtOneSide_hasItsRowsAtTheOther(boolean mirrored) {
    Shape narrow = Shape.rectangle(Point.metres(0, mirrored ? 0 : 0.5), m(2), m(2));
    Shape bed = Shape.union(List.of(narrow, Shape.rectangle(Point.metres(2, 0), m(2), m(2.5))));
    long y = mirrored ? 500 : 1000;
    List<List<Long>> places = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      for (long x : new long[] {500, 1500, 2500, 3500}) {
        places.add(List.of(x, y + 1000 * row));
      }
    }
    assertEquals(places, millimetres(Lattice.points(bed, m(1), m(1), Layout.SQUARE)));
  }

  /** A hexagon's side is its radius, a square's √2 of it; across stand two, and wider one alone. */
  @ParameterizedTest
  @CsvSource({"1, 6", "1.01, 5", "1.4142, 4", "1.7320, 3", "2, 2", "2.01, 1"})
  void ring_holdsThePolygonWithThatSide(double spacing, int count) {
    assertEquals(count, RingPlaces.count(m(1), m(spacing)));
    assertEquals(count, RingPlaces.count(m(2.5), m(spacing * 2.5)));
  }

  /** Four on a circle of 3 m: up, right, down, left of the middle. */
  @Test
  void ring_beginsUpThePlan_andGoesRightAbout() {
    assertEquals(
        List.of(List.of(1L, 5L), List.of(4L, 2L), List.of(1L, -1L), List.of(-2L, 2L)),
        RingPlaces.round(Point.metres(1, 2), m(3), 4).stream()
            .map(p -> List.of(Math.round(p.x().metres()), Math.round(p.y().metres())))
            .toList());
  }

  /** Equally far and equally far left: the one further down. */
  @Test
  void drift_ofEqualPlaces_takesTheLower() {
    assertEquals(
        List.of(Point.metres(0, -3)),
        RingPlaces.nearest(
            List.of(Point.metres(0, 3), Point.metres(0, -3)), Point.metres(0, 0), 1));
  }
}
