package yardloom.soil.compost.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Volume;

class BulkMassTest {
  @Test
  void tenYardsOfCompost_weighFiveTons() {
    // M09: 10 000 to 12 000 lb.
    Volume ten = Volume.cubicYards(10);
    assertEquals(10_000, BulkMass.of(ten, 1000).pounds(), 1e-6);
    assertEquals(12_000, BulkMass.of(ten, 1200).pounds(), 1e-6);
  }
}
