package yardloom.work.labour;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;

/**
 * On which days the crew works: Monday to Friday without the days off that plan and regional files
 * name.
 *
 * @param once days off of one year
 * @param yearly days off of every year
 */
public record Workdays(Set<LocalDate> once, Set<MonthDay> yearly) {
  /** On the plan, any number: each statement's. */
  public static final AttributeKey<Workdays> KEY =
      new AttributeKey<>("work.days-off", Workdays.class);

  /** More in all would leave a crew no week to work in. */
  public static final int MOST = 60;

  /** Every Monday to Friday. */
  public static final Workdays ALL = new Workdays(Set.of(), Set.of());

  public Workdays {
    once = Set.copyOf(once);
    yearly = Set.copyOf(yearly);
  }

  /** What all statements of the plan and of what it includes name together. */
  public static Workdays of(Plan plan) {
    Set<LocalDate> once = new TreeSet<>();
    Set<MonthDay> yearly = new TreeSet<>();
    for (var entry : plan.attributes().all(KEY)) {
      once.addAll(entry.value().once());
      yearly.addAll(entry.value().yearly());
    }
    return new Workdays(once, yearly);
  }

  /** How many days are named. */
  public int size() {
    return once.size() + yearly.size();
  }

  public boolean isOff(LocalDate date) {
    return date.getDayOfWeek() == DayOfWeek.SATURDAY
        || date.getDayOfWeek() == DayOfWeek.SUNDAY
        || once.contains(date)
        || yearly.contains(MonthDay.from(date));
  }

  /** The date of working day {@code day}, counted from 1 at the first working day from start. */
  public LocalDate day(LocalDate start, int day) {
    LocalDate date = start;
    int left = day - 1;
    while (isOff(date) || left > 0) {
      if (!isOff(date)) {
        left--;
      }
      date = date.plusDays(1);
    }
    return date;
  }

  /** Which working day from start a date is: the inverse of {@link #day}; 1 at the least. */
  public int number(LocalDate start, LocalDate date) {
    int number = 1;
    for (LocalDate at = start; at.isBefore(date); at = at.plusDays(1)) {
      number += isOff(at) ? 0 : 1;
    }
    return number;
  }
}
