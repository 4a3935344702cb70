package yardloom.kernel.diary;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import yardloom.kernel.fact.FactKey;

/**
 * Something to do on days of the calendar.
 *
 * @param key names it within the plan and stays the same when only its days change
 * @param until its last day
 * @param title a few words
 * @param text how to do it, and who says so
 * @param everyYears after how many years it comes again, and so on; 0 if it does not
 */
public record DiaryEntry(
    String key, LocalDate from, LocalDate until, String title, String text, int everyYears)
    implements Comparable<DiaryEntry> {
  /** What any plugin has to say of days; read by writers of calendars. */
  public static final FactKey<DiaryEntry> FACT =
      FactKey.many("plan.diary", DiaryEntry.class).called("days of the diary").byPart();

  public DiaryEntry {
    Objects.requireNonNull(key);
    if (until.isBefore(from)) {
      throw new IllegalArgumentException(key + " ends on " + until + " before it begins " + from);
    }
  }

  @Override
  public int compareTo(DiaryEntry other) {
    return Comparator.comparing(DiaryEntry::from)
        .thenComparing(DiaryEntry::until)
        .thenComparing(DiaryEntry::key)
        .compare(this, other);
  }
}
