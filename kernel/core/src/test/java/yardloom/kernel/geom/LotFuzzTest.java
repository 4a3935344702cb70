package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Many random lots through everything that offsets; run with -Pheavy -Dfuzz.tries=100000. */
class LotFuzzTest {
  private static final long SEED = 20260301;

  @Test
  @Tag("heavy")
  void offsets_manyRandomLots_neverFail() {
    int tries = Integer.getInteger("fuzz.tries", 2_000);
    long seed = Long.getLong("fuzz.seed", SEED);
    SplittableRandom random = new SplittableRandom(seed);
    List<String> failures = new ArrayList<>();
    for (int i = 0; i < tries; i++) {
      List<Point> ring = ring(random);
      List<Double> distances = new ArrayList<>();
      for (int k = 0; k < 5; k++) {
        distances.add(random.nextInt(4) == 0 ? 0 : random.nextDouble(8));
      }
      try {
        check(ring, distances, random.nextDouble(0.01, 4), random.nextDouble(180));
      } catch (RuntimeException | AssertionError e) {
        failures.add(i + ": " + e.getMessage() + " on " + ring + " by " + distances);
      }
    }
    assertTrue(
        failures.isEmpty(),
        failures.size() + " of " + tries + " with seed " + seed + ": " + failures);
  }

  private static List<Point> ring(SplittableRandom random) {
    int n = random.nextInt(3, 24);
    List<Double> radii = new ArrayList<>();
    List<Double> jitter = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      radii.add(random.nextDouble(1, 40));
      jitter.add(random.nextDouble(-0.45, 0.45));
    }
    return Lots.ring(radii, jitter);
  }

  private static void check(
      List<Point> ring, List<Double> distances, double insetM, double bearingDeg) {
    Shape lot = Shape.polygon(ring);
    // The sides follow the ring as it was drawn, counter-clockwise.
    Shape free = Setbacks.buildable(lot, Lots.sides(ring, distances));
    assertTrue(free.jts().isValid(), "setback invalid");
    // The overlay's grid of 0.1 µm may move a long slanting edge by that much.
    double slackM2 = 1e-6 * (1 + lot.perimeter().metres());
    assertTrue(free.minus(lot).area().squareMetres() < slackM2, "setback outside");
    for (Shape part : Inset.of(lot, Length.metres(insetM))) {
      assertTrue(part.jts().isValid(), "inset invalid");
    }
    Strips.Layout layout =
        Strips.Layout.of(Length.metres(1.2), Length.metres(0.6), Angle.degrees(bearingDeg));
    for (Shape strip : Strips.fill(free, layout)) {
      assertTrue(strip.jts().isValid(), "strip invalid");
    }
    List<Point> loop = new ArrayList<>(ring);
    loop.add(ring.get(0));
    Shape path = PathStrip.centred(Line.through(loop), Length.metres(0.5 + insetM));
    assertTrue(path.jts().isValid(), "path invalid");
    assertTrue(lot.grown(Length.metres(insetM)).jts().isValid(), "grown invalid");
  }
}
