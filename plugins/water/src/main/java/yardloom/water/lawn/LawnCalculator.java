package yardloom.water.lawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.LawnWater;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.GrossNeed;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.formula.NetNeed;
import yardloom.water.need.formula.WaterBudget;

/** Gives the water that the watered lawn took, beside what the garden takes; none without one. */
public final class LawnCalculator implements Calculator {
  private static final Source GROUND =
      Source.commonPractice("beds and paths lie where the lawn was");

  @Override
  public String id() {
    return "water.lawn";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.CLIMATE, MonthlyWeather.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(WaterDemand.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.LAWN_WATER);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Attributes.Entry<FormerLawn> lawn : plan.attributes().all(FormerLawn.KEY)) {
      Derived<Area> ground =
          Derived.by(
                  plan.all(Element.MulchedGround.class).isEmpty()
                      ? "area of beds and paths together, overlaps once"
                      : "area of beds, paths and mulched ground together, overlaps once",
                  GROUND)
              .gives(ground(plan).area());
      out.give(
          YardFacts.LAWN_WATER,
          new LawnWater(
              ground,
              lawn(lawn, ground, in),
              GrossNeed.monthly(in.all(WaterDemand.KEY)),
              StandingTrees.of(plan).monthly(in)));
    }
  }

  /** Beds, paths and ground mulched whole together. */
  static Shape ground(Plan plan) {
    List<Shape> shapes = new ArrayList<>();
    plan.all(Element.Bed.class).forEach(b -> shapes.add(b.shape()));
    plan.all(Element.Path.class).forEach(p -> shapes.add(p.shape()));
    plan.all(Element.MulchedGround.class).forEach(g -> shapes.add(g.shape()));
    return Shape.union(shapes);
  }

  private static List<Derived<Volume>> lawn(
      Attributes.Entry<FormerLawn> lawn, Derived<Area> ground, Facts in) {
    Cited<LawnData.Grass> turf = LawnData.turf(lawn.value().turf());
    List<Double> kc =
        turf.value()
            .year()
            .monthly(
                in.get(YardFacts.CLIMATE).months().stream()
                    .map(ClimateNormals.Month::mean)
                    .toList());
    MonthlyWeather weather = in.get(MonthlyWeather.KEY);
    Optional<Double> given = lawn.value().efficiency();
    double efficiency = given.orElse(WaterBudget.SPRAY_EFFICIENCY);
    List<Derived<Volume>> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      Length et = weather.referenceEt().get(m).value();
      Length rain = weather.effectiveRain().get(m).value();
      Volume need = ground.value().deep(NetNeed.of(kc.get(m), et, rain));
      months.add(
          Derived.by(
                  "area × max(Kc × reference ET − effective rain, 0) / efficiency", turf.source())
              .from("area", ground)
              .from("Kc", kc.get(m))
              .from("reference ET", weather.referenceEt().get(m))
              .from("effective rain", weather.effectiveRain().get(m))
              .from("efficiency", efficiency, lawn.place())
              .from(
                  "efficiency source",
                  given.isPresent() ? "given in the plan" : WaterBudget.EFFICIENCIES.cite())
              .gives(need.times(1 / efficiency)));
    }
    return months;
  }
}
