package yardloom.water.tank;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The days on which a tank falls short, season by season. A season begins with the first month that
 * needs water after one that needs none, in January where all months do; so a summer over the turn
 * of the year stays whole.
 */
final class TankSeasons {
  private static final int NEVER = Integer.MAX_VALUE;

  private final int startMonth;
  private final Map<Integer, int[]> seasons = new TreeMap<>();

  TankSeasons(boolean[] needed) {
    int start = 0;
    for (int m = 0; m < 12; m++) {
      if (needed[m] && !needed[(m + 11) % 12]) {
        start = m;
        break;
      }
    }
    startMonth = start;
  }

  void day(LocalDate date, boolean isShort) {
    int of = date.getMonthValue() - 1 >= startMonth ? date.getYear() : date.getYear() - 1;
    LocalDate start = LocalDate.of(of, startMonth + 1, 1);
    int offset = (int) ChronoUnit.DAYS.between(start, date);
    int[] days = seasons.computeIfAbsent(of, k -> new int[] {NEVER, -1});
    if (isShort) {
      days[0] = Math.min(days[0], offset);
      days[1] = Math.max(days[1], offset);
    }
  }

  int count() {
    return seasons.size();
  }

  /** The first short day of the season that so large a share of all falls short before. */
  Optional<MonthDay> first(double share) {
    int[] all = seasons.values().stream().mapToInt(d -> d[0]).sorted().toArray();
    int at = all.length < 10 && share < 0.5 ? 0 : (int) Math.floor(share * (all.length - 1));
    return all[at] == NEVER ? Optional.empty() : Optional.of(day(all[at]));
  }

  /** The day after the last short one, in the middle one of the seasons. */
  Optional<MonthDay> backAgain() {
    int[] all = seasons.values().stream().mapToInt(d -> d[1]).sorted().toArray();
    int last = all[(int) Math.ceil(0.5 * (all.length - 1))];
    return last < 0 ? Optional.empty() : Optional.of(day(last + 1));
  }

  private MonthDay day(int offset) {
    LocalDate at = LocalDate.of(2021, startMonth + 1, 1).plusDays(offset);
    return MonthDay.of(at.getMonth(), at.getDayOfMonth());
  }
}
