package yardloom.soil.lab;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilAcidity;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives the pH that the soil test found and the one that is wanted; nothing without a test. */
public final class AcidityCalculator implements Calculator {
  @Override
  public String id() {
    return "soil.acidity";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SOIL_ACIDITY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<SoilTest> test = plan.attributes().get(SoilTest.KEY);
    if (test.isPresent() && test.get().acidity().ph().isPresent()) {
      Optional<Double> wanted =
          test.get().acidity().wanted().isPresent()
              ? Optional.of(test.get().acidity().wanted().getAsDouble())
              : Optional.empty();
      out.give(
          YardFacts.SOIL_ACIDITY,
          new SoilAcidity(
              Derived.given(
                  test.get().acidity().ph().getAsDouble(), "pH found", test.get().place()),
              wanted));
    }
  }
}
