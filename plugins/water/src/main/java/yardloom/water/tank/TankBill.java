package yardloom.water.tank;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.work.DrawnThing;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.water.need.WaterText;

/** Gives what the tanks of the plan are bought with, and the work of joining them. */
public final class TankBill implements Calculator {
  private static final Source BASE =
      Source.commonPractice("a tank stands on level, firm ground as large as itself");

  private static final String TANK = "tank";
  private static final String VALVE = "valve at the foot of a tank";
  private static final String FLUSH = "first-flush pipe with a cap to clean it";
  private static final String STAND = "stand of a tank";

  @Override
  public String id() {
    return "water.tank-bill";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BILL, YardFacts.JOBS, YardFacts.DRAWN);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Entry<TankPlan> entry : plan.attributes().all(TankPlan.KEY)) {
      if (!plan.isNow(entry)) {
        continue;
      }
      TankPlan tank = entry.value();
      Derived<Integer> count = Derived.given(tank.body().count(), "tanks linked", entry.place());
      give(
          out,
          TANK
              + " of "
              + WaterText.both(plan, tank.body().each())
              + (tank.body().isRound() ? ", round" : ", rectangular"),
          count,
          "as many as the plan has");
      give(out, VALVE, count, "one for each, so that it can be cleaned alone");
      Derived<Integer> one = Derived.given(1, "inlet of a tank", entry.place());
      give(out, FLUSH, one, "one at each inlet");
      give(out, "inlet screen, 1/16 in (1.5 mm) mesh", one, "one at each inlet");
      out.give(YardFacts.JOBS, new Job(WorkTask.ASSEMBLE_HEAD, WorkPhase.HEAD, count));
      out.give(YardFacts.JOBS, new Job(WorkTask.SET_TANK, WorkPhase.HEAD, ground(tank, entry)));
      boolean stands = tank.body().stand().metres() > 0;
      out.give(
          YardFacts.DRAWN,
          new DrawnThing(
              tank.name(),
              "tank",
              stands ? List.of(TANK, VALVE, FLUSH, STAND) : List.of(TANK, VALVE, FLUSH),
              List.of(WorkTask.SET_TANK, WorkTask.ASSEMBLE_HEAD),
              WorkPhase.HEAD));
      if (stands) {
        give(
            out,
            STAND + ", " + Say.depth(tank.body().stand(), plan.info().units()) + " high",
            count,
            "one for each, of masonry or posts that bear the full tank");
      }
    }
  }

  /** The ground that is levelled under them. */
  private static Derived<Area> ground(TankPlan tank, Entry<TankPlan> entry) {
    Area each = tank.feet().get(0).area();
    return Derived.by("ground of one tank × tanks", BASE)
        .from("ground of one tank", each, entry.place())
        .from("tanks", tank.body().count(), entry.place())
        .gives(each.times(tank.body().count()));
  }

  private static void give(Sink out, String item, Derived<Integer> count, String why) {
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.IRRIGATION,
            WorkPhase.HEAD,
            item,
            Optional.empty(),
            Optional.empty(),
            count,
            count,
            why));
  }
}
