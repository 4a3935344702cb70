package yardloom.water.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** When tanks fall short, season by season; days are counted on a calendar. */
class TankSeasonsTest {
  private static boolean[] months(int... numbers) {
    boolean[] needed = new boolean[12];
    for (int number : numbers) {
      needed[number - 1] = true;
    }
    return needed;
  }

  private static TankSeasons seasons(
      boolean[] needed, String from, String until, Set<String> shortDays) {
    TankSeasons seasons = new TankSeasons(needed);
    LocalDate last = LocalDate.parse(until);
    for (LocalDate d = LocalDate.parse(from); !d.isAfter(last); d = d.plusDays(1)) {
      seasons.day(d, shortDays.contains(d.toString()));
    }
    return seasons;
  }

  /** November to February, so a summer lies over the turn of the year: three summers. */
  @Test
  void southernSummer_staysWhole() {
    TankSeasons seasons =
        seasons(
            months(11, 12, 1, 2),
            "2021-11-01",
            "2024-10-31",
            Set.of("2022-01-20", "2022-02-03", "2022-12-09", "2023-02-11", "2024-01-05"));
    assertEquals(3, seasons.count());
    // First short days: 20 January, 9 December, 5 January; the middle one is 5 January.
    assertEquals(Optional.of(MonthDay.of(1, 5)), seasons.first(0.5));
    assertEquals(Optional.of(MonthDay.of(12, 9)), seasons.first(0.1));
    // Last ones: 3 and 11 February, 5 January; the day after the middle one.
    assertEquals(Optional.of(MonthDay.of(2, 4)), seasons.backAgain());
  }

  /** In two summers of three it does not fall short. */
  @Test
  void seasonsWithoutAShortDay_countAsLate() {
    TankSeasons seasons =
        seasons(months(6, 7, 8), "2021-01-01", "2023-12-31", Set.of("2022-07-14", "2022-07-30"));
    // January to May of 2021 belongs to a season that began before it.
    assertEquals(4, seasons.count());
    assertEquals(Optional.empty(), seasons.first(0.5));
    assertEquals(Optional.of(MonthDay.of(7, 14)), seasons.first(0.1));
    assertEquals(Optional.empty(), seasons.backAgain());
  }
}
