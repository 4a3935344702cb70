package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;

/** From a plant of the plan's own to count, harvest, fit, times and care. */
class OwnPlantByHandTest {
  private static final String HEAD =
      """
      plan 'Own plants by hand', units: 'us', date: '2027-03-30'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '10-14', source: 'by hand'
      hardinessZone '5b', source: 'by hand'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 50.ft), point(0.ft, 50.ft)])
      """;

  private static final String YARD =
      HEAD
          + """
          ownPlant('fig-leaf gourd', like: 'winter squash', botanical: 'Cucurbita ficifolia', source: publication('Trial of gourds', by: 'our own garden', seen: 'read')) { grown spacing: 4.ft, rows: 6.ft, spread: 5.ft ; yields low: 10.lb, high: 40.lb ; seasons pickFrom: 120, pickUntil: 150 }
          plantBook 'plant,like,spread_cm,zone,first_year,full_year,yield_low_kg,yield_high_kg,title,publisher,year,locator,standing\\nperry pear,European pear,400,7,6,9,20,60,List of perry pears,a nursery,2020,p. 4,READ'
          bed('gourds', rect(4.ft, 4.ft, 16.ft, 8.ft), use: 'annual') { plant 'fig-leaf gourd' }
          tree('one', point(40.ft, 30.ft), crown: 13.ft, height: 12.ft, standing: false) { species 'perry pear' }
          """;

  private static final Drawn DRAWN = Drawn.of(YARD);

  /**
   * 16 × 8 ft at 4 ft hold 4 × 2. Two rows 4 ft apart where 6 are usual keep (1 + 4/6) / 2, 0.8333:
   * 8 × 10 × 0.8333 are 66.7 lb, 8 × 40 × 0.8333 are 266.7; one pear 20 to 60 kg, 44.1 to 132.3 lb,
   * scaled by the crown drawn over the grown one, as every tree: 13 ft over 400 cm, 13.12 ft.
   */
  @Test
  void countAndHarvest_areOfTheOwnFigures() {
    assertEquals("8", DRAWN.printed("planting", "gourds", "count"));
    assertEquals("5.0", DRAWN.printed("planting", "gourds", "spread"));
    assertEquals("Cucurbita ficifolia", DRAWN.printed("planting", "gourds", "botanical"));
    assertEquals("67", DRAWN.printed("harvest", "gourds", "from"));
    assertEquals("267", DRAWN.printed("harvest", "gourds", "to"));
    double share = Math.pow(13 * 0.3048 / 4.0, 2);
    assertEquals(20 * share, DRAWN.exact("harvest", "one", "from"), 1e-6);
    assertEquals(60 * share, DRAWN.exact("harvest", "one", "to"), 1e-6);
    assertEquals("year 6", DRAWN.printed("harvest", "one", "first"));
  }

  /** Picked from day 120 after 6 May, 3 September, to day 150, 3 October. */
  @Test
  void monthsOfHarvest_areOfTheOwnDays() {
    List<String> picked =
        DRAWN.tables().get("harvest-months").rows().stream()
            .filter(r -> r.toString().contains("fig-leaf gourd"))
            .map(r -> r.get(0).value().orElseThrow().toString())
            .toList();
    assertEquals(List.of("Sep", "Oct"), picked);
  }

  /** Zone 7 of the row against 5b of the yard, with the row's source, not the catalogue's. */
  @Test
  void fit_isJudgedByTheOwnFigureWithItsSource() {
    List<String> said =
        DRAWN.outcome().findings().stream()
            .filter(f -> f.rule().equals("planting.hardiness"))
            .map(f -> f.toString())
            .toList();
    assertEquals(1, said.size());
    assertTrue(said.get(0).contains("zone 7 and warmer"), said.get(0));
    assertTrue(said.get(0).contains("List of perry pears"), said.get(0));
  }

  /** Squash is set out two weeks after the last frost, 20 May; pears are pruned as pears. */
  @Test
  void timesAndCare_areThoseOfWhatItIsLike() {
    assertEquals("--05-20", DRAWN.printed("planting-times", "fig-leaf gourd", "from"));
    assertTrue(
        DRAWN.tables().get("care").rows().stream()
            .anyMatch(
                r ->
                    r.toString().contains("Prune young trees")
                        && r.toString().contains("perry pear")));
  }

  /** Law: what nothing is said of is in all figures what it is like; only its source is not. */
  @ParameterizedTest
  @ValueSource(strings = {"kale", "red currant", "carrot", "garden strawberry"})
  void plantOfWhichNothingIsSaid_isLikeItsModel(String model) {
    String bed = "bed('b', rect(4.ft, 4.ft, 18.ft, 5.ft), use: 'perennial') { plant '%s' }\n";
    Drawn of = Drawn.of(HEAD + bed.formatted(model));
    Drawn own =
        Drawn.of(
            HEAD
                + "ownPlant 'mine', like: '"
                + model
                + "', source: publication('x', by: 'y', seen: 'read')\n"
                + bed.formatted("mine"));
    for (String cell : List.of("count", "spacing", "rows", "spread")) {
      assertEquals(of.exact("planting", "b", cell), own.exact("planting", "b", cell), 0, cell);
    }
    assertEquals(of.printed("harvest", "b", "to"), own.printed("harvest", "b", "to"));
    assertEquals(
        of.printed("planting-times", model, "from"), own.printed("planting-times", "mine", "from"));
    assertEquals(of.rows("care").size(), own.rows("care").size());
    assertEquals(of.rows("harvest-months"), own.rows("harvest-months"));
    assertTrue(
        own.tables().get("planting").toString().contains("which stands in"), "marked as borrowed");
  }

  @ParameterizedTest(name = "{0} → {1}")
  @CsvSource({
    "spread_cm, spread_mm, there is no column `spread_mm`. Did you mean `spread_cm`?",
    "'pear,400', 'pear,0.4', spread is from 1 in (2.5 cm) to 150 ft (46 m)",
    "'400,7,6,9', '400,17,6,9', '`zone` is from 1.0 to 13.0, got 17.0'",
    "'7,6,9,20', '7,6,5,20', the year of full harvest is not before the first",
    "European pear;400, Eurpean pear;400, Did you mean `European pear`?",
    "pickUntil: 150, pickUntil: 90, days go from `pick_from` to `pick_until`",
    "'seasons pickFrom: 120, pickUntil: 150', needs drainage: 'god', good",
  })
  void whatIsWrong_isSaid(String right, String wrong, String message) {
    String text = YARD.replace(right.replace(';', ','), wrong.replace(';', ','));
    PlanException e = assertThrows(PlanException.class, () -> Drawn.of(text));
    assertTrue(e.getMessage().contains(message), e.getMessage());
  }

  @Test
  void onePlantTwice_isRefused() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> Drawn.of(YARD + "plantBook 'plant,like\\nPerry pear,quince'\n"));
    assertTrue(e.getMessage().contains("'Perry pear' is already given"), e.getMessage());
  }
}
