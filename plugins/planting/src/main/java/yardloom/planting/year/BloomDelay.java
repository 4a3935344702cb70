package yardloom.planting.year;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.planting.care.formula.WarmDay;

/**
 * By how many days what blooms and ripens on lasting plants comes later than the last frost says:
 * near the sea frost ends long before it is warm enough to bloom. 0 where it is warm by then, where
 * no month is cold, or where the temperatures are not known.
 *
 * <p>References: trees bloom some ten days after the mean passes 10 °C (50 °F), common practice;
 * held against Washington State's typical crop ripening dates.
 */
public final class BloomDelay {
  /** From the first warm day to bloom: common practice. */
  static final int BLOOM_DAYS = 10;

  /** A year without a leap day. */
  private static final int YEAR = 2021;

  /** The warm day of a later season lies before the frost of this one. */
  private static final int LONGEST = 120;

  private BloomDelay() {}

  /**
   * @param begins the usual last frost, or the first warm day where there is none
   */
  public static int days(MonthDay begins, Optional<ClimateNormals> climate) {
    Optional<MonthDay> warm = climate.map(ClimateNormals::meansC).flatMap(WarmDay::of);
    if (warm.isEmpty()) {
      return 0;
    }
    LocalDate from = begins.atYear(YEAR);
    LocalDate day = warm.get().atYear(YEAR);
    LocalDate next = day.isBefore(from.minusDays(LONGEST)) ? day.plusYears(1) : day;
    long days = next.plusDays(BLOOM_DAYS).toEpochDay() - from.toEpochDay();
    return days > LONGEST ? 0 : (int) Math.max(0, days);
  }
}
