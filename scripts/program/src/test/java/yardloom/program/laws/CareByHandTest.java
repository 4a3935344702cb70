package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * From plan text to the printed calendar of care, by hand. Days are counted from the frosts that
 * the plan gives, 6 May and 29 September, as {@code care-acts.csv} has them; minutes are its too.
 */
class CareByHandTest {
  private static final String YARD =
      """
      plan 'Care by hand', units: 'us', date: '%s'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '09-29', source: 'by hand'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
      bed('currants', rect(4.ft, 4.ft, 12.ft, 4.ft), use: 'perennial') { plant 'red currant', spacing: 4.ft }
      bed('tomatoes', rect(4.ft, 14.ft, 10.ft, 4.ft), use: 'annual') { plant 'tomato', spacing: 2.ft }
      for (x in [30, 46]) tree("apple ${x}", point(x * 1.ft, 20.ft), crown: 13.ft, height: 12.ft) { species 'apple (semi-dwarf)' }
      tree('old pear', point(30.ft, 40.ft), crown: 16.ft, height: 16.ft, trunk: 9.inch, standing: true) { species 'European pear' }
      """;

  private static final Drawn SPRING = Drawn.of(YARD.formatted("2027-04-12"));

  /**
   * 6 May − 75 is 20 February, − 21 is 15 April, − 30 is 6 April; + 28 is 3 June, + 70 is 15 July;
   * 29 September + 21 is 20 October. Two apples at 15 min are 0.5 h while young, one old pear at 45
   * is 0.75 h, with the apples 2.25 h once they bear; three currants at 15 are 0.75 h; ten tomatoes
   * at 6 are 1 h, at 2 are 20 min.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Prune young trees, apple (semi-dwarf), --02-20, --04-15, 2 to 3, 0.5",
    "Prune bearing trees, 'European pear, apple (semi-dwarf)', --02-20, --04-15, each, 2.3",
    "Prune currants and gooseberries, red currant, --02-20, --04-06, from 2 on, 0.8",
    "Stake and tie, tomato, --06-03, --07-15, each, 1.0",
    "Clear annuals, tomato, --09-29, --10-20, each, 0.3",
  })
  void acts_areDatedByFrost_andTimedByPlant(
      String what, String plants, String from, String until, String seasons, String hours) {
    assertEquals(plants, SPRING.printed("care", what, "plants"));
    assertEquals(from, SPRING.printed("care", what, "from"));
    assertEquals(until, SPRING.printed("care", what, "until"));
    assertEquals(seasons, SPRING.printed("care", what, "seasons"));
    assertEquals(hours, SPRING.printed("care", what, "hours"));
  }

  /**
   * Weeding from 22 April to 29 September is 161 days; 6 min a week for each 100 of 48 + 40 sq ft:
   * 6 × 0.88 × 161 / 7 = 121.4 min, 2.02 h. June has 30 of these days, 0.377 h, and 28 of the 43 on
   * which tomatoes are tied, 0.651 h; the old pear is thinned from 7 to 28 June, 30 min: 1.53 h.
   * July has 31 / 161 × 2.02 + 15 / 43 = 0.739 h. April has 9 / 161 × 2.02 = 0.11 h, and of 0.75 h
   * for the old pear nothing in season 1 falls before 12 April: 4 days are left, all of it: 0.86 h.
   * Two apples are guarded at 10 min from 29 September 2027 to 8 April 2028, 193 days: 31 / 193 of
   * 20 min are 0.054 h in January, 8 / 193 are 0.014 h in April, 0.874 h in all.
   */
  @ParameterizedTest(name = "{0}: {1} h")
  @CsvSource({"June, 1.5", "July, 0.7", "April, 0.9", "January, 0.1"})
  void hoursOfAMonth_areThoseOfItsDays(String month, String hours) {
    assertEquals(hours, SPRING.printed("care-hours", month, "season-1"));
  }

  @Test
  void monthsOfASeason_addUpToItsYear() {
    for (String season : List.of("season-1", "season-2", "season-3", "grown")) {
      assertEquals(
          SPRING.exact("care-hours", "Year", season), SPRING.sum("care-hours", season), 1e-6);
    }
  }

  private static final String MILD =
      """
      plan 'Mild winters', units: 'us', date: '2027-10-18'
      site 'By hand', latitude: 32.2.deg, longitude: -110.9.deg, zone: 'America/Phoenix'
      frost last: '03-09', first: '11-20', source: 'by hand'
      %s
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 60.ft), point(0.ft, 60.ft)])
      bed('herbs', rect(4.ft, 4.ft, 12.ft, 4.ft), use: 'perennial') { plant 'rosemary', spacing: 4.ft }
      for (x in [10, 26]) tree("lemon ${x}", point(x * 1.ft, 20.ft), crown: 13.ft, height: 12.ft, standing: true) { species 'lemon' }
      tree('fig', point(46.ft, 20.ft), crown: 13.ft, height: 12.ft, standing: false) { species 'fig' }
      for (x in [10, 30, 50]) tree("peach ${x}", point(x * 1.ft, 45.ft), crown: 13.ft, height: 12.ft, standing: false) { species 'peach' }
      """;

