package yardloom.planting.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.facts.YardFacts;
import yardloom.facts.work.Job;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.planting.PlantYard;

/** Plants ordered against losses: of a share that the plan states, once for each kind. */
class SparesTest {
  private final PlantYard yard = PlantYard.us("2026-03-10");

  private List<String> orders(String kind) {
    return yard.outcome().results().all(YardFacts.BILL).stream()
        .filter(line -> line.plant().filter(kind::equals).isPresent())
        .map(line -> line.exact().value() + " → " + line.order().value() + ", " + line.allowance())
        .toList();
  }

  private void beds() {
    yard.planted(yard.bed("a", 0, 0, 5, 2), "chives", 1);
    yard.planted(yard.bed("b", 10, 0, 6, 2), "chives", 1);
    yard.planted(yard.bed("c", 20, 0, 3, 3), "sage", 1);
    yard.planted(yard.bed("p", 30, 0, 4, 4), "pea", 1);
    yard.tree("t", "apple (semi-dwarf)", 20, 20, 1);
  }

  /**
   * 10 and 12 chives: 7 in 100 of 22 are 1.54, so two spares, of which the first bed has the one
   * that its 0.7 rounds up to; of nine sage one for 0.63.
   */
  @Test
  void sparesAreRoundedUpOnceForTheKind() {
    beds();
    StockWords.plantSpares(yard.words(), 0.07);
    assertEquals(List.of("10 → 11, spares: 1", "12 → 13, spares: 1"), orders("chives"));
    assertEquals(List.of("9 → 10, spares: 1"), orders("sage"));
    assertEquals(List.of("1 → 1, no spares included"), orders("apple (semi-dwarf)"));
    assertTrue(orders("pea").get(0).endsWith("some do not come up"), orders("pea").get(0));
    assertTrue(
        yard.printed("plant-schedule")
            .contains("AS | Allium schoenoprasum | chives | 22 | 24 | pot | 4 in | 12 in | "),
        yard.printed("plant-schedule").toString());
  }

  /** 2 in 100 of 10 are 0.2, of 22 are 0.44: one spare in all, not one for each bed. */
  @Test
  void sparesOfSmallBeds_areNotRoundedUpInEach() {
    beds();
    StockWords.plantSpares(yard.words(), 0.02);
    assertEquals(List.of("10 → 11, spares: 1", "12 → 12, no spares included"), orders("chives"));
  }

  /** What is not planted is no work. */
  @Test
  void sparesAreNotPlanted_andWithoutTheWordThereAreNone() {
    beds();
    List<Job> without = yard.outcome().results().all(YardFacts.JOBS);
    assertEquals(
        List.of("10 → 10, no spares included", "12 → 12, no spares included"), orders("chives"));
    StockWords.plantSpares(yard.words(), 0.5);
    assertEquals(
        without.stream().map(j -> j.amount().value()).toList(),
        yard.outcome().results().all(YardFacts.JOBS).stream()
            .map(j -> j.amount().value())
            .toList());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 0.51, Double.NaN})
  void sharesBeyondHalf_orOfNothing_areRefused(double share) {
    PlanException e =
        assertThrows(PlanException.class, () -> StockWords.plantSpares(yard.words(), share));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
  }

  @Test
  void sparesAreSaidOnce() {
    StockWords.plantSpares(yard.words(), 0.1);
    PlanException e =
        assertThrows(PlanException.class, () -> StockWords.plantSpares(yard.words(), 0.1));
    assertEquals(ProblemCode.DUPLICATE, e.problems().get(0).code());
  }
}
