package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Setbacks and strip fill on lots of many corners, beside the bare library calls they need: for the
 * setbacks a buffer of each side and the difference from the lot, for the fill the cut of each
 * slab. Prints a table; asserts only that the results agree, as times depend on the machine.
 */
class LotBenchmarkTest {
  private static final double SETBACK_M = 3;

  @Test
  @Tag("heavy")
  void setbacksAndStrips_manyCorners_besideTheBareCalls() {
    System.out.println("corners  ours ms  bare ms  ratio");
    for (int corners : new int[] {1_000, 2_000, 5_000, 10_000}) {
      List<Point> ring = wavy(corners);
      Shape lot = Shape.polygon(ring);
      List<Setbacks.Side> sides = fourSides(ring);
      double ours = medianMs(() -> ours(lot, sides));
      double bare = medianMs(() -> bare(lot, sides));
      System.out.printf(Locale.ROOT, "%7d %8.1f %8.1f %6.2f%n", corners, ours, bare, ours / bare);
      double differM2 = Math.abs(ours(lot, sides) - bare(lot, sides));
      assertTrue(differM2 < 0.002 * lot.perimeter().metres() * 2, "differ by " + differM2);
    }
  }

  private static double ours(Shape lot, List<Setbacks.Side> sides) {
    Shape free = Setbacks.buildable(lot, sides);
    Strips.Layout layout =
        new Strips.Layout(
            Length.metres(1.2), Length.metres(0.6), Angle.ZERO, Length.ZERO, Length.ZERO);
    double sum = 0;
    for (Shape strip : Strips.fill(free, layout)) {
      sum += strip.area().squareMetres();
    }
    return sum;
  }

  private static double bare(Shape lot, List<Setbacks.Side> sides) {
    List<Geometry> near = new ArrayList<>();
    for (Setbacks.Side side : sides) {
      near.add(Overlay.fineBuffer(side.line().jts(), SETBACK_M));
    }
    Geometry free = Overlay.difference(lot.jts(), Overlay.unionAll(near));
    Envelope box = free.getEnvelopeInternal();
    double sum = 0;
    for (double x = box.getMinX(); x + 1.2 <= box.getMaxX() + 1e-6; x += 1.8) {
      Envelope slab = new Envelope(x, x + 1.2, box.getMinY() - 1, box.getMaxY() + 1);
      sum += Overlay.intersection(free, Overlay.FACTORY.toGeometry(slab)).getArea();
    }
    return sum;
  }

  /** A lot of about 50 m whose boundary was walked with a receiver. */
  private static List<Point> wavy(int corners) {
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * i / corners;
      double r = 25 + 2 * Math.sin(5 * a) + 0.3 * Math.sin(37 * a);
      ring.add(Point.metres(r * Math.cos(a), r * Math.sin(a)));
    }
    return ring;
  }

  private static List<Setbacks.Side> fourSides(List<Point> ring) {
    List<Setbacks.Side> sides = new ArrayList<>();
    int quarter = ring.size() / 4;
    for (int k = 0; k < 4; k++) {
      List<Point> part = new ArrayList<>(ring.subList(k * quarter, (k + 1) * quarter));
      part.add(ring.get((k + 1) * quarter % ring.size()));
      sides.add(
          new Setbacks.Side(
              "side " + k, Line.through(part), Optional.empty(), Length.metres(SETBACK_M)));
    }
    return sides;
  }

  private static double medianMs(Runnable work) {
    double[] ms = new double[5];
    work.run();
    for (int i = 0; i < ms.length; i++) {
      long start = System.nanoTime();
      work.run();
      ms[i] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(ms);
    return ms[ms.length / 2];
  }
}
