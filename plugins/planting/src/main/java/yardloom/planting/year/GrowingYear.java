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
 */
public record GrowingYear(Derived<MonthDay> begins, Derived<MonthDay> ends, boolean hasFrost) {
  /** Any year without a leap day. */
  private static final int YEAR = 2021;

  /** Empty where neither frost is known nor a climate without it. */
  public static Optional<GrowingYear> of(Facts facts) {
    return facts
        .find(YardFacts.FROST)
        .map(GrowingYear::by)
        .or(() -> facts.find(YardFacts.WARM_SEASON).map(GrowingYear::by));
  }

  private static GrowingYear by(FrostDates frost) {
    return new GrowingYear(frost.lastOfSpring(), frost.firstOfFall(), true);
  }

  private static GrowingYear by(WarmSeason warm) {
    return new GrowingYear(warm.begins(), warm.ends(), false);
  }

  /** From the day it begins to that on which it ends, over New Year where it does. */
  public int days() {
    LocalDate from = begins.value().atYear(YEAR);
    return (int) (YearDay.next(ends.value(), from).toEpochDay() - from.toEpochDay());
  }

  /** Whether its first frost kills a kind. */
  public boolean kills(Plant plant) {
    return hasFrost && plant.growth().season() == Plant.Season.TENDER_ANNUAL;
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
