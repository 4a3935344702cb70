package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Laws that hold for every lot. */
class GeometryLawsTest {
  /** Offsets snap by a millionth of the distance, overlays to 0.1 µm; more than both together. */
  private static final double SNAP_M = 1e-5;

  @Provide
  Arbitrary<List<Point>> rings() {
    return Lots.rings();
  }

  @Provide
  Arbitrary<List<Double>> distances() {
    return Arbitraries.doubles().between(0, 4).ofScale(2).list().ofMinSize(1).ofMaxSize(6);
  }

  @Property(tries = 80, seed = "20261125")
  void setbacks_anyLot_keepEveryDistanceAndAddUp(
      @ForAll("rings") List<Point> ring, @ForAll("distances") List<Double> d) {
    Shape lot = Shape.polygon(ring);
    List<Setbacks.Side> sides = Lots.sides(ring, d);
    Shape free = Setbacks.buildable(lot, sides);
    assertTrue(free.jts().isValid());
    assertTrue(lot.covers(free));
    for (Setbacks.Side side : sides) {
      if (!free.isEmpty()) {
        assertTrue(
            free.jts().distance(side.line().jts()) >= side.distance().metres() - 1e-3, side.name());
      }
    }
    double taken =
        Setbacks.taken(lot, sides).stream()
            .mapToDouble(t -> t.ground().area().squareMetres())
            .sum();
    assertEquals(lot.area().squareMetres(), free.area().squareMetres() + taken, 1e-3);
  }

  @Property(tries = 50, seed = "20261125")
  void setbacks_largerDistances_leaveLess(
      @ForAll("rings") List<Point> ring,
      @ForAll("distances") List<Double> d,
      @ForAll @DoubleRange(min = 0.01, max = 2) double more) {
    Shape lot = Shape.polygon(ring);
    Shape small = Setbacks.buildable(lot, Lots.sides(ring, d.stream().map(x -> x + more).toList()));
    Shape large = Setbacks.buildable(lot, Lots.sides(ring, d));
    assertTrue(small.minus(large).area().squareMetres() < 1e-3);
  }

