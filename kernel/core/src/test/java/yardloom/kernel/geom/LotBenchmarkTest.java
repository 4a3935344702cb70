package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Setbacks and strip fill on lots of many corners, beside the bare library calls they need: for the
 * setbacks a buffer of each side, with as many chords as half a millimetre takes, their union and
 * its difference from the lot, for the fill the cut of each slab, all on the same grid; no checks,
 * no patches, no order. Prints a table; asserts only that the results agree, as times depend on the
 * machine. Times are those of the processor, taken in turn, so that other work on the machine
 * counts little.
 */
class LotBenchmarkTest {
  private static final double SETBACK_M = 3;
  private static final PrecisionModel GRID = new PrecisionModel(1e7);

  @Test
  @Tag("heavy")
  void setbacksAndStrips_manyCorners_besideTheBareCalls() {
    System.out.println("corners  ours ms  bare ms  ratio  ours us / (n log2 n)");
    for (int corners : new int[] {1_000, 2_000, 5_000, 10_000, 20_000, 40_000}) {
      List<Point> ring = wavy(corners);
      Shape lot = Shape.polygon(ring);
      List<Setbacks.Side> sides = fourSides(ring);
      double[] ms = mediansMs(() -> ours(lot, sides), () -> bare(lot, sides));
      double perNLogN = ms[0] * 1e3 / (corners * Math.log(corners) / Math.log(2));
      System.out.printf(
          Locale.ROOT,
          "%7d %8.1f %8.1f %6.2f %8.3f%n",
          corners,
          ms[0],
          ms[1],
          ms[0] / ms[1],
          perNLogN);
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
    int quarter =
        Arc.chordCount(Length.metres(SETBACK_M), Angle.degrees(90), Length.millimetres(0.5));
    BufferParameters parameters = new BufferParameters(quarter);
    parameters.setSimplifyFactor(0);
    List<Geometry> near = new ArrayList<>();
    for (Setbacks.Side side : sides) {
      near.add(BufferOp.bufferOp(side.line().jts(), SETBACK_M, parameters));
    }
    Geometry taken = UnaryUnionNG.union(lot.jts().getFactory().buildGeometry(near), GRID);
    Geometry free = OverlayNG.overlay(lot.jts(), taken, OverlayNG.DIFFERENCE, GRID);
    Envelope box = free.getEnvelopeInternal();
    double sum = 0;
    for (double x = box.getMinX(); x + 1.2 <= box.getMaxX() + 1e-6; x += 1.8) {
      Envelope slab = new Envelope(x, x + 1.2, box.getMinY() - 1, box.getMaxY() + 1);
      Geometry cut = lot.jts().getFactory().toGeometry(slab);
      sum += OverlayNG.overlay(free, cut, OverlayNG.INTERSECTION, GRID).getArea();
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

  private static double[] mediansMs(Runnable ours, Runnable bare) {
    double[][] ms = new double[2][9];
    for (int warm = 0; warm < 3; warm++) {
      ours.run();
      bare.run();
    }
    for (int i = 0; i < ms[0].length; i++) {
      ms[0][i] = cpuMs(ours);
      ms[1][i] = cpuMs(bare);
    }
    Arrays.sort(ms[0]);
    Arrays.sort(ms[1]);
    return new double[] {ms[0][ms[0].length / 2], ms[1][ms[1].length / 2]};
  }

  private static double cpuMs(Runnable work) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    work.run();
    return (threads.getCurrentThreadCpuTime() - start) / 1e6;
  }
}
