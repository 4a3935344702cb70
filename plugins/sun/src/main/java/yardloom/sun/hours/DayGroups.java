package yardloom.sun.hours;

import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;
import yardloom.sun.position.SunYear;

/**
 * Which days are added up together: each month, cut where a season begins and ends.
 *
 * @param groupOfDay for each day of the year, month + 12 if it lies in the season
 */
public record DayGroups(List<Integer> groupOfDay) {
  /** Groups 0 to 11 are the months outside the season, 12 to 23 those inside. */
  public static final int GROUPS = 24;

  public DayGroups {
    groupOfDay = List.copyOf(groupOfDay);
  }

  /** A season from one date to another, both included; it may run over the turn of the year. */
  public static DayGroups season(MonthDay from, MonthDay to) {
    int first = SunYear.day(from);
    int last = SunYear.day(to);
    return new DayGroups(
        IntStream.range(0, SunYear.DAYS)
            .mapToObj(
                day -> {
                  boolean in =
                      first <= last ? first <= day && day <= last : first <= day || day <= last;
                  return SunYear.month(day) + (in ? 12 : 0);
                })
            .toList());
  }

  /** How many days lie in the season. */
  public int seasonDays() {
    return (int) groupOfDay.stream().filter(g -> g >= 12).count();
  }

  int[] array() {
    return groupOfDay.stream().mapToInt(g -> g).toArray();
  }
}
