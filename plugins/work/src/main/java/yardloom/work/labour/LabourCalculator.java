package yardloom.work.labour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.LawnEdge;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchTotals;
import yardloom.facts.mulch.Surface;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.facts.work.Haul;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Unit;

/** Gives the hours of every task from the plan's own quantities. */
public final class LabourCalculator implements Calculator {
  private static final Source WALK =
      Source.memory(
          "A loaded barrow goes 2 to 4 km/h; each percent of slope costs 5 % more time",
          "recalled from practice", 0, "");
  private static final Spread METRES_PER_HOUR =
      new Spread(2000, 3000, 4000, "pace of barrows", WALK);
  private static final double SLOPE_COST = 5;

  @Override
  public String id() {
    return "work.labour";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.SURFACES, YardFacts.HAULS, YardFacts.BILL, YardFacts.STANDS);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.MULCH_TOTALS, YardFacts.REGION, YardFacts.LAWN_EDGE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(TaskLoad.FACT, YardFacts.LOCAL_RATES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<Surface> surfaces = in.all(YardFacts.SURFACES);
    plan.attributes().all(LabourRates.KEY).forEach(e -> out.give(YardFacts.LOCAL_RATES, e.value()));
    Optional<MulchTotals> totals = in.find(YardFacts.MULCH_TOTALS);
    if (surfaces.isEmpty() || totals.isEmpty()) {
      return;
    }
    LabourRates local = LabourRates.of(plan, in.find(YardFacts.REGION));
    List<TaskLoad> tasks = new ArrayList<>();
    Derived<Area> ground = totals.get().ground();
    tasks.add(task(local, "stake out", WorkPhase.STAKE, ground));
    tasks.add(task(local, "mow low and water", WorkPhase.MOW, ground));
    tasks.add(task(local, "cut edge", WorkPhase.EDGE, edges(in, surfaces)));
    tasks.add(task(local, "lay cardboard", WorkPhase.SHEET, totals.get().sheeted()));
    tasks.add(task(local, "load and spread mulch", WorkPhase.SHEET, totals.get().chips()));
    tasks.add(task(local, "load and spread mulch", WorkPhase.COMPOST, totals.get().compost()));
    tasks.add(task(local, "plant", WorkPhase.PLANT, plants(in.all(YardFacts.STANDS))));
    tasks.add(task(local, "sow", WorkPhase.PLANT, drills(in.all(YardFacts.STANDS))));
    tasks.add(task(local, "lay drip line", WorkPhase.DRIP, drip(in.all(YardFacts.BILL))));
    tasks.stream()
        .filter(t -> t.high().value().hours() > 0)
        .forEach(t -> out.give(TaskLoad.FACT, t));
    walks(plan, in.all(YardFacts.HAULS), out);
  }

  private static Derived<Length> edges(Facts in, List<Surface> surfaces) {
    Optional<LawnEdge> edge = in.find(YardFacts.LAWN_EDGE);
    if (edge.isPresent()) {
      return edge.get().length();
    }
    Shape all = Shape.union(surfaces.stream().map(Surface::shape).toList());
    return Derived.by("outer and inner edge of all surfaces together", Source.plan("outlines"))
        .gives(all.perimeter());
  }

  private static Derived<Integer> plants(List<Stand> stands) {
    Derived.Builder why = Derived.by("sum over beds", Source.plan("planting"));
    int count = 0;
    for (Stand s : stands) {
      if (s.drills().isEmpty() && !s.stands()) {
        why.from(s.plant() + " in " + s.in(), s.at().size(), s.place());
        count += s.at().size();
      }
    }
    return why.gives(count);
  }

  private static Derived<Length> drills(List<Stand> stands) {
    Derived.Builder why = Derived.by("sum over beds", Source.plan("planting"));
    Length sum = Length.ZERO;
    for (Stand s : stands) {
      if (s.drills().isPresent() && !s.stands()) {
        why.from(s.plant() + " in " + s.in(), s.drills().get(), s.place());
        sum = sum.plus(s.drills().get());
      }
    }
    return why.gives(sum);
  }

  private static Derived<Length> drip(List<BillLine> bill) {
    Derived.Builder why = Derived.by("sum over the irrigation bill", Source.plan("irrigation"));
    Length sum = Length.ZERO;
    for (BillLine line : bill) {
      if (line.phase() == WorkPhase.DRIP && line.exact().value() instanceof Length length) {
        why.from(line.item(), line.exact());
        sum = sum.plus(length);
      }
    }
    return why.gives(sum);
  }

  private static TaskLoad task(LabourRates local, String task, WorkPhase phase, Derived<?> amount) {
    LocalRate rate = local.of(task);
    Spread perUnit = rate.value();
    String unit = rate.unit();
    double units =
        unit.equals(LocalRate.PIECE)
            ? ((Number) amount.value()).doubleValue()
            : ((Quantity<?>) amount.value()).in(Unit.byWord(unit).orElseThrow());
    return new TaskLoad(
        task,
        phase,
        amount,
        hours(amount, unit, units, perUnit.low(), perUnit),
        hours(amount, unit, units, perUnit.likely(), perUnit),
        hours(amount, unit, units, perUnit.high(), perUnit));
  }

  private static Derived<TimeSpan> hours(
      Derived<?> amount, String unit, double units, double perUnit, Spread data) {
    String in =
        unit.equals(LocalRate.PIECE) ? "" : " in " + Unit.byWord(unit).orElseThrow().symbol();
    return Derived.by("hours = amount" + in + " × hours per " + unit, data.source())
        .from("amount", amount)
        .from("hours per " + unit, perUnit)
        .gives(TimeSpan.hours(units * perUnit));
  }

  private static void walks(Plan plan, List<Haul> hauls, Sink out) {
    WorkSettings work = WorkSettings.of(plan);
    double slower = 1 + SLOPE_COST * Math.abs(work.slope());
    for (Material material : List.of(Material.COMPOST, Material.WOOD_CHIPS)) {
      Derived.Builder why = Derived.by("sum over surfaces", WALK);
      Length sum = Length.ZERO;
      for (Haul haul : hauls) {
        if (haul.material() == material) {
          why.from("to " + haul.to().title(), haul.walk());
          sum = sum.plus(haul.walk().value());
        }
      }
      if (sum.metres() > 0) {
        Derived<Length> walk = why.gives(sum);
        out.give(
            TaskLoad.FACT,
            new TaskLoad(
                "walk with barrows, " + material.title(),
                material == Material.COMPOST ? WorkPhase.COMPOST : WorkPhase.SHEET,
                walk,
                walking(walk, METRES_PER_HOUR.high(), slower),
                walking(walk, METRES_PER_HOUR.likely(), slower),
                walking(walk, METRES_PER_HOUR.low(), slower)));
      }
    }
  }

  private static Derived<TimeSpan> walking(
      Derived<Length> walk, double metresPerHour, double slower) {
    return Derived.by("hours = walk in m / pace × factor of slope", WALK)
        .from("walk", walk)
        .from("pace, metres per hour", metresPerHour)
        .from("factor of slope", slower)
        .gives(TimeSpan.hours(walk.value().metres() / metresPerHour * slower));
  }
}
