package yardloom.materials.goods;

import java.util.Optional;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Carry;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.goods.formula.Pavers;
import yardloom.materials.takeoff.Ordering;

/** Gives what a field of pavers takes: pieces, sand, gravel, and the work of each. */
final class PaverWork {
  private static final double PACKED = 0.2;
  private static final Source LOOSE = Source.commonPractice("a fifth more, loose");

  private PaverWork() {}

  static void of(Plan plan, PaverField field, Sink out) {
    Area ground = field.shape().area();
    Derived<Integer> exact =
        Derived.by("pavers = area / (length × width), rounded up", Pavers.SOURCE)
            .from("area", ground, field.place())
            .from("length", field.length(), field.place())
            .from("width", field.width(), field.place())
            .gives(Pavers.order(ground, field.length(), field.width(), 0));
    Derived<Integer> order =
        Derived.by("pavers × (1 + waste), rounded up", Pavers.SOURCE)
            .from("pavers", exact)
            .from("waste", field.waste(), field.place())
            .gives(Pavers.order(ground, field.length(), field.width(), field.waste()));
    paving(plan, out, "pavers, " + field.name(), field, exact, order, "cuts and breakage");
    Derived<Area> area = Derived.given(ground, "paved ground", field.place());
    out.give(YardFacts.JOBS, new Job(WorkTask.GRADE_BASE, WorkPhase.BUILD, area));
    out.give(YardFacts.JOBS, new Job(WorkTask.LAY_PAVERS, WorkPhase.BUILD, area));
    Length deep = field.thickness().plus(Pavers.BEDDING).plus(field.base());
    Derived<Volume> earth =
        Derived.by("area × (paver + bedding + base)", Pavers.SOURCE)
            .from("area", area)
            .from("paver", field.thickness(), field.place())
            .from("bedding", Pavers.BEDDING)
            .from("base", field.base())
            .gives(ground.deep(deep));
    out.give(YardFacts.JOBS, new Job(WorkTask.DIG_EARTH, WorkPhase.EARTH, earth));
    layer(plan, out, "bedding sand, " + field.name(), ground, Pavers.BEDDING, field);
    layer(plan, out, "gravel base, " + field.name(), ground, field.base(), field);
  }

  private static void layer(
      Plan plan, Sink out, String item, Area ground, Length depth, PaverField field) {
    Derived<Volume> exact =
        Derived.by("compacted volume = area × depth", Pavers.SOURCE)
            .from("area", ground, field.place())
            .from("depth", depth)
            .gives(ground.deep(depth));
    out.give(YardFacts.JOBS, new Job(WorkTask.PLACE_ROCK, WorkPhase.BUILD, exact));
    Derived<Volume> loose =
        Derived.by("compacted volume × 1.2", LOOSE)
            .from("compacted volume", exact)
            .gives(exact.value().times(1 + PACKED));
    out.give(
        YardFacts.CARRIES,
        new Carry(field.name(), field.shape(), BillLine.stem(item), WorkPhase.BUILD, loose));
    Derived<Double> packing = Derived.by("loose over compacted", LOOSE).gives(PACKED);
    paving(
        plan,
        out,
        item,
        field,
        exact,
        Ordering.bulk(exact, packing, plan.info().units()),
        "20 % for packing");
  }

  private static void paving(
      Plan plan,
      Sink out,
      String item,
      PaverField field,
      Derived<?> exact,
      Derived<?> order,
      String allowance) {
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.HARD_GOODS,
            WorkPhase.BUILD,
            item,
            field.paving(plan),
            Optional.empty(),
            exact,
            order,
            allowance));
  }
}
