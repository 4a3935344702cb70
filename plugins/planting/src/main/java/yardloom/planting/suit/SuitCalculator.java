package yardloom.planting.suit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.WateringValve;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.suit.rule.Candidate;
import yardloom.planting.suit.rule.Household;
import yardloom.planting.suit.rule.Variety;
import yardloom.planting.suit.rule.Yard;

/** Asks every rule about every plant that the plan adds; what stands has shown what it bears. */
public final class SuitCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.suits";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(
        YardFacts.SUN_HOURS,
        YardFacts.HARDINESS,
        YardFacts.WINTER_CHILL,
        YardFacts.CLIMATE,
        YardFacts.FROST,
        YardFacts.SOIL_ACIDITY,
        YardFacts.SOIL,
        YardFacts.WATERING_VALVES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(SuitPlan.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Yard yard = yard(plan, in);
    List<SuitPlan.Line> lines = new ArrayList<>();
    for (Candidate plant : yard.plants()) {
      if (!plant.stands()) {
        lines.add(new SuitPlan.Line(plant, SuitRules.judge(plant, yard)));
      }
    }
    out.give(SuitPlan.KEY, new SuitPlan(yard, lines));
  }

  private static Yard yard(Plan plan, Facts in) {
    Map<ElementId, Integer> valves = new HashMap<>();
    for (WateringValve valve : in.all(YardFacts.WATERING_VALVES)) {
      valve.beds().forEach(bed -> valves.put(bed, valve.number()));
    }
    return new Yard(
        plan,
        candidates(in.get(PlantPlaces.KEY)),
        in.find(YardFacts.SUN_HOURS),
        new Yard.Weather(
            in.find(YardFacts.HARDINESS),
            in.find(YardFacts.WINTER_CHILL),
            in.find(YardFacts.CLIMATE),
            in.find(YardFacts.FROST)),
        new Yard.Ground(in.find(YardFacts.SOIL_ACIDITY), in.find(YardFacts.SOIL)),
        valves,
        plan.attributes().get(Household.KEY));
  }

  private static List<Candidate> candidates(PlantPlaces places) {
    List<Candidate> plants = new ArrayList<>();
    for (Planting p : places.plantings()) {
      if (!p.at().isEmpty()) {
        plants.add(
            new Candidate(
                p.plant(),
                p.bed().id(),
                p.place(),
                p.at(),
                p.plant().size().spread().middle(),
                false,
                p.choice().stands(),
                Variety.of(p.bed(), p.plant().name())));
      }
    }
    for (Planting.Specimen s : places.specimens()) {
      plants.add(
          new Candidate(
              s.plant(),
              s.tree().id(),
              s.place(),
              List.of(s.tree().at()),
              s.width(),
              s.trained().isPresent(),
              s.tree().stands(),
              Variety.of(s.tree(), s.plant().name())));
    }
    return plants;
  }
}
