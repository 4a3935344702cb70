package yardloom.planting.bay;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.bay.formula.BayParts;

/**
 * Gives what a compost bay that is to be built takes: posts, mesh and boards, and the work of
 * putting them up. What stands already takes nothing. The bay is marked as counted, so that nobody
 * bills it as a shed.
 */
public final class BayCalculator implements Calculator {
  private static final Source ROLL =
      Source.commonPractice("a tenth more for ends and laps of a roll");

  @Override
  public String id() {
    return "planting.bay";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.OWN_COUNTED, YardFacts.BILL, YardFacts.JOBS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Element.Structure bay : plan.all(Element.Structure.class)) {
      if (bay.attributes().get(BayWords.BAY).isPresent() && !bay.stands()) {
        out.give(YardFacts.OWN_COUNTED, bay.id());
        build(bay, plan.info().units(), out);
      }
    }
  }

  private static void build(Element.Structure bay, UnitSystem units, Sink out) {
    LongAxis axis = LongAxis.of(bay.shape());
    BayParts parts = BayParts.of(axis.length(), axis.width(), bay.height());
    Derived<Integer> bins =
        Derived.by("length / side of a bin, rounded down, at least 1", BayParts.SOURCE)
            .from("length", parts.length(), bay.place())
            .from("side of a bin", BayParts.BIN)
            .gives(parts.bins());
    Derived<Integer> posts =
        Derived.by("2 × (bins + 1)", BayParts.SOURCE).from("bins", bins).gives(parts.posts());
    Derived<Length> mesh =
        Derived.by("length + (bins + 1) × depth", BayParts.SOURCE)
            .from("length", parts.length(), bay.place())
            .from("bins", bins)
            .from("depth", parts.depth(), bay.place())
            .gives(parts.mesh());
    Derived<Integer> boards =
        Derived.by("bins × down(height / board)", BayParts.SOURCE)
            .from("bins", bins)
            .from("height", parts.height())
            .from("board", BayParts.BOARD)
            .gives(parts.boards());
    String post = Say.distance(stock(parts.height().plus(BayParts.BURIED), units), units);
    line(bay, out, "fence posts, 4x4 by " + post, posts, posts, "no spares included");
    Derived<Length> roll =
        Derived.by("exact × 1.1", ROLL).from("exact", mesh).gives(mesh.value().times(1.1));
    String high = Say.distance(parts.height(), units) + " high";
    line(bay, out, "fence mesh, " + high, mesh, roll, "a tenth for ends and laps");
    String board = Say.distance(stock(parts.board(), units), units);
    line(bay, out, "fence boards, 1x6 by " + board, boards, boards, "no spares included");
    job(bay, out, WorkTask.SET_POSTS, posts);
    job(
        bay,
        out,
        WorkTask.HANG_FENCE,
        Derived.by("mesh + length", BayParts.SOURCE)
            .from("mesh", mesh)
            .from("length, in front", parts.length(), bay.place())
            .gives(parts.mesh().plus(parts.length())));
  }

  /** Lumber is sold by whole feet, or by steps of 30 cm. */
  private static Length stock(Length length, UnitSystem units) {
    Length step = units == UnitSystem.US ? Length.feet(1) : Length.metres(0.3);
    return step.times(Math.ceil(length.ratioTo(step) - 1e-6));
  }

  private static void line(
      Element.Structure bay,
      Sink out,
      String item,
      Derived<?> exact,
      Derived<?> order,
      String allowance) {
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.BUILT,
            WorkPhase.BUILD,
            item,
            Optional.of(bay.id()),
            Optional.empty(),
            exact,
            order,
            allowance));
  }

  private static void job(Element.Structure bay, Sink out, WorkTask task, Derived<?> amount) {
    out.give(
        YardFacts.JOBS,
        new Job(task, WorkPhase.BUILD, amount, Optional.of(bay.id()), Optional.empty()));
  }
}
