package yardloom.planting.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.planting.PlantYard;
import yardloom.planting.own.OwnPlantWords;

/** What is picked is not cleared, cut or renewed before; what grows through winter is weeded. */
class CareAfterPickingTest {
  private static List<String> rows(PlantYard yard, String what) {
    return yard.printed("care").stream().filter(r -> r.startsWith(what + " | ")).toList();
  }

  private static String first(PlantYard yard, String what, int columns) {
    String row = rows(yard, what).get(0);
    return String.join(" | ", List.of(row.split(" \\| ")).subList(0, columns));
  }

  private static PlantYard kitchen(String last, String first) {
    PlantYard yard = PlantYard.us("2026-03-10");
    yard.frost(last, first);
    yard.planted(yard.bed("k", 0, 0, 4, 9), "kale", 1.5);
    yard.planted(yard.bed("l", 10, 0, 4, 5), "lettuce", 1);
    yard.planted(yard.bed("t", 20, 0, 4, 8), "tomato", 2);
    return yard;
  }

  /**
   * Kale is picked to 48 days after the first frost of fall (220 days from the last in a season of
   * 172), as its leaves bear frost: from 14 October to 1 December, and is cleared from then on, for
   * 21 days; tomatoes and lettuce go at the frost, from 14 October to 4 November. Where fall is
   * mild and its first frost falls on 15 November, that is 2 January and 23 January.
   */
  @ParameterizedTest(name = "{0} to {1}")
  @CsvSource({
    "04-25, 10-14, 1 Dec, 22 Dec, 14 Oct, 4 Nov",
    "03-15, 11-15, 2 Jan, 23 Jan, 15 Nov, 6 Dec",
  })
  void kaleStands_untilItIsPicked_whileTenderAnnualsGoAtFrost(
      String last, String first, String picked, String cleared, String frost, String gone) {
    PlantYard yard = kitchen(last, first);
    String kale = rows(yard, "Pick").stream().filter(r -> r.contains("kale")).findFirst().get();
    assertTrue(kale.contains(" | " + picked + " | each"), kale);
    assertEquals(
        Set.of(
            "Clear annuals | lettuce, tomato | " + frost + " | " + gone,
            "Clear annuals | kale | " + picked + " | " + cleared),
        Set.copyOf(
            rows(yard, "Clear annuals").stream()
                .map(r -> String.join(" | ", List.of(r.split(" \\| ")).subList(0, 4)))
                .toList()));
  }

  /**
   * Sown again from 98 days before 14 October, 8 July. Lettuce is first set out 28 days before 25
   * April, on 28 March, and picked from 15 May, 48 days later; kale from 30 May, 63 days later. So
   * the second is picked from 25 August and from 9 September.
   */
  @Test
  void secondSowing_saysWhenItIsPicked() {
    String row = rows(kitchen("04-25", "10-14"), "Second sowing").get(0);
    assertTrue(row.startsWith("Second sowing | kale, lettuce | 8 Jul | 5 Aug | each"), row);
    assertTrue(row.contains("Picked: kale from 9 Sep, lettuce from 25 Aug."), row);
  }

  /** Onion sets in cool summers: 28 days either side of 15 March, not into fall like lettuce. */
  @Test
  void onionsAreSetInSpringOnly() {
    PlantYard yard = PlantYard.us("2026-01-10");
    yard.frost("03-15", "11-15");
    yard.climate(4, 5, 6, 8, 10, 13, 16, 18, 18, 16, 11, 7, 5);
    yard.planted(yard.bed("o", 0, 0, 4, 6), "onion", 0.25);
    yard.planted(yard.bed("l", 10, 0, 4, 5), "lettuce", 1);
    assertEquals(
        List.of("onion | sow or set out | 15 Feb | 12 Apr"),
        yard.printed("planting-times").stream().filter(r -> r.startsWith("onion")).toList());
    assertEquals(
        List.of("lettuce | sow or set out | 15 Feb | 6 Sep"),
        yard.printed("planting-times").stream().filter(r -> r.startsWith("lettuce")).toList());
  }

