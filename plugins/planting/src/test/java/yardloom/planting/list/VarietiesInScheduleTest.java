package yardloom.planting.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.planting.PlantYard;
import yardloom.planting.suit.SuitWords;

/** A nursery quotes trees by variety: the schedule counts those that the plan names. */
class VarietiesInScheduleTest {
  /** Two of one variety, one of another, one without a name; what stands already is not bought. */
  @Test
  void varieties_areCountedInTheNotes() {
    PlantYard yard = PlantYard.us("2026-03-10");
    SuitWords.variety(yard.tree("a", "apple (dwarf)", 10, 10, 1), "Liberty", null, null);
    SuitWords.variety(yard.tree("b", "apple (dwarf)", 30, 10, 1), "Freedom", null, null);
    SuitWords.variety(yard.tree("c", "apple (dwarf)", 50, 10, 1), "Liberty", null, null);
    yard.tree("d", "apple (dwarf)", 70, 10, 1);
    SuitWords.variety(yard.tree("old", "apple (dwarf)", 90, 10, 10), "Russet", null, null);
    List<String> apples =
        yard.printed("plant-schedule").stream().filter(r -> r.contains("apple (dwarf)")).toList();
    assertTrue(apples.stream().anyMatch(r -> r.contains("1 Freedom; 2 Liberty")), apples::toString);
    assertEquals(0, apples.stream().filter(r -> r.contains("Russet")).count());
  }
}
