package yardloom.kernel.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MonthsTest {
  /** FAO-56, Annex 2: day of the year of the middle of month M is the whole of 30.4 M − 15. */
  @Test
  void middleDays_areThoseOfFao56() {
    assertEquals(
        List.of(15, 45, 76, 106, 137, 167, 197, 228, 258, 289, 319, 349),
        IntStream.range(0, 12).map(Months::middleDay).boxed().toList());
  }

  @Test
  void year_has365Days_fourMonthsOfThirty_andAShortFebruary() {
    assertEquals(365, IntStream.range(0, 12).map(Months::days).sum());
    assertEquals(28, Months.days(1));
    assertEquals(
        List.of("Apr", "Jun", "Sep", "Nov"),
        IntStream.range(0, 12).filter(m -> Months.days(m) == 30).mapToObj(Months::name).toList());
  }

  /**
   * June has 30 days: from 4 on the 15th to 10 a month later, 9 is passed after 5 / 6 of them; down
   * from 10 to 6 through February, 9 after a quarter of 28 days. Twenty days after 15 December is 4
   * January, and 13 after 15 February 28 February.
   */
  @Test
  void straightLines_runFromThe15thToThe15th() {
    assertEquals(25, Months.daysToPass(5, 4, 10, 9), 1e-12);
    assertEquals(7, Months.daysToPass(1, 10, 6, 9), 1e-12);
    assertEquals(MonthDay.of(1, 4), Months.afterMiddle(11, 20));
    assertEquals(MonthDay.of(2, 28), Months.afterMiddle(1, 13));
  }

  /** By the calendar: 2028 is a leap year, 2027 is not. */
  @Test
  void next_isThatDayItself_orInTheYearAfter() {
    MonthDay april = MonthDay.of(4, 25);
    assertEquals(LocalDate.of(2027, 4, 25), Months.next(april, LocalDate.of(2027, 3, 7)));
    assertEquals(LocalDate.of(2027, 4, 25), Months.next(april, LocalDate.of(2027, 4, 25)));
    assertEquals(LocalDate.of(2028, 4, 25), Months.next(april, LocalDate.of(2027, 4, 26)));
    MonthDay leap = MonthDay.of(2, 29);
    assertEquals(LocalDate.of(2027, 2, 28), Months.next(leap, LocalDate.of(2026, 12, 1)));
    assertEquals(LocalDate.of(2028, 2, 29), Months.next(leap, LocalDate.of(2027, 3, 1)));
  }

  /** NIST Special Publication 811: 1 psi = 6.894757 kPa. */
  @Test
  void pressure_readsInItsThreeUnits() {
    assertEquals(6.894757, Pressure.psi(1).kilopascals(), 1e-6);
    assertEquals(206_842.7, Pressure.psi(30).pascals(), 0.1);
    assertEquals(29.00755, Pressure.kilopascals(200).psi(), 1e-5);
    assertEquals(250, Pressure.pascals(250_000).kilopascals(), 1e-9);
    assertEquals(Dimension.PRESSURE, Pressure.psi(1).dimension());
    assertEquals(10, Pressure.psi(25).minus(Pressure.psi(15)).psi(), 1e-9);
  }
}