  /**
   * Winters that do not freeze the ground: from the day after the first frost, 21 November, to 15
   * days before the next last one, 25 February, so 10 February: 82 days; 1 minute a week for each
   * 100 sq ft, 4 × 60 ft here: 2.4 × 82 / 7 = 28 min, 0.5 h.
   */
  @Test
  void mildWinters_areWeeded_frozenOnesAreNot() {
    PlantYard mild = PlantYard.us("2026-01-10");
    mild.frost("02-25", "11-20");
    mild.climate(8, 8, 9, 12, 15, 19, 23, 26, 26, 23, 18, 12, 8);
    mild.planted(mild.bed("s", 0, 0, 4, 60), "sage", 2);
    assertEquals(
        "Weed through the winter |  | 21 Nov | 10 Feb | each | 0.5",
        first(mild, "Weed through the winter", 6));
    PlantYard frozen = PlantYard.us("2026-01-10");
    frozen.frost("04-25", "10-14");
    frozen.climate(6, -4, -2, 3, 9, 15, 20, 23, 22, 18, 11, 4, -2);
    frozen.planted(frozen.bed("s", 0, 0, 4, 35), "sage", 2);
    assertTrue(rows(frozen, "Weed through the winter").isEmpty());
  }

  /**
   * Tomatoes are picked to day 160 after the last frost, but no longer than to the first: 25 April
   * + 160 is 2 October, before 14 October; 6 May + 160 would be 13 October, after 29 September.
   */
  @ParameterizedTest(name = "{0} to {1}: {2}")
  @CsvSource({"04-25, 10-14, 2 Oct", "05-06, 09-29, 29 Sep"})
  void whatFrostKills_isPickedUntilThen(String last, String first, String until) {
    String row =
        rows(kitchen(last, first), "Pick").stream()
            .filter(r -> r.contains("tomato"))
            .findFirst()
            .get();
    assertTrue(row.contains(" | " + until + " | each"), row);
  }

  /**
   * Roots are dug when frost has killed the leaves: Jerusalem artichokes from 7 days before the
   * first frost to 48 after it, wherever that lies: 14 October, 7 October to 1 December; 15
   * November, 8 November to 2 January.
   */
  @ParameterizedTest(name = "{0} to {1}: {2} to {3}")
  @CsvSource({"04-25, 10-14, 7 Oct, 1 Dec", "03-15, 11-15, 8 Nov, 2 Jan"})
  void roots_areDugInFall(String last, String first, String from, String until) {
    PlantYard yard = PlantYard.us("2026-03-10");
    yard.frost(last, first);
    yard.planted(yard.bed("j", 0, 0, 4, 20), "Jerusalem artichoke", 2);
    assertTrue(
        rows(yard, "Pick")
            .get(0)
            .startsWith("Pick | Jerusalem artichoke | " + from + " | " + until + " |"),
        () -> rows(yard, "Pick").toString());
  }

  /**
   * Sour cherries are picked to day 75 after the last frost, 25 April: 9 July; apricots to day 90,
   * 24 July. Both are pruned from the day after to 35 days after.
   */
  @ParameterizedTest(name = "{0}: {1} to {2}")
  @CsvSource({"sour cherry, 10 Jul, 13 Aug", "apricot, 25 Jul, 28 Aug"})
  void stoneFruitThatCankers_isPrunedAfterTheHarvest(String kind, String from, String until) {
    PlantYard yard = PlantYard.us("2026-03-10");
    yard.frost("04-25", "10-14");
    yard.tree("t", kind, 20, 20, 1);
    assertEquals(
        "Prune cherries and apricots | " + kind + " | " + from + " | " + until,
        first(yard, "Prune cherries and apricots", 4));
  }

  private static final List<String> WAITING =
      List.of("Clear annuals", "Cut fruited canes", "Renew strawberries", "Feed asparagus");

