package yardloom.kernel.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

class YearDayTest {
  private static boolean isWithin(String date, int fromMonth, int untilMonth) {
    MonthDay from = MonthDay.of(fromMonth, 10);
    return YearDay.isWithin(LocalDate.parse(date), from, MonthDay.of(untilMonth, 20));
  }

  @Test
  void next_isTheDayItself_orWaitsForTheNextYear() {
    LocalDate from = LocalDate.parse("2026-09-14");
    assertEquals(from, YearDay.next(MonthDay.of(9, 14), from));
    assertEquals(LocalDate.parse("2026-12-01"), YearDay.next(MonthDay.of(12, 1), from));
    assertEquals(LocalDate.parse("2027-09-13"), YearDay.next(MonthDay.of(9, 13), from));
  }

  /** 29 February is the 28th where a year has none. */
  @Test
  void next_leapDay_isTheLastOfFebruaryInAnotherYear() {
    LocalDate from = LocalDate.parse("2027-02-01");
    assertEquals(LocalDate.parse("2027-02-28"), YearDay.next(MonthDay.of(2, 29), from));
  }

  @Test
  void isWithin_countsBothEnds() {
    assertFalse(isWithin("2026-03-09", 3, 5));
    assertTrue(isWithin("2026-03-10", 3, 5));
    assertTrue(isWithin("2026-05-20", 3, 5));
    assertFalse(isWithin("2026-05-21", 3, 5));
  }

  @Test
  void isWithin_acrossNewYear_holdsBothParts() {
    assertFalse(isWithin("2026-11-09", 11, 2));
    assertTrue(isWithin("2026-11-10", 11, 2));
    assertTrue(isWithin("2027-02-20", 11, 2));
    assertFalse(isWithin("2027-02-21", 11, 2));
  }
}
