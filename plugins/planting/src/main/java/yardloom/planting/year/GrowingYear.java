package yardloom.planting.year;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.year.formula.WarmMonths;

/**
 * The days that planting, bloom, picking and care are counted from: the usual last and first frost,
 * where they are known. Where nobody says them and the nights of the coldest month are mild, frost
 * is no rule of the year: it then begins on the day on which the mean passes what tender plants ask
 * of the ground, and ends on the day on which it falls below.
 *
 * <p>References: [1] a garden's page on when to plant tomatoes and peppers: they need ground of at
 * least 55 °F (13 °C), read; that ground is about as warm as the mean of the day is common
 * practice.
 *
 * @param begins the last frost of spring, or the first warm day
 * @param ends the first frost of fall, or the last warm day
 */
public record GrowingYear(Derived<MonthDay> begins, Derived<MonthDay> ends, boolean hasFrost) {
  /** Ground that tender plants ask for [1]. */
  public static final Temperature WARM = Temperature.fahrenheit(55);

  /** Nights of the coldest month from which on frost is no rule of the year; from memory. */
  private static final Temperature MILD_NIGHT = Temperature.celsius(7);

  private static final Source GROUND =
      Source.read(
          "Page on when to plant tomatoes and peppers",
          "a demonstration garden",
          2011,
          "soil temperature");

  /** Empty where neither frost is known nor the climate without it. */
  public static Optional<GrowingYear> of(Facts facts) {
    return facts
        .find(YardFacts.FROST)
        .map(GrowingYear::by)
        .or(() -> facts.find(YardFacts.CLIMATE).flatMap(GrowingYear::without));
  }

  private static GrowingYear by(FrostDates frost) {
    return new GrowingYear(frost.lastOfSpring(), frost.firstOfFall(), true);
  }

  private static Optional<GrowingYear> without(ClimateNormals climate) {
    Optional<Temperature> coldest =
        climate.months().stream()
            .flatMap(m -> m.dailyMin().stream())
            .min(Comparator.naturalOrder());
    if (coldest.filter(t -> t.compareTo(MILD_NIGHT) >= 0).isEmpty()) {
      return Optional.empty();
    }
    List<Double> means = new ArrayList<>();
    climate.months().forEach(m -> means.add(m.mean().celsius()));
    return WarmMonths.of(means, WARM.celsius())
        .map(
            warm ->
                new GrowingYear(
                    day(warm.from(), "up", climate), day(warm.until(), "down", climate), false));
  }

  private static Derived<MonthDay> day(
      WarmMonths.Edge edge, String rounded, ClimateNormals climate) {
    if (edge.daysOn() == 0) {
      return Derived.by("middle of the month beside the coldest", GROUND)
          .from("middle of the month beside the coldest", edge.middle())
          .gives(edge.day());
    }
    return Derived.by(
            "middle + days × (warm − mean) / (mean after − mean), rounded " + rounded, GROUND)
        .from("middle", edge.middle())
        .from("days, to the middle of the next month", edge.daysOn())
        .from("warm", WARM)
        .from("mean, of its month", climate.months().get(edge.month()).mean())
        .from("mean after, of the next month", climate.months().get((edge.month() + 1) % 12).mean())
        .gives(edge.day());
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
