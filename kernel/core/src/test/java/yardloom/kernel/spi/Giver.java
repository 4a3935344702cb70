package yardloom.kernel.spi;

import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Stands in tests for a plugin that gives facts. */
public record Giver(Set<FactKey<?>> gives, BiConsumer<Plan, Sink> giving) implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("giver", "Giver", "1");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(new Given(gives, giving));
  }

  private record Given(Set<FactKey<?>> gives, BiConsumer<Plan, Sink> giving) implements Calculator {
    @Override
    public String id() {
      return "giver.facts";
    }

    @Override
    public void compute(Plan plan, Facts in, Sink out) {
      giving.accept(plan, out);
    }
  }
}
