package yardloom.climate.weather;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives the rain by the day that the plan states. */
public final class DailyRainCalculator implements Calculator {
  @Override
  public String id() {
    return "climate.daily-rain";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.DAILY_RAIN);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.attributes()
        .get(RainWords.DAILY_RAIN)
        .ifPresent(rain -> out.give(YardFacts.DAILY_RAIN, rain));
  }
}
