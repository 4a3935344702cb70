package yardloom.planting.bay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Results;
import yardloom.kernel.unit.Length;
import yardloom.planting.PlantYard;

/** What a bay takes, from its word to bill and jobs. */
class BayCalculatorTest {
  private static Results results(Boolean standing) {
    PlantYard yard = PlantYard.us("2027-03-30");
    BayWords.compostBay(yard.words(), "bay", PlanKit.box(40, 40, 10, 3.5), standing);
    return yard.outcome().results();
  }

  /** Three bins: 8 posts of 4 ft and 18 in; 10 + 4 × 3.5 = 24 ft of mesh; 3 × 8 boards. */
  @Test
  void newBay_isBilledAndBuilt() {
    Results results = results(null);
    List<String> lines =
        results.all(YardFacts.BILL).stream()
            .filter(b -> b.phase() == WorkPhase.BUILD)
            .map(b -> b.item() + ": " + said(b.exact().value()) + ", " + said(b.order().value()))
            .map(s -> s.replace('\u00a0', ' '))
            .toList();
    assertEquals(
        List.of(
            "fence posts, 4x4 by 6 ft: 8, 8",
            "fence mesh, 4 ft high: 24.0, 26.4",
            "fence boards, 1x6 by 4 ft: 24, 24"),
        lines);
    assertEquals(
        List.of("set posts 8", "hang rails, boards and mesh 34.0"),
        results.all(YardFacts.JOBS).stream()
            .map(j -> j.title() + " " + said(j.amount().value()))
            .toList());
    assertEquals(1, results.all(YardFacts.OWN_COUNTED).size());
  }

  private static String said(Object value) {
    return value instanceof Length l
        ? String.format(java.util.Locale.ROOT, "%.1f", l.feet())
        : value.toString();
  }

  @Test
  void standingBay_takesNothing() {
    Results results = results(true);
    assertTrue(results.all(YardFacts.BILL).isEmpty());
    assertTrue(results.all(YardFacts.OWN_COUNTED).isEmpty());
  }
}
