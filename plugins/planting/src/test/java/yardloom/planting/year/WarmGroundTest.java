package yardloom.planting.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.facts.PlantingWindow;
import yardloom.facts.WarmSeason;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.PlantYard;
import yardloom.planting.care.CareAct;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * Where springs are mild, the last frost is long over before the ground is warm enough for what is
 * tender: in Seattle it comes in March, and tomatoes are set out from the middle of May to early
 * June, when ground is above 55 °F (gardening pages on Seattle, secondary).
 */
class WarmGroundTest {
  private static PlantYard yard(String plant, String last, String first, String warm) {
    PlantYard yard = PlantYard.us("2026-01-10");
    yard.frost(last, first);
    yard.give(
        YardFacts.WARM_SEASON,
        new WarmSeason(
            Derived.given(MonthDay.parse("--" + warm), "first warm day", SourceRef.NONE),
            Derived.given(MonthDay.of(10, 5), "last warm day", SourceRef.NONE),
            Temperature.fahrenheit(55)));
    yard.planted(yard.bed("k", 0, 0, 8, 9), plant, 1.5);
    return yard;
  }

  private static PlantYard seattle(String plant) {
    return yard(plant, "03-15", "11-15", "05-14");
  }

  private static PlantingWindow.Period first(PlantYard yard) {
    return yard.outcome().results().all(YardFacts.PLANTING_WINDOWS).get(0).periods().get(0);
  }

  /** Two weeks after 25 April are later than 28 April; lettuce bears the cold. */
  @ParameterizedTest(name = "{0}, frost to {1}, warm from {2}: from {3}")
  @CsvSource({
    "tomato, 03-15, 05-14, --05-14",
    "bush bean, 03-15, 05-14, --05-14",
    "tomato, 04-25, 04-28, --05-09",
    "bush bean, 04-25, 04-28, --04-28",
    "bush bean, 04-25, 04-20, --04-25",
    "lettuce, 03-15, 05-14, --02-15",
  })
  void tenderPlantsWaitForFrostAndWarmth(String plant, String last, String warm, String from) {
    assertEquals(
        MonthDay.parse(from), first(yard(plant, last, "11-15", warm)).from().value(), plant);
  }

  static Stream<String> tender() {
    return PlantCatalogue.shipped().all().stream().filter(GrowingYear::isTender).map(Plant::name);
  }

  private static long fromPlantingToPicking(PlantYard yard) {
    LocalDate planted = first(yard).from().value().atYear(2027);
    return yard.outcome().results().all(CareAct.KEY).stream()
        .filter(a -> a.task().what().equals("Pick") && a.when().season() == 2)
        .map(a -> a.when().from().toEpochDay() - planted.toEpochDay())
        .findFirst()
        .orElse(0L);
  }

  /** What waits to be planted is picked as much later, whatever its window is counted from. */
  @ParameterizedTest
  @MethodSource("tender")
  void pickingFollowsPlanting_asWhereSpringsAreLate(String plant) {
    PlantYard late = yard(plant, "04-25", "11-15", "04-20");
    assertEquals(fromPlantingToPicking(late), fromPlantingToPicking(seattle(plant)));
  }

  private static List<String> care(PlantYard yard, String what) {
    return yard.printed("care").stream().filter(r -> r.startsWith(what + " | ")).toList();
  }

  /**
   * Set out on 14 May, 46 days after 29 March, two weeks from the frost of 15 March; so it is
   * picked from 80 + 46 days after that, 19 July, to 160 + 46, 7 October, and tied from 28 + 46
   * days, 28 May.
   */
  @Test
  void careAndPickingOfTomatoes_inSeattle() {
    PlantYard yard = seattle("tomato");
    assertTrue(care(yard, "Pick").get(0).startsWith("Pick | tomato | 19 Jul | 7 Oct | each"));
    assertTrue(
        care(yard, "Stake and tie").get(0).startsWith("Stake and tie | tomato | 28 May | 9 Jul"));
    String note = PlantYard.table(yard.outcome(), "planting-times").notes().get(0);
    assertTrue(note.startsWith("Tender plants wait until the mean passes 55"), note);
    String other = PlantYard.table(seattle("kale").outcome(), "planting-times").notes().get(0);
    assertFalse(other.contains("Tender"), other);
  }
}