  /** With one distance the setback holds all ground that a true buffer takes, and mitres more. */
  @Property(tries = 50, seed = "20261125")
  void setbacks_oneDistance_lieInsideTheRoundInset(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0.1, max = 3) double d) {
    Shape lot = Shape.polygon(ring);
    Shape inset = Shape.union(Inset.of(lot, Length.metres(d)));
    Shape free = Setbacks.buildable(lot, Lots.sides(ring, List.of(d)));
    // Both are exact to half a millimetre along their boundary.
    assertTrue(free.minus(inset).area().squareMetres() < 1e-3 * (1 + inset.perimeter().metres()));
  }

  @Property(tries = 50, seed = "20261125")
  void setbacks_convexLot_equalTheInset(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0.1, max = 3) double d) {
    Shape lot = Lots.convexHull(ring);
    Shape inset = Shape.union(Inset.of(lot, Length.metres(d)));
    Shape free = Setbacks.buildable(lot, Lots.sides(lot.corners(), List.of(d)));
    assertEquals(inset.area().squareMetres(), free.area().squareMetres(), 1e-3);
  }

  @Property(tries = 50, seed = "20261125")
  void inset_bothMethods_agree(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0.1, max = 3) double d) {
    Shape lot = Shape.polygon(ring);
    Shape byBuffer = Shape.union(Inset.of(lot, Length.metres(d)));
    Shape byEdges = Inset.byEdges(lot, Length.metres(d));
    // Their round corners differ by up to a millimetre along the boundary.
    double mostM2 = 1e-3 * (1 + byBuffer.perimeter().metres());
    assertTrue(byEdges.minus(byBuffer).area().squareMetres() < mostM2);
    assertTrue(byBuffer.minus(byEdges).area().squareMetres() < mostM2);
  }

  /** Convex: inset by a, then by b, is the inset by a + b. */
  @Property(tries = 30, seed = "20261125")
  void inset_convexTwice_isTheInsetByTheSum(
      @ForAll("rings") List<Point> ring,
      @ForAll @DoubleRange(min = 0.1, max = 1.5) double a,
      @ForAll @DoubleRange(min = 0.1, max = 1.5) double b) {
    Shape lot = Lots.convexHull(ring);
    Shape once = Shape.union(Inset.of(lot, Length.metres(a)));
    Shape twice = Shape.union(Inset.of(once, Length.metres(b)));
    Shape sum = Shape.union(Inset.of(lot, Length.metres(a + b)));
    assertEquals(sum.area().squareMetres(), twice.area().squareMetres(), 1e-3);
  }

  /**
   * Opening lies in the shape: what is shrunk keeps the distance to the inset's tolerance, and
   * growing never exceeds it, so no point ends further outside than that tolerance.
   */
  @Property(tries = 30, seed = "20261125")
  void shrunkThenGrown_anyLot_liesInTheLot(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0.1, max = 9) double d) {
    Shape lot = Shape.polygon(ring);
    Shape opened = lot.shrunk(Length.metres(d)).grown(Length.metres(d));
    assertTrue(atLeastGrown(lot, Inset.TOLERANCE_M).covers(opened));
  }

  /**
   * The shape lies in its closing. What the chords of round corners fall short is made up before
   * shrinking: afterwards it could not be bounded, as it counts many times over at a needle's tip.
   */
  @Property(tries = 30, seed = "20261125")
  void grownThenShrunk_anyLot_coversTheLot(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0.1, max = 9) double d) {
    Shape lot = Shape.polygon(ring);
    assertTrue(atLeastGrown(lot, d).shrunk(Length.metres(d)).covers(lot));
  }

  /** No point within the distance, less the chords' sagitta, is left out of a grown shape. */
  @Property(tries = 30, seed = "20261125")
  void grown_grownOrShrunkLot_reachesTheDistance(
      @ForAll("rings") List<Point> ring,
      @ForAll @DoubleRange(min = 0.1, max = 9) double first,
      @ForAll @DoubleRange(min = 0.1, max = 9) double second) {
    // Grown twice: its round corners bend so gently that the library leaves them unfilled.
    Shape lot = Shape.polygon(ring).grown(Length.metres(first));
    double gotM =
        lot.grown(Length.metres(second)).jts().getBoundary().distance(lot.jts().getBoundary());
    assertEquals(second, gotM, Shape.GROWN_WITHIN.metres() + SNAP_M);
  }

  private static Shape atLeastGrown(Shape shape, double distanceM) {
    return shape.grown(Length.metres(distanceM + SNAP_M).plus(Shape.GROWN_WITHIN));
  }

  /** Steiner: growing adds at most P r + π r². */
  @Property(tries = 30, seed = "20261125")
  void grown_anyLot_staysBelowSteiner(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0.1, max = 3) double r) {
    Shape lot = Shape.polygon(ring);
    double bound = lot.area().squareMetres() + lot.perimeter().metres() * r + Math.PI * r * r;
    assertTrue(lot.grown(Length.metres(r)).area().squareMetres() <= bound + 1e-6);
  }

  @Property(tries = 30, seed = "20261125")
  void setbacks_turnedOrReversedLot_leaveTheSameArea(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = -180, max = 180) double deg) {
    Shape lot = Shape.polygon(ring);
    double expected = Setbacks.buildable(lot, Lots.sides(ring, List.of(1.0))).area().squareMetres();
    Shape turned = lot.turned(Angle.degrees(deg), Point.metres(5, 7));
    double got =
        Setbacks.buildable(turned, Lots.sides(turned.corners(), List.of(1.0)))
            .area()
            .squareMetres();
    assertEquals(expected, got, 1e-3);
    List<Point> reversed = new ArrayList<>(ring);
    Collections.reverse(reversed);
    assertEquals(lot, Shape.polygon(reversed));
  }

  @Property(tries = 30, seed = "20261125")
  void partition_bedsOnLot_addUpToTheLot(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0, max = 180) double bearing) {
    Shape lot = Shape.polygon(ring);
    List<Partition.Claim> claims = new ArrayList<>();
    Strips.Layout layout =
        Strips.Layout.of(Length.metres(1.2), Length.metres(0.6), Angle.degrees(bearing));
    for (Shape strip : Strips.fill(lot, layout)) {
      claims.add(new Partition.Claim("bed", strip));
    }
    for (Strips.Gap gap : Strips.gaps(lot, layout)) {
      claims.add(new Partition.Claim("path", gap.ground()));
    }
    List<Partition.Part> parts = Partition.of(lot, claims, "rest");
    double sum = parts.stream().mapToDouble(p -> p.ground().area().squareMetres()).sum();
    assertEquals(lot.area().squareMetres(), sum, 1e-4);
    for (int i = 0; i < claims.size(); i++) {
      assertEquals(
          claims.get(i).ground().area().squareMetres(),
          parts.get(i).ground().area().squareMetres(),
          1e-4,
          "strips and gaps do not overlap");
    }
  }

  @Property(tries = 6, seed = "20261125")
  void stripSearch_anyRegion_neverLosesAgainstTheEdge(@ForAll("rings") List<Point> ring) {
    Shape region = Shape.polygon(ring);
    StripSearch.Found found = StripSearch.best(region, Length.metres(1.2), Length.metres(0.6));
    assertTrue(found.area().squareMetres() >= found.plain().squareMetres());
    assertEquals(found, StripSearch.best(region, Length.metres(1.2), Length.metres(0.6)));
  }

  /** P-06: with free sides the ground out of reach is the bed eroded by the reach. */
  @Property(tries = 30, seed = "20261125")
  void reach_freeBed_isTheErosion(
      @ForAll("rings") List<Point> ring, @ForAll @DoubleRange(min = 0.3, max = 3) double d) {
    Shape bed = Shape.polygon(ring);
    Shape beyond = Reach.beyond(bed, List.of(), Length.metres(d), Length.metres(0.3));
    Shape eroded = bed.shrunk(Length.metres(d));
    // Both keep the distance along their whole boundary, one to half a millimetre, one to one.
    double slackM2 = Inset.TOLERANCE_M * (1 + eroded.perimeter().metres());
    assertTrue(beyond.minus(eroded).area().squareMetres() < slackM2);
    assertTrue(eroded.minus(beyond).area().squareMetres() < slackM2);
  }
}
