package yardloom.planting.turn;

import java.time.LocalDate;
import java.util.Optional;
import yardloom.kernel.unit.Months;
import yardloom.planting.placing.Planting;

/**
 * One crop of a ground that carries several in a year. Days are of any year without a leap day, the
 * first crop planted in the first of them.
 *
 * @param planted its first day
 * @param over the first day on which its ground is free again
 * @param latest the last day on which it may be planted so that all after it are in time
 * @param picked first and last day of picking; empty where its kind has no known season
 * @param laterDays days by which it is planted later than its kind usually is first
 * @param cropDays what its crop takes if nothing ends it sooner
 * @param watered the days from planting in which it is the only one of the year's crops there: a
 *     crop that stands over winter gives way in the table of a year to the first
 * @param inTime whether it is over before frost and before the first comes again
 */
public record Turn(
    Planting planting,
    LocalDate planted,
    LocalDate over,
    LocalDate latest,
    Optional<Picked> picked,
    int laterDays,
    int cropDays,
    int watered,
    boolean inTime) {
  /** Both ends included. */
  public record Picked(LocalDate from, LocalDate until) {}

  /** How many days it keeps its ground. */
  public int stands() {
    return (int) (over.toEpochDay() - planted.toEpochDay());
  }

  /** Whether it goes before it was to be over. */
  public boolean isEndedEarly() {
    return over.isBefore(planted.plusDays(cropDays));
  }

  /** Whether it is planted in fall and picked in the year after. */
  public boolean isPickedNextYear() {
    return picked.filter(p -> p.from().getYear() > planted.getYear()).isPresent();
  }

  /** From the month in which it is planted to that in which it is over, such as Mar–Jul. */
  public String months() {
    return Months.name(planted.getMonth()) + "–" + Months.name(over.minusDays(1).getMonth());
  }

  public boolean isFirst() {
    return planting.follows().isEmpty();
  }
}
