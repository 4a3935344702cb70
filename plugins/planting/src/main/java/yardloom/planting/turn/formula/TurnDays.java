package yardloom.planting.turn.formula;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.unit.Months;

/**
 * When crops that follow each other on one ground are planted and over: each is planted on the
 * first day of its season on which the ground is free, no two stand there at once.
 *
 * <p>A crop is in time if it is over before the first of them comes again; one that stands over
 * winter, planted in fall, may be lifted later. What is not in time is laid on the first free day,
 * so that it can be shown and told.
 *
 * <p>References: none for the rule: it is arithmetic. Days of crops: FAO-56, Table 11; days of
 * planting: as the caller has them.
 */
public final class TurnDays {
  /** Any year without a leap day. */
  public static final int YEAR = 2021;

  private static final int DAYS = 365;

  private TurnDays() {}

  /** Days of planting, both ends included; it may run across New Year. */
  public record Window(MonthDay from, MonthDay until) {}

  /**
   * One crop.
   *
   * @param windows when it may be planted, the first of the growing year first
   * @param days from planting until it is over
   * @param on the day on which it is planted, if that is said
   * @param killed the first day of frost, which ends a tender crop
   * @param lifted the day on which what is planted in fall is over, instead of {@code days}
   */
  public record Crop(
      List<Window> windows,
      int days,
      Optional<MonthDay> on,
      Optional<MonthDay> killed,
      Optional<MonthDay> lifted) {
    public Crop {
      windows = List.copyOf(windows);
      if (windows.isEmpty() || days < 1 || days > DAYS) {
        throw new IllegalArgumentException(
            "a crop of " + days + " days with " + windows.size() + " windows");
      }
    }
  }

  /**
   * Where one crop lies in the year.
   *
   * @param over the first day on which its ground is free again
   * @param days that it would take if nothing ended it sooner
   * @param latest the last day on which it may be planted so that all after it are still in time
   */
  public record Stay(
      LocalDate planted, LocalDate over, int days, LocalDate latest, boolean inTime) {}

  /** In the order of the crops; the first is planted in {@link #YEAR}. */
  public static List<Stay> of(List<Crop> crops) {
    List<Stay> stays = new ArrayList<>();
    for (Crop crop : crops) {
      if (stays.isEmpty()) {
        MonthDay first = crop.on().orElse(crop.windows().get(0).from());
        stays.add(stay(crop, first.atYear(YEAR), true));
        continue;
      }
      Stay before = stays.get(stays.size() - 1);
      LocalDate free = before.over();
      if (crop.on().isPresent()) {
        LocalDate day = Months.next(crop.on().get(), before.planted().plusDays(1));
        if (day.isBefore(free)) {
          stays.set(
              stays.size() - 1,
              new Stay(before.planted(), day, before.days(), before.latest(), before.inTime()));
        }
        free = day;
      }
      stays.add(follow(crop, free, stays.get(0).planted()));
    }
    return latest(stays);
  }

  private static Stay follow(Crop crop, LocalDate free, LocalDate first) {
    LocalDate day = crop.on().isPresent() ? free : firstInSeason(crop, free);
    LocalDate again = first.plusYears(1);
    Stay stay = stay(crop, day, isInSeason(crop, day));
    boolean isLate = crop.lifted().isEmpty() ? stay.over().isAfter(again) : !day.isBefore(again);
    return isLate || !stay.inTime() ? stay(crop, free, false) : stay;
  }

  private static Stay stay(Crop crop, LocalDate day, boolean inTime) {
    LocalDate over =
        crop.lifted()
            .map(l -> Months.next(l, day.plusDays(1)))
            .orElseGet(() -> day.plusDays(crop.days()));
    int days = (int) (over.toEpochDay() - day.toEpochDay());
    Optional<LocalDate> frost = crop.killed().map(k -> Months.next(k, day.plusDays(1)));
    LocalDate end = frost.filter(f -> f.isBefore(over)).orElse(over);
    return new Stay(day, end, days, inTime ? windowEnd(crop, day) : day, inTime);
  }

  /** The first crop may wait as long as all that follow it can; none waits past its own season. */
  private static List<Stay> latest(List<Stay> stays) {
    List<Stay> all = new ArrayList<>(stays);
    for (int i = all.size() - 2; i >= 0; i--) {
      Stay one = all.get(i);
      Stay next = all.get(i + 1);
      if (next.inTime()) {
        long slack = next.latest().toEpochDay() - one.over().toEpochDay();
        LocalDate latest = one.planted().plusDays(Math.max(0, slack));
        all.set(
            i,
            new Stay(
                one.planted(),
                one.over(),
                one.days(),
                latest.isBefore(one.latest()) ? latest : one.latest(),
                one.inTime()));
      }
    }
    return List.copyOf(all);
  }

  private static LocalDate firstInSeason(Crop crop, LocalDate free) {
    for (int wait = 0; wait < DAYS; wait++) {
      if (isInSeason(crop, free.plusDays(wait))) {
        return free.plusDays(wait);
      }
    }
    return free;
  }

  private static boolean isInSeason(Crop crop, LocalDate date) {
    return crop.windows().stream().anyMatch(w -> holds(w, date));
  }

  /** The end of the latest window that holds a day; the day itself if none does. */
  private static LocalDate windowEnd(Crop crop, LocalDate date) {
    return crop.windows().stream()
        .filter(w -> holds(w, date))
        .map(w -> Months.next(w.until(), date))
        .max(LocalDate::compareTo)
        .orElse(date);
  }

  private static boolean holds(Window window, LocalDate date) {
    MonthDay day = MonthDay.from(date);
    boolean late = day.compareTo(window.from()) >= 0;
    boolean early = day.compareTo(window.until()) <= 0;
    return window.from().compareTo(window.until()) <= 0 ? late && early : late || early;
  }
}
