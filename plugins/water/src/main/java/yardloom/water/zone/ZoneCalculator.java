package yardloom.water.zone;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.WateringValve;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.water.drip.DripBill;
import yardloom.water.drip.DripJobs;
import yardloom.water.drip.DripRun;
import yardloom.water.need.WaterDemand;
import yardloom.water.timetable.PeakWatering;
import yardloom.water.zone.formula.Zoning;

/** Groups beds with dripline into zones that the supply can feed, and bills what it all takes. */
public final class ZoneCalculator implements Calculator {
  /** What half-inch line carries. */
  private static final Flow HALF_INCH_LINE = Flow.gallonsPerHour(200);

  private static final Source RULE =
      Source.memory("Rule of thumb: half-inch line carries 200 gph", "drip handbooks", 0, "");
  private static final Source PACKING =
      Source.commonPractice("beds of like need share a valve as far as the supply allows");

  @Override
  public String id() {
    return "water.zones";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(DripRun.KEY, WaterDemand.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(Zone.KEY, YardFacts.WATERING_VALVES, YardFacts.BILL, YardFacts.JOBS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<WaterDemand> demands = in.all(WaterDemand.KEY);
    Map<String, DripRun> runs = new LinkedHashMap<>();
    Map<String, PeakWatering> peaks = new LinkedHashMap<>();
    List<Zoning.Load> loads = new ArrayList<>();
    for (DripRun run : in.all(DripRun.KEY)) {
      String name = run.bed().name();
      Optional<PeakWatering> peak = PeakWatering.of(run, demands);
      runs.put(name, run);
      peak.ifPresent(p -> peaks.put(name, p));
      double hours = peak.map(p -> p.weekly().value().hours()).orElse(0.0);
      loads.add(new Zoning.Load(name, run.flow().value().litresPerHour(), hours));
    }
    Derived<Flow> limit = limit(plan);
    int number = 0;
    for (List<Zoning.Load> group : Zoning.zones(loads, limit.value().litresPerHour())) {
      number++;
      Derived.Builder why = Derived.by("sum over beds", PACKING);
      Flow flow = Flow.ZERO;
      for (Zoning.Load load : group) {
        flow = flow.plus(runs.get(load.name()).flow().value());
        why.from("flow of " + load.name(), runs.get(load.name()).flow());
      }
      List<ElementId> beds = group.stream().map(l -> runs.get(l.name()).bed()).toList();
      out.give(YardFacts.WATERING_VALVES, new WateringValve(number, beds));
      out.give(
          Zone.KEY,
          new Zone(
              number,
              beds,
              why.gives(flow),
              limit,
              Optional.ofNullable(peaks.get(group.get(0).name())).map(PeakWatering::weekly)));
    }
    List<BillLine> bill = DripBill.of(plan, in.all(DripRun.KEY), number);
    bill.forEach(line -> out.give(YardFacts.BILL, line));
    DripJobs.of(bill).forEach(job -> out.give(YardFacts.JOBS, job));
  }

  private static Derived<Flow> limit(Plan plan) {
    List<Entry<Flow>> given = plan.attributes().all(Zone.SUPPLY);
    return given.isEmpty()
        ? Derived.by("no supply is given; half-inch line", RULE).gives(HALF_INCH_LINE)
        : Derived.given(given.get(0).value(), "supply", given.get(0).place());
  }
}
