package yardloom.planting.turn.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.planting.turn.formula.TurnDays.Crop;
import yardloom.planting.turn.formula.TurnDays.Stay;
import yardloom.planting.turn.formula.TurnDays.Window;

class TurnDaysTest {
  private static MonthDay day(String text) {
    return MonthDay.parse("--" + text);
  }

  private static LocalDate date(String text) {
    return LocalDate.parse("2021-" + text);
  }

  private static Crop crop(String from, String until, int days, String on, String killed) {
    return new Crop(
        List.of(new Window(day(from), day(until))),
        days,
        Optional.ofNullable(on).map(TurnDaysTest::day),
        Optional.ofNullable(killed).map(TurnDaysTest::day),
        Optional.empty());
  }

  /** 1 April + 60 days is 31 May; the second waits for 10 June, 70 days to 19 August. */
  @Test
  void second_waitsForItsSeason() {
    List<Stay> stays =
        TurnDays.of(
            List.of(
                crop("04-01", "05-01", 60, null, null), crop("06-10", "06-25", 70, null, null)));
    assertEquals(date("05-31"), stays.get(0).over());
    assertEquals(date("06-10"), stays.get(1).planted());
    assertEquals(date("08-19"), stays.get(1).over());
    // The second has 15 days to spare, and 10 days pass between them: 1 April + 25.
    assertEquals(date("04-26"), stays.get(0).latest());
    assertEquals(date("06-25"), stays.get(1).latest());
    assertTrue(stays.get(1).inTime());
  }

  /** Free on 31 May, its last day was 20 May: too late, by whatever year. */
  @Test
  void second_afterItsSeason_isNotInTime() {
    List<Stay> stays =
        TurnDays.of(
            List.of(
                crop("04-01", "05-01", 60, null, null), crop("04-10", "05-20", 70, null, null)));
    assertFalse(stays.get(1).inTime());
    assertEquals(date("05-31"), stays.get(1).planted());
    assertTrue(stays.get(0).inTime());
  }

  /** Planted on a day that is said, it ends the first; frost on 2 October ends it. */
  @Test
  void saidDay_endsTheFirst_andFrostTheSecond() {
    List<Stay> stays =
        TurnDays.of(
            List.of(
                crop("04-01", "05-01", 60, null, null),
                crop("05-10", "07-01", 200, "05-20", "10-02")));
    assertEquals(date("05-20"), stays.get(0).over());
    assertEquals(60, stays.get(0).days());
    assertEquals(date("05-20"), stays.get(1).planted());
    assertEquals(date("10-02"), stays.get(1).over());
  }

  /** What is planted in fall is lifted in the next summer, 5 July. */
  @Test
  void overWinter_isLiftedNextYear() {
    Crop garlic =
        new Crop(
            List.of(new Window(day("09-22"), day("11-10"))),
            210,
            Optional.empty(),
            Optional.empty(),
            Optional.of(day("07-05")));
    List<Stay> stays = TurnDays.of(List.of(crop("06-01", "06-05", 100, null, null), garlic));
    assertEquals(date("09-22"), stays.get(1).planted());
    assertEquals(LocalDate.parse("2022-07-05"), stays.get(1).over());
    assertTrue(stays.get(1).inTime());
  }

  @Test
  void cropsWithoutDaysOrSeason_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> crop("04-01", "05-01", 0, null, null));
    assertThrows(IllegalArgumentException.class, () -> crop("04-01", "05-01", 366, null, null));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Crop(List.of(), 9, Optional.empty(), Optional.empty(), Optional.empty()));
  }

  /** No two crops stand on one ground at once, and none that is in time stays past a year. */
  @Property(tries = 300)
  void crops_neverOverlap(@ForAll @IntRange(max = 1_000_000) int seed) {
    Random random = new Random(seed);
    List<Crop> crops = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(3); i++) {
      LocalDate from = date("01-01").plusDays(random.nextInt(365));
      crops.add(
          new Crop(
              List.of(
                  new Window(
                      MonthDay.from(from), MonthDay.from(from.plusDays(random.nextInt(120))))),
              20 + random.nextInt(150),
              random.nextInt(4) == 0
                  ? Optional.of(MonthDay.from(from.plusDays(random.nextInt(30))))
                  : Optional.empty(),
              random.nextBoolean() ? Optional.of(day("10-14")) : Optional.empty(),
              Optional.empty()));
    }
    List<Stay> stays = TurnDays.of(crops);
    for (int i = 0; i < stays.size(); i++) {
      Stay stay = stays.get(i);
      assertTrue(stay.over().isAfter(stay.planted()), stays::toString);
      assertFalse(stay.latest().isBefore(stay.planted()), stays::toString);
      if (i > 0) {
        assertFalse(stay.planted().isBefore(stays.get(i - 1).over()), stays::toString);
        LocalDate again = stays.get(0).planted().plusYears(1);
        assertFalse(stay.inTime() && stay.over().isAfter(again), stays::toString);
      }
    }
  }

  /** Frost that comes after the harvest ends nothing: 1 May + 60 days are 30 June. */
  @Test
  void frostAfterTheHarvest_isNoMatter() {
    Stay one = TurnDays.of(List.of(crop("05-01", "05-20", 60, null, "10-02"))).get(0);
    assertEquals(date("06-30"), one.over());
  }

  /** Planted in the first of two seasons it may wait till that one ends, 1 May, not the other. */
  @Test
  void cropOfTwoSeasons_waitsNoLongerThanTheOneItIsPlantedIn() {
    Crop twice =
        new Crop(
            List.of(new Window(day("04-01"), day("05-01")), new Window(day("08-01"), day("09-01"))),
            40,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertEquals(date("05-01"), TurnDays.of(List.of(twice)).get(0).latest());
  }
}
