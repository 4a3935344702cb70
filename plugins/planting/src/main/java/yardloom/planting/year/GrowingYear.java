package yardloom.planting.year;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import yardloom.facts.FrostDates;
import yardloom.facts.WarmSeason;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.unit.YearDay;
import yardloom.planting.catalogue.Plant;

/**
 * The days that planting, bloom, picking and care are counted from: the usual last and first frost,
 * where they are known, else the first and the last warm day where frost is no rule of the year.
 *
 * @param begins the last frost of spring, or the first warm day
 * @param ends the first frost of fall, or the last warm day
 * @param warm the first day on which the ground is warm enough for tender plants, which comes long
 *     after the last frost where springs are mild; empty where it is not known
 */
public record GrowingYear(
    Derived<MonthDay> begins,
    Derived<MonthDay> ends,
    boolean hasFrost,
    Optional<Derived<MonthDay>> warm) {
  /** Very tender plants are set out so many days after the last frost at the soonest. */
  static final int VERY_TENDER_DAYS = 14;

  private static final int HALF_A_YEAR = 182;

  /** Any year without a leap day. */
  private static final int YEAR = 2021;

  /** Empty where neither frost is known nor a climate without it. */
  public static Optional<GrowingYear> of(Facts facts) {
    return facts
        .find(YardFacts.FROST)
        .map(frost -> by(frost, facts.find(YardFacts.WARM_SEASON)))
        .or(() -> facts.find(YardFacts.WARM_SEASON).map(GrowingYear::by));
  }

  private static GrowingYear by(FrostDates frost, Optional<WarmSeason> warm) {
    return new GrowingYear(
        frost.lastOfSpring(), frost.firstOfFall(), true, warm.map(WarmSeason::begins));
  }

  private static GrowingYear by(WarmSeason warm) {
    return new GrowingYear(warm.begins(), warm.ends(), false, Optional.of(warm.begins()));
  }

  /** From the day it begins to that on which it is warm enough for tender plants; 0 if by then. */
  public int daysToWarmth() {
    if (warm.isEmpty()) {
      return 0;
    }
    LocalDate from = begins.value().atYear(YEAR);
    int days = (int) (YearDay.next(warm.get().value(), from).toEpochDay() - from.toEpochDay());
    return days > HALF_A_YEAR ? 0 : days;
  }

  /** By how many days a kind is planted later than the frost would allow, for want of warmth. */
  public int waits(Plant plant) {
    if (!isTender(plant)) {
      return 0;
    }
    boolean isVery = plant.growth().window().startsWith("very tender");
    return Math.max(0, daysToWarmth() - (isVery ? VERY_TENDER_DAYS : 0));
  }

  /** Whether a kind waits for warm ground, and dies with the first frost. */
  public static boolean isTender(Plant plant) {
    return plant.growth().season() == Plant.Season.TENDER_ANNUAL;
  }

  /** From the day it begins to that on which it ends, over New Year where it does. */
  public int days() {
    LocalDate from = begins.value().atYear(YEAR);
    return (int) (YearDay.next(ends.value(), from).toEpochDay() - from.toEpochDay());
  }

  /** Whether its first frost kills a kind. */
  public boolean kills(Plant plant) {
    return hasFrost && isTender(plant);
  }

  /** How tables call the day it begins. */
  public String beginning() {
    return hasFrost ? "last frost of spring" : "first warm day";
  }

  /** How tables call the day it ends. */
  public String ending() {
    return hasFrost ? "first frost of fall" : "last warm day";
  }
}
