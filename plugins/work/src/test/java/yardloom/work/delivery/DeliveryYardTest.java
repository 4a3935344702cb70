package yardloom.work.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.materials.pile.PileWords;
import yardloom.work.labour.WorkWords;

class DeliveryYardTest {
  private static PlanKit yard() {
    PlanKit kit = PlanKit.us();
    kit.bed("greens", BedUse.ANNUAL, PlanKit.box(0, 0, 36, 25));
    kit.path("way", 4, 0, 30, 60, 30);
    WorkWords.work(kit.words(), 3, 5, null, "2027-03-01", null, null, 1);
    return kit;
  }

  private static void tip(PlanKit kit, String name, Shape spot, String material) {
    PileWords.dropZone(kit.words(), name, spot, material, null, null, null, 1, null);
  }

  private static List<String> printed(PlanKit kit) {
    Plan plan = kit.plan();
    return PlanKit.printed("work-deliveries", plan, PlanKit.run(plan)).stream()
        .map(r -> r.replace('\u00a0', ' '))
        .toList();
  }

  private static List<String> notes(PlanKit kit) {
    Plan plan = kit.plan();
    Results results = PlanKit.run(plan);
    Table table = PlanKit.table("work-deliveries", plan, results);
    return table.notes();
  }

  /**
   * 900 sq ft at 3 in of compost are 8.33 cu yd, 9.17 with a tenth more, ordered as 9.5: trucks of
   * 5 and 4.5. The path's 240 sq ft at 4 in are 2.96, ordered as 3.5, and 2 in of chips on the
   * greens 5.56, ordered as 6.5. The cardboard takes 21 of 15 h a day from Friday morning, 1.4
   * days, for 13 cu yd: 5 are gone after 0.54 of the first, and 9.5 after 1.02. Its chips follow on
   * Monday at 0.4 of the day.
   */
  @Test
  void oneDropZone_takesCompostThenChips() {
    PlanKit kit = yard();
    tip(kit, "drive", PlanKit.box(70, 0, 12, 30), null);
    assertEquals(
        List.of(
            "1 | compost | Cardboard and its cover | 5.00 | drive | 5 | 5 Mar 2027 | first thing",
            "2 | compost | Cardboard and its cover | 4.50 | drive | 5 | 5 Mar 2027 | after noon,"
                + " once the heap is spread",
            "3 | wood-chip mulch | Cardboard and its cover | 3.50 | drive | 6 | 8 Mar 2027 | first"
                + " thing",
            "4 | wood-chip mulch | Finish mulch | 6.50 | drive | 6 | 8 Mar 2027 | before noon"),
        printed(kit));
    assertTrue(notes(kit).get(0).startsWith("One heap at a time on a spot"));
    assertEquals(1, notes(kit).size());
  }

  /** Compost beside the chips: neither waits for the other. */
  @Test
  void dropZoneOfItsOwn_doesNotWait() {
    PlanKit kit = yard();
    tip(kit, "drive", PlanKit.box(70, 0, 12, 30), null);
    tip(kit, "walk", PlanKit.box(90, 0, 12, 30), "compost");
    List<String> rows = printed(kit);
    assertTrue(
        rows.get(0).endsWith("| 5.00 | walk | 5 | 5 Mar 2027 | first thing"), rows::toString);
    assertTrue(
        rows.get(1).endsWith("walk | 5 | 5 Mar 2027 | after noon, once the heap is spread"),
        rows::toString);
    assertTrue(
        rows.get(2).endsWith("| 3.50 | drive | 5 | 5 Mar 2027 | first thing"), rows::toString);
  }

  /** A household without a drop zone is told; half a yard is nothing to send a truck for. */
  @Test
  void noDropZoneOrHardlyAnything_isTold() {
    PlanKit small = PlanKit.us();
    small.bed("greens", BedUse.ANNUAL, PlanKit.box(0, 0, 10, 4));
    List<String> notes = notes(small);
    assertTrue(notes.get(1).contains("by pickup or trailer"), notes::toString);
    assertTrue(notes.get(2).startsWith("No drop zone is named"), notes::toString);
    // 40 sq ft at 3 in: 0.37 cu yd, ordered as 0.5; the first hours of the fourth day go before.
    assertEquals(
        "1 | compost | Cardboard and its cover | 0.50 |  | 4 |  | before noon",
        printed(small).get(0));
  }

  /**
   * 36 × 25.9 ft at 2 in of chips are 5.756 cu yd, 6.33 with a tenth more, ordered as 6.5, and 3 in
   * of compost 8.634, 9.50, ordered as 9.5. With 27.5 ft it is 6.111, 6.72, ordered as 7, and
   * 9.167, 10.08, ordered as 10.5: half a yard more than two trucks of 5 is heaped on the second.
   * With 29.5 ft 10.82 are ordered as 11, a yard more than them, which takes a third.
   */
  @Test
  void restOfATenth_isHeapedOnTheLastTruck() {
    assertEquals(List.of("5.00", "4.50"), compost(25.9));
    assertEquals(List.of("5.00", "5.50"), compost(27.5));
    assertEquals(List.of("5.00", "5.00", "1.00"), compost(29.5));
  }

  private static List<String> compost(double depthFt) {
    PlanKit kit = PlanKit.us();
    kit.bed("greens", BedUse.ANNUAL, PlanKit.box(0, 0, 36, depthFt));
    return printed(kit).stream()
        .filter(r -> r.contains("| compost |"))
        .map(r -> r.split(" \\| ")[3])
        .toList();
  }
}
