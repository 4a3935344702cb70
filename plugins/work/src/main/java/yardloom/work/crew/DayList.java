package yardloom.work.crew;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;
import java.util.List;
import yardloom.kernel.table.TableFormat;

/**
 * Days as a crew says them, each month and year once: {@code 30 Sep, 9, 16 Oct 2026, 3 May 2027}.
 */
final class DayList {
  private DayList() {}

  /** Without its year. */
  static String brief(LocalDate date) {
    return TableFormat.day(MonthDay.from(date));
  }

  /** In the order given, which is that of time; empty for none. */
  static String of(List<LocalDate> dates) {
    StringBuilder said = new StringBuilder();
    for (int i = 0; i < dates.size(); i++) {
      LocalDate date = dates.get(i);
      LocalDate next = i + 1 < dates.size() ? dates.get(i + 1) : LocalDate.MAX;
      said.append(i == 0 ? "" : ", ");
      said.append(
          YearMonth.from(date).equals(YearMonth.from(next))
              ? String.valueOf(date.getDayOfMonth())
              : brief(date));
      said.append(date.getYear() == next.getYear() ? "" : " " + date.getYear());
    }
    return said.toString();
  }
}
