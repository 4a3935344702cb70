package yardloom.water.balance;

import java.util.List;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.GrossNeed;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.WaterText;
import yardloom.water.roof.WaterSupply;

/**
 * Says when a year's roof water is less than a year's need and nothing else is there to water with:
 * who has a tap on the mains needs no other source.
 */
public final class BalanceCheck implements Check {
  private static final Source SUMS = Source.commonPractice("yearly yield against yearly need");

  @Override
  public String id() {
    return "water.balance";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(WaterDemand.KEY, WaterSupply.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Volume need = GrossNeed.yearly(facts.all(WaterDemand.KEY));
    Volume yield = Volume.ZERO;
    for (var supply : facts.all(WaterSupply.KEY)) {
      yield = yield.plus(sum(supply.monthly()));
    }
    boolean mains =
        plan.all(Element.WaterPoint.class).stream()
            .anyMatch(tap -> tap.source().equalsIgnoreCase("mains"));
    if (mains || yield.litres() == 0 || yield.compareTo(need) >= 0) {
      return List.of();
    }
    return List.of(
        Finding.of(
            id(),
            Severity.NOTE,
            "the roofs yield "
                + WaterText.both(plan, yield)
                + " in an average year, the plants need, by drip, "
                + WaterText.both(plan, need),
            "plan for another source, fewer beds, or plants that ask for less",
            SUMS));
  }

  private static Volume sum(List<Derived<Volume>> months) {
    return months.stream().map(Derived::value).reduce(Volume.ZERO, Volume::plus);
  }
}
