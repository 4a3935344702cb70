package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Length;

class PartitionTest {
  private static Shape box(double x, double y, double width, double depth) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(width), Length.metres(depth));
  }

  private static double m2(List<Partition.Part> parts, int i) {
    return parts.get(i).ground().area().squareMetres();
  }

  @Test
  void overlappingClaims_earlierTakesFirst_partsAddUp() {
    // Lot 20 × 10. House 6 × 5; path 2 × 10 crosses it over 2 × 5 and reaches 1 m out of the lot;
    // bed 4 × 4 lies 3 × 1 over the house and 2 × 4 over the path, 2 × 1 of that in the house too.
    List<Partition.Part> parts =
        Partition.of(
            box(0, 0, 20, 10),
            List.of(
                new Partition.Claim("house", box(0, 0, 6, 5)),
                new Partition.Claim("path", box(4, 0, 2, 11)),
                new Partition.Claim("nothing", Shape.union(List.of())),
                new Partition.Claim("bed", box(3, 4, 4, 4))),
            "rest");
    assertEquals(30, m2(parts, 0), 1e-6);
    assertEquals(20 - 10, m2(parts, 1), 1e-6);
    assertEquals(0, m2(parts, 2), 1e-6);
    // 16 less the house's 3 × 1 and the path's 2 × 4 of which 2 × 1 is the house's already
    assertEquals(16 - 3 - (8 - 2), m2(parts, 3), 1e-6);
    assertEquals(200 - 30 - 10 - 7, m2(parts, 4), 1e-6);
  }

  /** Memory asked for stands for the work done: it is the same in every run, time is not. */
  private static long work(int claims) {
    List<Partition.Claim> all = new ArrayList<>();
    for (int i = 0; i < claims; i++) {
      all.add(new Partition.Claim("bed", box(2.0 * (i % 20), 4.0 * (i / 20), 1.25, 3)));
    }
    Shape lot = box(-1, -1, 42, 4.0 * claims / 20 + 2);
    ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = thread.getThreadAllocatedBytes(Thread.currentThread().getId());
    Partition.of(lot, all, "rest");
    return thread.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
  }

  @Test
  void fourTimesTheClaims_asksForAboutFourTimesTheWork() {
    work(20);
    double ratio = (double) work(400) / work(100);
    // One overlay after the other on what is left would ask for sixteen times.
    assertTrue(ratio < 6, "400 claims took " + ratio + " times the work of 100");
  }
}
