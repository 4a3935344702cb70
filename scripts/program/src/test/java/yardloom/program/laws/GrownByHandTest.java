package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plants as they grow: sizes by year, harvest of what stays, room about stems. */
class GrownByHandTest {
  private static final String YARD =
      """
      plan 'Grown by hand', units: 'us', date: '2027-03-30'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 50.ft), point(0.ft, 50.ft)])
      ownPlant('bush', like: 'red currant', source: publication('x', by: 'y', seen: 'read')) { grown spacing: 2.ft, rows: 5.ft, spread: 4.ft, height: 6.ft ; yields low: 3.lb, high: 7.lb }
      bed('dense', rect(4.ft, 4.ft, 20.ft, 10.ft), use: 'perennial') {
        plant 'bush', spacing: 2.ft, rowSpacing: 2.5.ft
        %s
      }
      bed('guild', rect(40.ft, 4.ft, 16.ft, 16.ft), use: 'perennial') {
        plantRing 'bush', round: 'one', radius: 1.5.ft, count: 5
        plantRing 'chives', round: 'one', radius: 5.ft, count: 6
      }
      tree('one', point(48.ft, 12.ft), crown: 9.ft, height: 9.ft, standing: false) { species 'apple (dwarf)' }
      """;

  private static final Drawn DENSE = Drawn.of(YARD.formatted(""));
  private static final Drawn THINNED =
      Drawn.of(YARD.formatted("plantThinned 'bush', to: 5.ft, season: 3"));

  /** A shrub has 0.3 of 6 ft and of 4 ft in its first year, 0.8 in the fifth. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "height-1, 1.8",
    "height-5, 4.8",
    "height, 6.0",
    "spread-1, 1.2",
    "spread-5, 3.2",
    "spread, 4.0",
  })
  void sizes_areTheRuleTimesTheGrownSize(String column, String feet) {
    assertEquals(feet, DENSE.printed("plant-growth", "bush", column));
  }

  /**
   * 20 × 10 ft at 2 × 2.5 ft hold 10 × 4: 40, all of them in rows half as far as the usual 5 ft:
   * three of four rows count half, (1 + 3 × 0.5) / 4 = 0.625, 25 of 3 to 7 lb, 75 to 175 lb.
   * Thinned to 5 ft, each third of a row (5 / 2 is 2.5, rounded to 3) and each second row stay: 4
   * or 3 of a row by 2 rows, which then stand 5 ft apart, as usual, and keep all.
   */
  @Test
  void harvest_isOfThoseThatStay() {
    assertEquals("40", DENSE.printed("planting", "dense", "count"));
    assertEquals("75", DENSE.printed("harvest", "dense", "from"));
    assertEquals("175", DENSE.printed("harvest", "dense", "to"));
    assertEquals("40", THINNED.printed("thinning", "dense", "planted"));
    double stay = THINNED.exact("thinning", "dense", "stay");
    assertTrue(stay == 6 || stay == 8, "" + stay);
    assertEquals(stay * 3, THINNED.exact("harvest", "dense", "from") / 0.45359237, 1e-6);
    assertEquals(stay * 7, THINNED.exact("harvest", "dense", "to") / 0.45359237, 1e-6);
    // Water follows the ground, which is the same; more plants are not more water.
    assertEquals(
        DENSE.column("water-by-month", "need", 0), THINNED.column("water-by-month", "need", 0));
  }

  /** Five bushes of 4 ft stand 1.5 ft from the apple, and need 2; chives at 5 ft are well off. */
  @Test
  void plantsThatGrowIntoAStem_areFound() {
    List<String> said =
        DENSE.outcome().findings().stream()
            .filter(f -> f.rule().equals("planting.stems"))
            .map(Object::toString)
            .toList();
    assertEquals(1, said.size(), said.toString());
    assertTrue(said.get(0).contains("5 of bush stand 1.5 ft (0.46 m)"), said.get(0));
    assertTrue(said.get(0).contains("it needs 2.0 ft (0.61 m)"), said.get(0));
  }
}
