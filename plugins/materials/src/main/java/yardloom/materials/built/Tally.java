package yardloom.materials.built;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Carry;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.materials.takeoff.Ordering;

/** Gives the lines and jobs of one thing that is built. */
final class Tally {
  private static final Source CUTS =
      Source.commonPractice("a tenth more for cuts, splits and breakage");
  private static final Source PACKING = Source.commonPractice("a fifth more, loose");
  private static final double SPARE = 0.1;
  private static final double PACKED = 0.2;

  private final Sink out;
  private final Optional<ElementId> of;
  private final UnitSystem units;
  private final Loose loose;

  Tally(Sink out, Optional<ElementId> of, UnitSystem units, Loose loose) {
    this.loose = loose;
    this.out = out;
    this.of = of;
    this.units = units;
  }

  UnitSystem units() {
    return units;
  }

  void job(WorkTask task, Derived<?> amount) {
    job(task, WorkPhase.BUILD, amount);
  }

  void job(WorkTask task, WorkPhase phase, Derived<?> amount) {
    out.give(YardFacts.JOBS, new Job(task, phase, amount, of, Optional.empty()));
  }

  /** Bought as counted. */
  void pieces(String item, Derived<Integer> exact) {
    line(BillGroup.BUILT, WorkPhase.BUILD, item, exact, exact, "no spares included");
  }

  /** With a tenth for cuts. */
  void cut(String item, Derived<Integer> exact) {
    Derived<Double> spare = Derived.by("typical of what is cut", CUTS).gives(SPARE);
    line(
        BillGroup.BUILT,
        WorkPhase.BUILD,
        item,
        exact,
        Ordering.pieces(exact, spare),
        Say.percent(SPARE) + " for cuts");
  }

  /** Of a roll, with a tenth for ends and laps. */
  void length(String item, Derived<Length> exact) {
    line(BillGroup.BUILT, WorkPhase.BUILD, item, exact, more(exact), "a tenth for ends and laps");
  }

  private static <Q extends Quantity<Q>> Derived<Q> more(Derived<Q> exact) {
    return Derived.by("exact × 1.1", CUTS)
        .from("exact", exact)
        .gives(exact.value().times(1 + SPARE));
  }

  /** By the area, with a tenth for cuts. */
  void area(String item, Derived<Area> exact) {
    line(
        BillGroup.BUILT,
        WorkPhase.BUILD,
        item,
        exact,
        more(exact),
        Say.percent(SPARE) + " for cuts");
  }

  /** Rock, sand and gravel, which pack; what is of one kind is ordered together. */
  void bulk(String item, Element on, Derived<Volume> exact) {
    loose.add(item, of, exact);
    job(WorkTask.PLACE_ROCK, exact);
    out.give(
        YardFacts.CARRIES,
        new Carry(on.id().title(), on.shape(), item, WorkPhase.BUILD, loose(exact)));
  }

  private static Derived<Volume> loose(Derived<Volume> exact) {
    return Derived.by("volume in place × 1.2", PACKING)
        .from("volume in place", exact)
        .gives(exact.value().times(1 + PACKED));
  }

  /** Bulk by item, for all that is built: rounding up belongs to the truck, not to the wall. */
  static final class Loose {
    private final Map<String, Derived.Builder> why = new TreeMap<>();
    private final Map<String, Volume> sums = new TreeMap<>();

    private void add(String item, Optional<ElementId> of, Derived<Volume> exact) {
      why.computeIfAbsent(item, i -> Derived.by("sum over what is built", PACKING))
          .from(of.map(ElementId::toString).orElse(item), exact);
      sums.merge(item, exact.value(), Volume::plus);
    }

    /** One line for each item. */
    void give(Sink out, UnitSystem units) {
      Tally all = new Tally(out, Optional.empty(), units, this);
      sums.forEach(
          (item, sum) -> {
            Derived<Volume> exact = why.get(item).gives(sum);
            all.line(
                BillGroup.BUILT,
                WorkPhase.BUILD,
                item,
                exact,
                all.ordered(exact, PACKED, PACKING),
                Say.percent(PACKED) + " for packing");
          });
    }
  }

  /** Concrete, which is spilt. */
  void concrete(String item, Derived<Volume> exact) {
    line(
        BillGroup.BUILT,
        WorkPhase.BUILD,
        item,
        exact,
        ordered(exact, SPARE, CUTS),
        Say.percent(SPARE) + " for uneven ground and spills");
  }

  private Derived<Volume> ordered(Derived<Volume> exact, double share, Source why) {
    Derived<Double> more = Derived.by("typical of what is loose", why).gives(share);
    return Ordering.bulk(exact, more, units);
  }

  void line(
      BillGroup group,
      WorkPhase phase,
      String item,
      Derived<?> exact,
      Derived<?> order,
      String allowance) {
    out.give(
        YardFacts.BILL,
        new BillLine(group, phase, item, of, Optional.empty(), exact, order, allowance));
  }
}
