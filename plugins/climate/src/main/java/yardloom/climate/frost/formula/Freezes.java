package yardloom.climate.frost.formula;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Last freeze of spring and first of fall in a year of daily minima.
 *
 * <p>24 July separates spring from fall [1]; in the south half a year earlier, and the year runs
 * from July to June. A half year without a freeze gives no date.
 *
 * <p>References: [1] Utah Climate Center, help to the freeze table. [2] classes: light 29 to 32 °F,
 * moderate 25 to 28 °F, severe 24 °F and below (almanac.com, frost and freeze).
 */
public final class Freezes {
  private Freezes() {}

  /** The two dates of a year. */
  public record Dates(Optional<LocalDate> lastOfSpring, Optional<LocalDate> firstOfFall) {}

  /** How hard a freeze is. */
  public enum Strength {
    NONE,
    LIGHT,
    MODERATE,
    SEVERE
  }

  /** The first day of a frost year. */
  public static LocalDate start(int year, boolean south) {
    return LocalDate.of(year, south ? 7 : 1, 1);
  }

  /** The day from which freezes count to fall. */
  private static LocalDate split(int year, boolean south) {
    return south ? LocalDate.of(year + 1, 1, 24) : LocalDate.of(year, 7, 24);
  }

  /** The dates on which the minimum was at or below {@code limitC}. */
  public static Dates of(
      SortedMap<LocalDate, Double> minimumC, int year, boolean south, double limitC) {
    LocalDate split = split(year, south);
    Optional<LocalDate> spring = Optional.empty();
    for (Map.Entry<LocalDate, Double> day :
        minimumC.subMap(start(year, south), start(year + 1, south)).entrySet()) {
      if (day.getValue() <= limitC) {
        if (!day.getKey().isBefore(split)) {
          return new Dates(spring, Optional.of(day.getKey()));
        }
        spring = Optional.of(day.getKey());
      }
    }
    return new Dates(spring, Optional.empty());
  }

  /** The class of a night's minimum in whole degrees Fahrenheit [2]. */
  public static Strength strength(int minimumF) {
    if (minimumF > 32) {
      return Strength.NONE;
    }
    if (minimumF > 28) {
      return Strength.LIGHT;
    }
    return minimumF > 24 ? Strength.MODERATE : Strength.SEVERE;
  }
}