  /**
   * Lemons winter from zone 9 on, rosemary from zone 8 (zones.csv): in zone 8b two lemons at 15 min
   * are covered, 0.5 h; in the colder half of zone 8 three rosemaries more, 1.25 h; in 9b nothing
   * is; where no zone is known, all that is tender. From 20 November − 7 to 9 March + 7.
   */
  @ParameterizedTest(name = "zone {0}: {1}")
  @CsvSource({
    "8b, lemon, 0.5",
    "8a, 'lemon, rosemary', 1.3",
    "7b, 'lemon, rosemary', 1.3",
    "9a, lemon, 0.5",
    "9b, '', ''",
    "'', 'lemon, rosemary', 1.3",
  })
  void tenderPlants_areCoveredFromFallToSpring_whereTheZoneIsTooCold(
      String zone, String plants, String hours) {
    String said = zone.isEmpty() ? "" : "hardinessZone '" + zone + "', source: 'by hand'";
    Drawn yard = Drawn.of(MILD.formatted(said));
    String what = "Cover tender plants";
    assertEquals(!plants.isEmpty(), yard.rows("care").contains(what));
    if (!plants.isEmpty()) {
      assertEquals(plants, yard.printed("care", what, "plants"));
      assertEquals("--11-13", yard.printed("care", what, "from"));
      assertEquals("--03-16", yard.printed("care", what, "until"));
      assertEquals(hours, yard.printed("care", what, "hours"));
    }
  }

  /** Rabbits eat peach bark, not that of figs and lemons; from 20 November to 9 March 2028 − 28. */
  @Test
  void youngBark_isGuardedFromFallUntilBudsSwell_onTreesThatRabbitsEat() {
    Drawn yard = Drawn.of(MILD.formatted("hardinessZone '8b', source: 'by hand'"));
    assertEquals("peach", yard.printed("care", "Guard young bark", "plants"));
    assertEquals("--11-20", yard.printed("care", "Guard young bark", "from"));
    assertEquals("--02-10", yard.printed("care", "Guard young bark", "until"));
    assertEquals("0.5", yard.printed("care", "Guard young bark", "hours"));
    assertEquals("1 to 3", yard.printed("care", "Guard young bark", "seasons"));
  }

  /** Planted in October, apples have their first season in the year after, and a winter before. */
  @Test
  void treesPlantedInFall_areGuardedThatWinter_andPrunedAYearLater() {
    Drawn fall = Drawn.of(YARD.formatted("2027-10-04"));
    assertEquals("2027-10-04", fall.printed("care", "Plant", "from"));
    String diary = fall.outcome().results().all(yardloom.kernel.diary.DiaryEntry.FACT).toString();
    assertTrue(diary.contains("guard-young-bark-2027, from=2027-10-04, until=2028-04-08"), diary);
    assertTrue(diary.contains("prune-young-trees-2029, from=2029-02-20"), diary);
    assertFalse(diary.contains("prune-young-trees-2028"), diary);
  }

  /**
   * Tomatoes go out two weeks after the last frost, 20 May, and take 145 days by the table of crop
   * stages (FAO-56, Table 11: 30 + 40 + 45 + 30), to 12 October, 13 days after the frost. Their
   * days of planting are that one then, and not the rest of the year until it.
   */
  @Test
  void tooShortASeason_leavesOneDayToSetOut_andIsSaid() {
    assertEquals("--05-20", SPRING.printed("planting-times", "tomato", "from"));
    assertEquals("--05-20", SPRING.printed("planting-times", "tomato", "until"));
    assertTrue(
        SPRING.outcome().findings().stream()
            .anyMatch(f -> f.text().contains("tomato ripens 13 days after the first usual frost")));
  }

  /** South of the equator the season runs over New Year: 28 September + 70 is 7 December. */
  @Test
  void southOfTheEquator_theSeasonRunsOverNewYear() {
    Drawn south =
        Drawn.of(
            YARD.formatted("2027-09-30")
                .replace("40.11.deg", "-40.11.deg")
                .replace("climate 'urbana-il'\n", "")
                .replace("last: '05-06', first: '09-29'", "last: '09-28', first: '05-03'"));
    assertEquals("--12-07", south.printed("care", "Stake and tie", "until"));
    assertEquals("--05-24", south.printed("care", "Clear annuals", "until"));
  }

  /** Nothing to count from, nothing said: no frost days, or neither a date nor dated work. */
  @Test
  void withoutFrostOrDate_thereIsNoCalendar() {
    assertFalse(Drawn.of(YARD.formatted("spring")).tables().containsKey("care"));
  }
}
