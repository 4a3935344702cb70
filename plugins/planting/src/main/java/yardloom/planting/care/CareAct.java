package yardloom.planting.care;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.TimeSpan;

/**
 * One thing that is done in one season.
 *
 * @param key names it, without its season
 * @param plants the kinds it is done for; empty where it is for the yard
 * @param hours of one person; absent where the work's own tables have them, or none are known
 */
public record CareAct(
    String key, CareTask task, List<String> plants, When when, Optional<Derived<TimeSpan>> hours)
    implements Comparable<CareAct> {
  /** The season from which a garden counts as grown. */
  public static final int GROWN = 4;

  /** The plugin's own fact: all tables, figures and files of care read it. */
  public static final FactKey<CareAct> KEY =
      FactKey.many("planting.care", CareAct.class).called("care of the plants").byPart();

  /** Ends the key of what is done in the winter before a first season. */
  static final String FIRST_WINTER = "-first-winter";

  public CareAct {
    plants = List.copyOf(plants);
  }

  /**
   * Its days.
   *
   * @param season of the garden, counted from 1; {@link #GROWN} stands for each one from then on
   * @param every how many seasons apart it comes once the garden is grown; 0 if it does not
   */
  public record When(int season, LocalDate from, LocalDate until, int every) {
    private static final int YEAR_DAYS = 365;

    /** Whether it has no beginning and no end in the year. */
    boolean isAllYear() {
      return ChronoUnit.DAYS.between(from, until) >= YEAR_DAYS - 1;
    }

    /** Its last day in the order of the year. */
    MonthDay ends() {
      return isAllYear() ? MonthDay.of(12, 31) : MonthDay.from(until);
    }
  }

  /** Whether it is the picking of what has ripened. */
  public boolean isPicking() {
    return task.act() == Act.PICK;
  }

  /** The key by which the winter before a first season is one with those after it. */
  String yearlyKey() {
    return key.replace(FIRST_WINTER, "");
  }

  @Override
  public int compareTo(CareAct other) {
    return Comparator.comparingInt((CareAct a) -> a.when().season())
        .thenComparing(a -> a.when().from())
        .thenComparing(a -> a.when().until())
        .thenComparing(CareAct::key)
        .compare(this, other);
  }
}
