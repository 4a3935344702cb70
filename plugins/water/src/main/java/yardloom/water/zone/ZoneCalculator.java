package yardloom.water.zone;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.SunHours;
import yardloom.facts.WateringValve;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.water.drip.DripRun;
import yardloom.water.head.HeadAssembly;
import yardloom.water.head.Supply;
import yardloom.water.need.WaterDemand;
import yardloom.water.zone.formula.Zoning;

/** Groups beds with dripline into zones that the supply can feed. */
public final class ZoneCalculator implements Calculator {
  private static final Source PACKING =
      Source.commonPractice("beds of like need share a valve as far as the supply allows");
  private static final Source GIVEN = Source.plan("watering zones of the plan");
  private static final Source SET = Source.commonPractice("what the head assembly lets through");

  @Override
  public String id() {
    return "water.zones";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(DripRun.KEY, WaterDemand.KEY, YardFacts.SUN_HOURS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(Zone.KEY, YardFacts.WATERING_VALVES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Map<String, DripRun> runs = new LinkedHashMap<>();
    Map<String, Derived<Flow>> flows = new LinkedHashMap<>();
    List<Zoning.Load> loads = new ArrayList<>();
    Derived<Pressure> at = pressure(plan);
    Optional<SunHours> sun = in.find(YardFacts.SUN_HOURS);
    for (DripRun run : in.all(DripRun.KEY)) {
      String name = run.bed().toString();
      runs.put(name, run);
      flows.put(name, run.flowAt(at));
      double hours = PeakNeed.hours(run, in.all(WaterDemand.KEY));
      double flow = flows.get(name).value().litresPerHour();
      loads.add(new Zoning.Load(name, flow, hours, light(sun, run.bed())));
    }
    Derived<Flow> limit = Supply.limit(plan);
    int number = 0;
    List<List<Zoning.Load>> groups = byHand(plan, loads, runs);
    int given = groups.size();
    List<Zoning.Load> rest = new ArrayList<>(loads);
    groups.forEach(rest::removeAll);
    groups.addAll(Zoning.zones(rest, limit.value().litresPerHour()));
    for (List<Zoning.Load> group : groups) {
      number++;
      Derived.Builder why = Derived.by("sum over beds", number <= given ? GIVEN : PACKING);
      Flow flow = Flow.ZERO;
      for (Zoning.Load load : group) {
        flow = flow.plus(flows.get(load.name()).value());
        why.from("flow of " + runs.get(load.name()).bed().name(), flows.get(load.name()));
      }
      List<ElementId> beds = group.stream().map(l -> runs.get(l.name()).bed()).toList();
      out.give(YardFacts.WATERING_VALVES, new WateringValve(number, beds));
      out.give(Zone.KEY, new Zone(number, light(group), beds, why.gives(flow), limit));
    }
  }

  /** The zones that the plan makes, those without any dripline left out. */
  private static List<List<Zoning.Load>> byHand(
      Plan plan, List<Zoning.Load> loads, Map<String, DripRun> runs) {
    List<List<Zoning.Load>> groups = new ArrayList<>();
    for (Attributes.Entry<HandZone> zone : plan.attributes().all(HandZone.KEY)) {
      List<Zoning.Load> group =
          loads.stream()
              .filter(l -> zone.value().names().contains(runs.get(l.name()).bed().name()))
              .toList();
      if (!group.isEmpty()) {
        groups.add(group);
      }
    }
    return groups;
  }

  /** That of all its beds; nothing where they differ, as in a zone made by hand they may. */
  private static String light(List<Zoning.Load> group) {
    String first = group.get(0).light();
    return group.stream().allMatch(l -> l.light().equals(first)) ? first : "";
  }

  /** What stands behind the head assembly while nothing runs: no zone takes more than at that. */
  private static Derived<Pressure> pressure(Plan plan) {
    boolean isTank = Supply.isTank(plan);
    HeadAssembly head = HeadAssembly.of(plan);
    Pressure still = head.behind(Supply.most(plan), Flow.ZERO, isTank);
    return Derived.by("pressure behind the head assembly", SET).gives(still);
  }

  private static String light(Optional<SunHours> sun, ElementId bed) {
    return sun.flatMap(s -> s.of(bed)).map(SunHours.Place::lightClass).orElse("");
  }
}
