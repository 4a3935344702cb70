package yardloom.work.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.site.lot.LotWords;

/** The figures on the cover, worked by hand. */
class KeyFiguresTest {
  private static Map<String, String> figures(PlanKit kit) {
    Plan plan = kit.plan();
    Table table = KeyFigures.of(plan, PlanKit.run(plan));
    return table.rows().stream()
        .collect(
            Collectors.toMap(
                r -> r.get(0).value().orElseThrow().toString(),
                r -> r.get(1).value().orElseThrow().toString().replace('\u00a0', ' ')));
  }

  private static Point ft(double x, double y) {
    return new Point(Length.feet(x), Length.feet(y));
  }

  /**
   * Beds of 1000 and 300 sq ft. Chips 10 in on the perennial, 2 in on the annual one: (10,000 +
   * 600) / 324 = 32.7 cu yd; compost 1 and 3 in: (1000 + 900) / 324 = 5.9 cu yd.
   */
  @Test
  void cover_tellsGroundChipsAndCompost() {
    PlanKit kit = PlanKit.us();
    LotWords.lot(kit.words(), List.of(ft(-5, -5), ft(75, -5), ft(75, 70), ft(-5, 70)), null);
    kit.bed("berries", BedUse.PERENNIAL, PlanKit.box(0, 0, 50, 20));
    kit.bed("salads", BedUse.ANNUAL, PlanKit.box(0, 30, 30, 10));
    Map<String, String> figures = figures(kit);
    assertEquals("6,000 sq ft", figures.get("Lot"));
    assertEquals("1,300 sq ft", figures.get("2 beds"));
    assertEquals("1,300 sq ft", figures.get("Ground mulched"));
    assertEquals("32.7 cu yd", figures.get("Wood chips"));
    assertEquals("5.9 cu yd", figures.get("Compost"));
    assertTrue(figures.get("Work of one person").endsWith(" h"), figures.toString());
    assertFalse(figures.containsKey("New trees"));
    assertFalse(figures.containsKey("Tap water saved a year"));
  }

  @Test
  void oneBed_isOneBed_andAnEmptyYardHasNoFigures() {
    PlanKit kit = PlanKit.us();
    kit.bed("berries", BedUse.PERENNIAL, PlanKit.box(0, 0, 50, 20));
    assertEquals("1,000 sq ft", figures(kit).get("1 bed"));
    Map<String, String> none = figures(PlanKit.us());
    assertFalse(none.containsKey("0 beds"), none.toString());
    assertFalse(none.containsKey("Work of one person"), none.toString());
  }
}
