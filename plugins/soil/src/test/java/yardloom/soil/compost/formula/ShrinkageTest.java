package yardloom.soil.compost.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Volume;

class ShrinkageTest {
  @Test
  void compostHeap_shrinks_asPublished() {
    // M23: 50-75 % for a home heap; a third for manure and sod.
    Volume start = Volume.cubicYards(100);
    assertEquals(50, Shrinkage.finished(start, Shrinkage.HOME_HEAP.low()).cubicYards(), 1e-9);
    assertEquals(25, Shrinkage.finished(start, Shrinkage.HOME_HEAP.high()).cubicYards(), 1e-9);
    assertEquals(66.7, Shrinkage.finished(start, 1.0 / 3).cubicYards(), 0.05);
  }
}
