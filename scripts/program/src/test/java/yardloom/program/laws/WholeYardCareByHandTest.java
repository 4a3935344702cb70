package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Upkeep of all a yard has: mulched ground, paths, rings, hedges, drip and trees of the desert, not
 * of its beds alone. Minutes and days are those of {@code care-acts.csv}, from the frosts of the
 * plan, 10 February and 2 December.
 */
class WholeYardCareByHandTest {
  private static final String PLAN =
      """
      plan 'Whole yard', units: 'us', date: '2027-02-15'
      site 'By hand', latitude: 33.4.deg, longitude: -112.deg, elevation: 1110.ft, zone: 'America/Phoenix'
      climate 'phoenix-az'
      frost last: '02-10', first: '12-02', source: 'by hand'
      hardinessZone '9b', source: 'by hand'
      soil sand: 55, clay: 15, organic: 0.8, depth: 36.inch
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 60.ft), point(0.ft, 60.ft)])
      tap 'tap', point(2.ft, 2.ft), source: 'mains'
      supply flow: 5.gpm
      sheetMulch { chipsOnly(); chips perennial: 3.inch, annual: 2.inch, path: 4.inch, ground: 6.inch, treeRing: 5.inch }
      mulchedGround 'deep', rect(40.ft, 4.ft, 36.ft, %s.ft)
      path 'walk', line([point(40.ft, 30.ft), point(65.ft, 30.ft)]), width: 4.ft, use: 'foot'
      hedge 'screen', line([point(80.ft, 5.ft), point(80.ft, 40.ft)]), height: 5.ft, width: 2.ft
      tree('orange', point(15.ft, 15.ft), crown: 10.ft, height: 10.ft, leaf: 'evergreen', standing: false) { species 'sweet orange'; mulchRing 4.ft; drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 18.inch }
      for (i in 0..1) tree("pomegranate ${i}", point(12.ft + 14.ft * i, 34.ft), crown: 10.ft, height: 10.ft, standing: false) { species 'pomegranate' }
      for (i in 0..2) tree("fig ${i}", point(12.ft + 24.ft * i, 51.ft), crown: 10.ft, height: 10.ft, trunk: 7.inch, standing: true) { species 'fig' }
      bed('herbs', rect(70.ft, 44.ft, 10.ft, 5.ft), use: 'perennial') { plant 'lavender', spacing: 2.5.ft }
      """;

  private static final Drawn YARD = Drawn.of(PLAN.formatted("20"));

  /**
   * Deep mulch and paths: 36 × 20 + 25 × 4 sq ft and the orange's ring, π × (4² − 0.5²) = 49.5, are
   * 869.5 sq ft. From 10 February − 14 to 2 December are 310 days, from the day of planting, 15
   * February, 291: 0.8 × 8.695 × 291 / 7 = 289 min, 0.4 × 8.695 × 310 / 7 = 154 min. Chips as laid
   * are 720 × 6 / 324 + 100 × 4 / 324 + 49.5 × 5 / 324 + 50 × 3 / 324 = 15.79 cu yd; 30 % of them,
   * an hour each, are 4.7 h in season 1, a quarter of that from season 3 on, 1.18 h. The drip is
   * walked in 310 / 30, 11 months, at 20 min: 3.67 h; the orange's soil is felt 3 min in 266 / 30,
   * 9 months: 27 min. 35 ft of hedge at 10 min for 10 ft: 35 min. Three figs at 20 min: 1 h; two
   * pomegranates: 40 min; compost 5 min for each of the five: 25 min; an orange at 15: 0.25 h.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Walk mulch weekly, '', --02-15, --12-02, 1, 4.8",
    "Walk mulch every other week, '', --01-27, --12-02, from 2 on, 2.6",
    "Top up chips, '', --12-23, --01-21, each, 1.2",
    "Check the drip, '', --01-27, --12-02, each, 3.7",
    "Trim hedges, '', --04-11, --05-11, each, 0.6",
    "Feel how deep trees are wet, sweet orange, --02-10, --11-02, 1 to 3, 0.5",
    "Prune figs, fig, --12-27, --01-27, from 2 on, 1.0",
    "Prune pomegranates, pomegranate, --12-27, --01-27, from 2 on, 0.7",
    "Compost under fruit trees, 'fig, pomegranate', --01-20, --02-24, each, 0.4",
    "Prune citrus, sweet orange, --02-24, --03-27, from 2 on, 0.3",
    "Feed citrus in early summer, sweet orange, --06-02, --06-30, from 2 on, 0.1",
    "Cover young trees, sweet orange, --11-25, --02-17, 1 to 3, 0.3",
  })
  void everythingOfTheYard_isLookedAfter(
      String what, String plants, String from, String until, String seasons, String hours) {
    assertEquals(plants, YARD.printed("care", what, "plants"));
    assertEquals(from, YARD.printed("care", what, "from"));
    assertEquals(until, YARD.printed("care", what, "until"));
    assertEquals(seasons, YARD.printed("care", what, "seasons"));
    assertEquals(hours, YARD.printed("care", what, "hours"));
  }

  /** 15.79 × 0.3 = 4.74, half of it 2.37, half of that 1.18. */
  @Test
  void chipsToAdd_areSaidForEachSeason() {
    String how = YARD.printed("care", "Top up chips", "how");
    assertTrue(
        how.endsWith(
            "About 4.7 cu yd in season 1, 2.4 cu yd in season 2, 1.2 cu yd in season 3 and after."),
        how);
  }

  /** Law: so many feet more of mulched ground are 0.4 min × 0.36 × 310 / 7 each more to walk. */
  @ParameterizedTest(name = "{0} ft deep")
  @CsvSource({"3", "11", "19"})
  void hoursOfMulch_growWithItsGround(int feet) {
    String what = "Walk mulch every other week";
    double less = Drawn.of(PLAN.formatted(feet)).exact("care", what, "hours");
    double more = YARD.exact("care", what, "hours");
    assertEquals((20 - feet) * 0.4 * 0.36 * 310 / 7 / 60, more - less, 1e-9);
  }

  /** A zone warmer the orange bears the winter from its first year on; figs stand without drip. */
  @Test
  void whatNeedsNothing_getsNothing() {
    Drawn warm = Drawn.of(PLAN.formatted("20").replace("'9b'", "'10a'"));
    assertFalse(warm.rows("care").contains("Cover young trees"));
    assertFalse(YARD.rows("care").contains("Cover tender plants"));
    assertFalse(YARD.printed("care", "Feel how deep trees are wet", "plants").contains("fig"));
  }
}
