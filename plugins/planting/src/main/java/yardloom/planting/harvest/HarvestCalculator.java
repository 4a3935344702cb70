package yardloom.planting.harvest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import yardloom.facts.Harvest;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.planting.harvest.HarvestPlan.Line;
import yardloom.planting.harvest.HarvestPlan.Range;
import yardloom.planting.harvest.formula.Crowding;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinning;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;

/** Gives the harvest of a year at full bearing, by planting and for the whole plan. */
public final class HarvestCalculator implements Calculator {
  private static final Source RULE =
      Source.commonPractice("rows closer than usual count at their usual distance");
  private static final Source SUM = Source.commonPractice("sum over beds and trees");

  @Override
  public String id() {
    return "planting.harvest";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY, TurnPlan.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(HarvestPlan.KEY, YardFacts.HARVEST);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<Line> lines = new ArrayList<>();
    List<String> tooLate = new ArrayList<>();
    for (Planting p : in.get(PlantPlaces.KEY).plantings()) {
      Optional<Turn> turn = in.get(TurnPlan.KEY).of(p);
      if (turn.filter(t -> !t.inTime()).isPresent()) {
        tooLate.add(p.title() + " in " + p.bed().id().name());
      } else if (!p.at().isEmpty()) {
        Optional<Range<Mass>> mass = PlantYields.of(p.plant()).map(y -> harvest(p, y));
        Optional<Area> ground = Optional.of(p.ground().area());
        boolean stands = p.choice().stands();
        lines.add(new Line(p.bed().id(), p.plant(), p.title(), ground, mass, stands, turn));
      }
    }
    for (Planting.Specimen s : in.get(PlantPlaces.KEY).specimens()) {
      Optional<Range<Mass>> mass = TreeHarvest.of(s);
      boolean stands = s.tree().stands();
      lines.add(
          new Line(
              s.tree().id(),
              s.plant(),
              s.title(),
              Optional.empty(),
              mass,
              stands,
              Optional.empty()));
    }
    HarvestPlan harvest = withArea(lines, tooLate);
    out.give(HarvestPlan.KEY, harvest);
    if (lines.stream().anyMatch(l -> l.mass().isPresent())) {
      out.give(
          YardFacts.HARVEST,
          new Harvest(sum(lines, Range::low), sum(lines, Range::high), harvest.leftOut()));
    }
  }

  private static Range<Mass> harvest(Planting p, Yield yield) {
    Length width = LongAxis.of(p.ground()).width();
    Length usual = p.plant().size().rows().middle();
    // What is planted densely bears its full harvest once it is thinned.
    Thinning.Grown grown = Thinning.grown(p);
    double share = Crowding.share(width, grown.spacing(), grown.rowSpacing(), usual);
    return new Range<>(
        harvest(p, grown, yield, yield.low(), share),
        harvest(p, grown, yield, yield.high(), share));
  }

  private static Derived<Mass> harvest(
      Planting p, Thinning.Grown grown, Yield yield, Mass each, double share) {
    int plants = grown.at().size();
    Derived.Builder why =
        switch (yield.per()) {
          case PLANT ->
              Derived.by("plants × yield of one × share kept", RULE)
                  .from("plants", plants, p.place())
                  .from("yield of one", each);
          case ROW_FOOT ->
              Derived.by("plants × spacing in ft × yield of a foot of row × share kept", RULE)
                  .from("plants", plants, p.place())
                  .from("spacing", grown.spacing(), p.place())
                  .from("yield of a foot of row", each);
          case SQUARE_FOOT ->
              Derived.by("area in sq ft × yield of a square foot", SUM)
                  .from("area", p.ground().area(), p.place())
                  .from("yield of a square foot", each);
        };
    if (yield.per() != Yield.Per.SQUARE_FOOT) {
      why.from("row spacing", grown.rowSpacing(), p.place())
          .from("usual row spacing", p.plant().size().rows().middle())
          .from("share kept", share);
    }
    double count =
        switch (yield.per()) {
          case PLANT -> plants * share;
          case ROW_FOOT -> plants * grown.spacing().feet() * share;
          case SQUARE_FOOT -> p.ground().area().squareFeet();
        };
    return why.from("yields of " + p.plant().name(), yield.cite()).gives(each.times(count));
  }

  private static Derived<Mass> sum(List<Line> lines, Function<Range<Mass>, Derived<Mass>> end) {
    Derived.Builder why = Derived.by("sum over beds and trees", SUM);
    Mass sum = Mass.ZERO;
    for (Line line : lines) {
      if (line.mass().isPresent()) {
        Derived<Mass> one = end.apply(line.mass().get());
        why.from(line.plant().name() + " in " + line.in().name(), one);
        sum = sum.plus(one.value());
      }
    }
    return why.gives(sum);
  }

  private static HarvestPlan withArea(List<Line> lines, List<String> tooLate) {
    List<Line> beds =
        lines.stream().filter(l -> l.ground().isPresent() && l.mass().isPresent()).toList();
    Area area = Area.ZERO;
    for (Line line : beds) {
      // Ground that carries two crops in a year is there once.
      area = line.follows() ? area : area.plus(line.ground().get());
    }
    return new HarvestPlan(
        lines,
        tooLate,
        area,
        beds.isEmpty()
            ? Optional.empty()
            : Optional.of(new Range<>(sum(beds, Range::low), sum(beds, Range::high))));
  }
}
