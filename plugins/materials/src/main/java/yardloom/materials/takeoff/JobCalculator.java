package yardloom.materials.takeoff;

import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.MulchTotals;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;
import yardloom.materials.surface.LawnEdge;

/** Gives what is to be done on mulched ground. */
public final class JobCalculator implements Calculator {
  private static final Source OUTLINES = Source.plan("outlines");

  @Override
  public String id() {
    return "materials.jobs";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.SURFACES, YardFacts.MULCH_TOTALS);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(Pockets.FACT);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.JOBS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<MulchSurface> surfaces = in.all(YardFacts.SURFACES);
    if (surfaces.isEmpty()) {
      return;
    }
    MulchTotals totals = in.get(YardFacts.MULCH_TOTALS);
    give(out, WorkTask.STAKE_OUT, WorkPhase.STAKE, totals.ground());
    give(
        out,
        WorkTask.CUT_EDGE,
        WorkPhase.EDGE,
        Derived.by("edge of all surfaces together where they meet lawn", OUTLINES)
            .gives(LawnEdge.ofAll(plan, surfaces)));
    // Sod is what cardboard is laid for: where the plan lays none there is nothing to mow.
    if (totals.sheets().value() > 0) {
      give(out, WorkTask.MOW, WorkPhase.MOW, totals.ground());
      give(out, WorkTask.SOAK, WorkPhase.SOAK, totals.sheeted());
      give(out, WorkTask.LAY_CARDBOARD, WorkPhase.SHEET, totals.sheeted());
    }
    totals.lifts().forEach(l -> give(out, WorkTask.SPREAD, l.phase(), l.volume()));
    in.find(Pockets.FACT).ifPresent(p -> pockets(out, p));
    give(out, WorkTask.CLEAN_UP, WorkPhase.FINISH, totals.ground());
  }

  private static void pockets(Sink out, Pockets pockets) {
    Derived<Volume> rest = pockets.throughCardboard();
    if (pockets.withShrubs().value().si() > 0) {
      give(out, WorkTask.SPREAD, WorkPhase.TREES, pockets.withShrubs());
    }
    if (rest.value().si() > 0) {
      give(out, WorkTask.SPREAD, WorkPhase.PLANT, rest);
    }
  }

  private static void give(Sink out, WorkTask task, WorkPhase phase, Derived<?> amount) {
    out.give(YardFacts.JOBS, new Job(task, phase, amount));
  }
}
