package yardloom.soil.compost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Volume;
import yardloom.soil.compost.formula.CarbonKept;
import yardloom.soil.compost.formula.CompostBay;
import yardloom.soil.compost.formula.CompostMix.Feed;

class HeapTest {
  @Test
  void heap_grassyResidue_isBalancedByLeaves() {
    PlanKit kit = PlanKit.us();
    CompostWords.residue(kit.words(), "grass clippings", Volume.cubicYards(1));
    HeapPlan heap = PlanKit.run(kit.plan()).get(HeapPlan.FACT);
    assertEquals(17, heap.found().ratio().value(), 1e-9);
    assertEquals("leaves", heap.partner().orElseThrow().material());
    assertEquals(30, heap.mixed().ratio().value(), 1e-9);
    assertTrue(
        heap.season().finishedLow().value().compareTo(heap.season().finishedHigh().value()) < 0);
    assertTrue(heap.season().carbonLow().value().compareTo(heap.season().carbonHigh().value()) < 0);
  }

  @Test
  void heap_woodyResidue_isBalancedByGrass() {
    PlanKit kit = PlanKit.us();
    CompostWords.residue(kit.words(), "shrub trimmings", Volume.cubicYards(2));
    CompostWords.residue(kit.words(), "garden weeds", Volume.cubicYards(0.5));
    HeapPlan heap = PlanKit.run(kit.plan()).get(HeapPlan.FACT);
    assertEquals("grass clippings", heap.partner().orElseThrow().material());
    assertEquals(30, heap.mixed().ratio().value(), 1e-9);
  }

  @Test
  void carbon_dryMatter_isHandComputed() {
    // 100 kg at 60 % water and 45 % carbon of dry matter: 18 kg.
    Feed feed = new Feed("x", yardloom.kernel.unit.Mass.kilograms(100), 45, 1, 60);
    assertEquals(18, CarbonKept.carbon(List.of(feed)).kilograms(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"10, 3, 1", "27, 3, 1", "64, 4, 1", "125, 5, 1", "130, 5, 2", "300, 5, 3"})
  void bay_cubicFeet_staysBetweenThreeAndFiveFeet(double ft3, double side, int bays) {
    Volume mix = Volume.cubicFeet(ft3);
    assertEquals(side, CompostBay.side(mix).feet(), 1e-9);
    assertEquals(bays, CompostBay.bays(mix));
  }

  @Test
  void residue_unknown_suggests() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> CompostWords.residue(PlanKit.us().words(), "leafs", Volume.cubicYards(1)));
    assertTrue(e.getMessage().contains("Did you mean `leaves`?"));
  }
}
