package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.diary.DiaryEntry;

/** A yard where nobody says when it freezes, since it hardly does: times, care and calendar. */
class FrostFreeByHandTest {
  private static final String YARD =
      """
      plan 'No frost', units: 'metric', date: '2026-09-30'
      site 'San Francisco', latitude: 37.76.deg, longitude: -122.44.deg, zone: 'America/Los_Angeles'
      climate '%s'
      lot([point(0.m, 0.m), point(24.m, 0.m), point(24.m, 16.m), point(0.m, 16.m)])
      bed('greens', rect(1.m, 1.m, 6.m, 1.2.m), use: 'annual') { plant 'kale'; plant 'beet'; plant 'Swiss chard'; plant 'carrot'; plant 'garlic'; plant 'tomato' }
      bed('herbs', rect(1.m, 4.m, 4.m, 1.2.m), use: 'perennial') { plant 'sage'; plant 'rosemary' }
      tree('one', point(12.m, 10.m), crown: 2.5.m, height: 2.5.m, standing: false) { species 'apple (dwarf)', stock: 'bare root 4 ft' }
      tree('two', point(18.m, 10.m), crown: 2.5.m, height: 2.5.m, standing: false) { species 'European plum', stock: 'pot 5 gal' }
      work crew: 2, hoursPerDay: 6, start: '2026-10-05'
      """;

  private static final Drawn DRAWN = Drawn.of(YARD.formatted("san-francisco-ca"));

  private static PlantingWindow window(String plant) {
    return DRAWN.outcome().results().all(YardFacts.PLANTING_WINDOWS).stream()
        .filter(w -> w.plant().equals(plant))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The mean passes 55 °F on 18 March and falls below after 27 November (worked in WarmMonthsTest).
   * Kale all year. Tomatoes, very tender, 14 days later: 1 April. Garlic from 28 days before to 21
   * after 27 November: 30 October to 18 December. Bare roots from 14 days after it, 11 December, to
   * 18 March. What has leaves, and herbs, 42 days before 27 November: 16 October, with the rains.
   */
  @ParameterizedTest(name = "{0}: {1} to {2}")
  @CsvSource({
    "kale, --03-18, --03-17",
    "tomato, --04-01, ''",
    "garlic, --10-30, --12-18",
    "apple (dwarf), --12-11, --03-18",
    "European plum, --10-16, --03-18",
    "sage, --10-16, --03-18",
    "rosemary, --10-16, --06-10",
  })
  void times_areCountedFromTheWarmPartOfTheYear(String plant, String from, String until) {
    assertEquals(from, DRAWN.printed("planting-times", plant, "from"));
    if (!until.isEmpty()) {
      assertEquals(until, DRAWN.printed("planting-times", plant, "until"));
    }
  }

  /**
   * Planting recommendations for west of the hills, Alameda County Master Gardeners (read): beets,
   * chard and kale all year; carrots February to August; garlic October to February. In the middle
   * of each of these months, and never in a month that is not told. Bare roots of fruit trees in
   * January (the same gardeners' page of months, read).
   */
  @ParameterizedTest(name = "{0}: months {1}")
  @CsvSource({
    "kale, 1 2 3 4 5 6 7 8 9 10 11 12, true",
    "beet, 1 2 3 4 5 6 7 8 9 10 11 12, false",
    "Swiss chard, 1 2 3 4 5 6 7 8 9 10 11 12, false",
    "carrot, 2 3 4 5 6 7 8, true",
    "garlic, 10 11 12 1 2, false",
    "apple (dwarf), 12 1 2 3, false",
  })
  void times_areThoseThatLocalGardenersTell(String plant, String months, boolean all) {
    List<String> told = List.of(months.split(" "));
    for (int day = 0; day < 365; day++) {
      LocalDate date = LocalDate.of(2027, 1, 1).plusDays(day);
      boolean holds = window(plant).on(date).isPresent();
      boolean may = told.contains("" + date.getMonthValue());
      assertTrue(may || !holds, plant + " on " + date);
      if (all && may && date.getDayOfMonth() == 15) {
        assertTrue(holds, plant + " on " + date);
      }
    }
    assertTrue(
        window(plant).on(LocalDate.of(2027, 1, 15)).isPresent() || !plant.startsWith("apple"));
  }

  @Test
  void notes_sayThatNoFrostIsUsual_andCareHasNoFleece() {
    assertTrue(
        DRAWN.tables().get("planting-times").notes().get(0).startsWith("No frost is usual here"));
    assertFalse(DRAWN.rows("care").contains("Cover tender plants"));
    // Grown trees are pruned 75 to 21 days before 18 March, 2 January to 25 February.
    assertEquals("--01-02", DRAWN.printed("care", "Prune bearing trees", "from"));
    assertEquals("--02-25", DRAWN.printed("care", "Prune bearing trees", "until"));
  }

  /**
   * The days that all others are counted from are printed, as frost days are. A plan that says when
   * it freezes has those instead.
   */
  @Test
  void frostTable_saysWhichDaysStandForFrost() {
    String begins = "first warm day, used in this plan for the last frost";
    String ends = "last warm day, used in this plan for the first frost";
    assertEquals("--03-18", DRAWN.printed("frost", begins, "half"));
    assertEquals("--11-27", DRAWN.printed("frost", ends, "half"));
    Drawn told =
        Drawn.of(
            YARD.formatted("san-francisco-ca")
                .replace(
                    "work crew", "frost last: '01-09', first: '12-21', source: 'hand'\nwork crew"));
    assertFalse(told.rows("frost").contains(begins));
    assertEquals(
        "--01-09", told.printed("frost", "last frost of spring, used in this plan", "half"));
  }

  /** Every act of care stands in the calendar; none before the work begins. */
  @Test
  void calendar_hasTheYearsOfCare() {
    List<DiaryEntry> diary = DRAWN.outcome().results().all(DiaryEntry.FACT);
    assertTrue(diary.size() > 20, diary.size() + " entries");
  }

  /** Nobody says when it freezes in Urbana, and it does: nothing is said of days. */
  @Test
  void placeWithFrost_isNotTakenForOneWithout() {
    Drawn cold = Drawn.of(YARD.formatted("urbana-il"));
    assertFalse(cold.tables().containsKey("planting-times"));
    assertFalse(cold.tables().containsKey("care"));
  }
}
