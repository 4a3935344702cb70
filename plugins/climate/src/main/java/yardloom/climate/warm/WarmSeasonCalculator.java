package yardloom.climate.warm;

import java.time.MonthDay;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import yardloom.climate.warm.formula.WarmMonths;
import yardloom.facts.ClimateNormals;
import yardloom.facts.WarmSeason;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;

/**
 * Gives the warm part of the year: from the day on which the mean passes what tender plants ask of
 * the ground to that on which it falls below. Nothing where it never gets so warm, nor where nobody
 * says frost although the nights of the coldest month are not so mild that frost is no rule.
 *
 * <p>References: [1] a garden's page on when to plant tomatoes and peppers: they need ground of at
 * least 55 °F (13 °C), read; that ground is about as warm as the mean of the day is common
 * practice.
 */
public final class WarmSeasonCalculator implements Calculator {
  /** Ground that tender plants ask for [1]. */
  private static final Temperature WARM = Temperature.fahrenheit(55);

  /** Nights of the coldest month from which on frost is no rule of the year; from memory. */
  private static final Temperature MILD_NIGHT = Temperature.celsius(7);

  private static final Source GROUND =
      Source.read(
          "Page on when to plant tomatoes and peppers",
          "a demonstration garden",
          2011,
          "soil temperature");

  @Override
  public String id() {
    return "climate.warm-season";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.WARM_SEASON);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    ClimateNormals climate = in.get(YardFacts.CLIMATE);
    if (in.find(YardFacts.FROST).isPresent() || isMild(climate)) {
      warm(climate).ifPresent(warm -> out.give(YardFacts.WARM_SEASON, warm));
    }
  }

  private static boolean isMild(ClimateNormals climate) {
    return climate.months().stream()
        .flatMap(m -> m.dailyMin().stream())
        .min(Comparator.naturalOrder())
        .filter(t -> t.compareTo(MILD_NIGHT) >= 0)
        .isPresent();
  }

  private static Optional<WarmSeason> warm(ClimateNormals climate) {
    return WarmMonths.of(climate.meansC(), WARM.celsius())
        .map(
            warm ->
                new WarmSeason(
                    day(warm.from(), "up", climate), day(warm.until(), "down", climate), WARM));
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
}
