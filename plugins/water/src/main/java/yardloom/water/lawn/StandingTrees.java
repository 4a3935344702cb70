package yardloom.water.lawn;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Cited;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.lawn.formula.Aridity;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.formula.NetNeed;
import yardloom.water.need.formula.WaterBudget;

/** Trees that stand already and whose crowns reach over former lawn. */
record StandingTrees(List<Standing> trees) {
  /**
   * One of them.
   *
   * @param ground former lawn under its crown
   */
  record Standing(Element.Tree tree, Area ground) {}

  StandingTrees {
    trees = List.copyOf(trees);
  }

  /** Those of a plan; the lawn's water was theirs too. */
  static StandingTrees of(Plan plan) {
    Shape lawn = LawnCalculator.ground(plan);
    return new StandingTrees(
        plan.all(Element.Tree.class).stream()
            .filter(Element.Tree::stands)
            .filter(t -> t.shape().overlaps(lawn))
            .map(t -> new Standing(t, t.shape().and(lawn).area()))
            .toList());
  }

  /** What they take from the tap, January to December. */
  List<Derived<Volume>> monthly(Facts facts) {
    MonthlyWeather weather = facts.get(MonthlyWeather.KEY);
    Cited<Double> factor = LawnData.trees(isDry(facts.get(YardFacts.CLIMATE), weather));
    List<Derived<Volume>> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(need(factor, weather.referenceEt().get(m), weather.effectiveRain().get(m)));
    }
    return months;
  }

  private Derived<Volume> need(Cited<Double> factor, Derived<Length> et, Derived<Length> rain) {
    Derived.Builder why =
        Derived.by(
                "sum over trees of ground × max(factor × reference ET − effective rain, 0) /"
                    + " efficiency",
                factor.source())
            .from("factor", factor.value())
            .from("reference ET", et)
            .from("effective rain", rain)
            .from("efficiency", WaterBudget.DRIP_EFFICIENCY)
            .from("efficiency source", WaterBudget.EFFICIENCIES.cite());
    Length depth = NetNeed.of(factor.value(), et.value(), rain.value());
    Volume sum = Volume.ZERO;
    for (Standing one : trees) {
      why.from("ground under " + one.tree().id(), one.ground(), one.tree().place());
      sum = sum.plus(one.ground().deep(depth).times(1 / WaterBudget.DRIP_EFFICIENCY));
    }
    return why.gives(sum);
  }

  private static boolean isDry(ClimateNormals climate, MonthlyWeather weather) {
    Length rain =
        climate.months().stream().map(ClimateNormals.Month::rain).reduce(Length.ZERO, Length::plus);
    Length et =
        weather.referenceEt().stream().map(Derived::value).reduce(Length.ZERO, Length::plus);
    return Aridity.isDry(rain, et);
  }
}
