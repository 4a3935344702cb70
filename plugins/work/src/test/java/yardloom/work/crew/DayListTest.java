package yardloom.work.crew;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayListTest {
  /** Each month and year once; the same month of another year is another month. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-09-30 2026-10-09 2026-10-16 2027-05-03 | 30 Sep, 9, 16 Oct 2026, 3 May 2027",
        "2026-03-02 2027-03-04 | 2 Mar 2026, 4 Mar 2027",
        "2026-12-31 | 31 Dec 2026"
      })
  void days_nameMonthAndYearOnce(String dates, String said) {
    List<LocalDate> days = Arrays.stream(dates.strip().split(" ")).map(LocalDate::parse).toList();
    assertEquals(said, DayList.of(days));
  }
}
