package yardloom.planting.window.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.planting.window.formula.PlantingTime.Frost;
import yardloom.planting.window.formula.PlantingTime.Offset;

/** Days counted on a calendar, north and south, and over the turn of the year. */
class PlantingTimeTest {
  private static PlantingTime fromSpringToFall() {
    return new PlantingTime("sown", new Offset(Frost.LAST, 14), new Offset(Frost.FIRST, -120));
  }

  /** April 24 less 28 days is March 27; October 12 and ten more is the 22nd. */
  @ParameterizedTest
  @CsvSource({
    "LAST, -28, 03-27",
    "LAST, 0, 04-24",
    "LAST, 14, 05-08",
    "FIRST, 10, 10-22",
    "FIRST, 90, 01-10"
  })
  void offset_countsFromItsFrost(Frost frost, int days, String day) {
    assertEquals(
        MonthDay.parse("--" + day),
        new Offset(frost, days).day(MonthDay.of(4, 24), MonthDay.of(10, 12)));
  }

  /**
   * Two weeks after 24 April is 8 May; 120 days before 12 October are 14 June, which is later, and
   * before 1 August 3 April, 35 days too early.
   */
  @Test
  void shortSeason_lacksTheDaysBetween() {
    assertEquals(0, fromSpringToFall().shortBy(MonthDay.of(4, 24), MonthDay.of(10, 12)));
    assertEquals(35, fromSpringToFall().shortBy(MonthDay.of(4, 24), MonthDay.of(8, 1)));
    // 120 days before 5 September are just 8 May.
    assertEquals(0, fromSpringToFall().shortBy(MonthDay.of(4, 24), MonthDay.of(9, 5)));
    assertEquals(1, fromSpringToFall().shortBy(MonthDay.of(4, 24), MonthDay.of(9, 4)));
  }

  /**
   * From 20 September the first day is 4 October; 120 days before 30 April are 31 December, before
   * 10 January 12 September: 22 days.
   */
  @Test
  void southernSeason_endsInTheNextYear() {
    assertEquals(0, fromSpringToFall().shortBy(MonthDay.of(9, 20), MonthDay.of(4, 30)));
    assertEquals(22, fromSpringToFall().shortBy(MonthDay.of(9, 20), MonthDay.of(1, 10)));
  }

  @Test
  void timesThatDoNotRunFromSpringToFall_areNeverShort() {
    MonthDay last = MonthDay.of(4, 24);
    MonthDay first = MonthDay.of(8, 1);
    Offset late = new Offset(Frost.FIRST, 300);
    Offset early = new Offset(Frost.LAST, -300);
    assertEquals(
        0, new PlantingTime("x", late, new Offset(Frost.FIRST, -120)).shortBy(last, first));
    assertEquals(0, new PlantingTime("x", new Offset(Frost.LAST, 14), early).shortBy(last, first));
  }
}
