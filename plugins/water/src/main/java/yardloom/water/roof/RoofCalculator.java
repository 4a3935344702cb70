package yardloom.water.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;
import yardloom.water.roof.formula.RainYield;

/** Gives what each roof sheds by month. */
public final class RoofCalculator implements Calculator {
  private static final Source YIELD =
      Source.computed("Rainwater harvesting", "Texas A&M AgriLife Extension", 2023, "");

  @Override
  public String id() {
    return "water.roof";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(WaterSupply.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    ClimateNormals climate = in.get(YardFacts.CLIMATE);
    for (Element.Roof roof : plan.all(Element.Roof.class)) {
      Cited<Double> share = RoofShares.of(plan, roof);
      List<Derived<Volume>> months = new ArrayList<>();
      for (ClimateNormals.Month month : climate.months()) {
        months.add(
            Derived.by("plan area × rain × share", YIELD)
                .from("plan area", roof.shape().area(), roof.place())
                .from("rain", month.rain())
                .from("rain source", climate.source().cite())
                .from("share of " + roof.surface(), share.value(), roof.place())
                .from("share source", share.source().cite())
                .gives(RainYield.of(roof.shape().area(), month.rain(), share.value())));
      }
      out.give(WaterSupply.KEY, new WaterSupply(roof.id(), months));
    }
  }
}