  /** Whatever the frosts are: a kind's picking is over when it is cleared, cut, renewed, fed. */
  @Property(tries = 12)
  void nothingIsCleared_cut_orRenewed_beforeItIsPicked(
      @ForAll @IntRange(min = 20, max = 150) int last,
      @ForAll @IntRange(min = 90, max = 240) int days,
      @ForAll @IntRange(min = -4, max = 12) int winterC) {
    PlantYard yard = PlantYard.us("2026-01-10");
    yard.frost(day(last), day(last + days));
    double[] means = new double[12];
    for (int m = 0; m < 12; m++) {
      means[m] = winterC + 7 * (1 - Math.cos(2 * Math.PI * m / 12));
    }
    yard.climate(5, means);
    List<String> kinds = List.of("kale", "leek", "tomato", "pea", "red raspberry", "blackberry");
    double x = 0;
    for (String kind : kinds) {
      yard.planted(yard.bed(kind, x, 0, 4, 12), kind, 2);
      x += 10;
    }
    yard.planted(yard.bed("a", x, 0, 4, 12), "asparagus", 2);
    yard.planted(yard.bed("s", x + 10, 0, 4, 12), "garden strawberry", 2);
    List<CareAct> acts = yard.outcome().results().all(CareAct.KEY);
    List<String> seen = new ArrayList<>();
    for (CareAct act : acts) {
      if (!WAITING.contains(act.task().what())) {
        continue;
      }
      for (CareAct pick : acts) {
        boolean same =
            pick.task().act() == Act.PICK
                && pick.when().season() == act.when().season()
                && act.plants().containsAll(pick.plants());
        if (same) {
          seen.add(act.task().what());
          assertFalse(
              act.when().from().isBefore(pick.when().until()), () -> act + " before " + pick);
        }
      }
    }
    assertTrue(seen.containsAll(WAITING), seen::toString);
  }

  private static String day(int ofYear) {
    MonthDay day = MonthDay.from(java.time.LocalDate.ofYearDay(2026, (ofYear - 1) % 365 + 1));
    return day.toString().substring(2);
  }

  /**
   * Rosemary is picked from 30 days before the last frost to 68 after the first, both ends in: from
   * 15 March to 15 November that leaves no month of rest.
   */
  @Test
  void whatIsPickedAllTheYear_saysSo_andBeginsOnceInTheCalendar() {
    PlantYard yard = PlantYard.us("2026-03-10");
    yard.frost("02-01", "12-10");
    yard.planted(yard.bed("r", 0, 0, 9, 9), "rosemary", 2.5);
    yard.plantedOn("rosemary", "2026-03-20");
    String row = rows(yard, "Pick").get(0);
    assertTrue(row.startsWith("Pick | rosemary | all year |  | each |"), row);
    List<DiaryEntry> entries =
        yard.outcome().results().all(DiaryEntry.FACT).stream()
            .filter(e -> e.key().startsWith("pick-"))
            .toList();
    assertEquals(1, entries.size());
    assertEquals("Pick: rosemary, all year from now on", entries.get(0).title());
    assertEquals(LocalDate.of(2026, 3, 20), entries.get(0).from());
    assertEquals(entries.get(0).from(), entries.get(0).until());
    assertEquals(0, entries.get(0).everyYears());
  }

  /**
   * A tomato's 160 days from 20 May end on 27 October, so frost ends them on 20 September, borrowed
   * or not. Days that a plan says are those of the yard: 130 are 27 September.
   */
  @ParameterizedTest
  @CsvSource({"'', '', 20 Sep", "',pick_from,pick_until', ',90,130', 27 Sep"})
  void ownTenderPlants_areCutAtTheFrost_unlessTheirDaysAreSaid(
      String columns, String cells, String until) {
    PlantYard yard = PlantYard.us("2026-03-10");
    yard.frost("05-20", "09-20");
    OwnPlantWords.plantBook(
        yard.words(),
        "plant,like"
            + columns
            + ",title,publisher,year,locator,standing\nhouse tomato,tomato"
            + cells
            + ",Trial,our garden,2021,p. 7,READ\n",
        "own.csv");
    yard.planted(yard.bed("t", 0, 0, 8, 8), "house tomato", 3);
    String row = rows(yard, "Pick").get(0);
    assertTrue(row.contains(" | " + until + " | "), row);
  }
}
