package yardloom.water.overflow;

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
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.roof.Downspout;

/** Gives the pipes of overflows to buy and the earth of basins to dig. */
public final class OverflowBill implements Calculator {
  private static final Source OFFCUTS =
      Source.commonPractice("a tenth more than drawn, for bends and offcuts");
  private static final double ALLOWANCE = 1.1;

  private static final String PIPE = "overflow pipe";

  @Override
  public String id() {
    return "water.overflow-bill";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BILL, YardFacts.JOBS, YardFacts.DRAWN);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Entry<OverflowPipe> entry : plan.attributes().all(OverflowPipe.KEY)) {
      if (!plan.isNow(entry)) {
        continue;
      }
      OverflowPipe pipe = entry.value();
      Derived<Length> exact = Derived.given(pipe.line().length(), "length as drawn", entry.place());
      String size = Say.of(Measure.PIPE, pipe.inside(), plan.info().units());
      out.give(
          YardFacts.BILL,
          new BillLine(
              BillGroup.IRRIGATION,
              WorkPhase.EARTH,
              PIPE + ", " + size + " inside",
              Optional.empty(),
              Optional.empty(),
              exact,
              Derived.by("length as drawn × allowance", OFFCUTS)
                  .from("length as drawn", exact)
                  .from("allowance", ALLOWANCE)
                  .gives(exact.value().times(ALLOWANCE)),
              "a tenth for bends and offcuts"));
      // It lies in a trench, so that it drains and is not kicked off.
      out.give(YardFacts.JOBS, new Job(WorkTask.DIG_TRENCH, WorkPhase.EARTH, exact));
      out.give(YardFacts.JOBS, new Job(WorkTask.LAY_PIPE, WorkPhase.EARTH, exact));
      out.give(
          YardFacts.DRAWN,
          new DrawnThing(
              PIPE + " from " + pipe.from(),
              "overflow",
              List.of(PIPE),
              List.of(WorkTask.DIG_TRENCH, WorkTask.LAY_PIPE),
              WorkPhase.EARTH));
    }
    for (Entry<OverflowGarden> entry : plan.attributes().all(OverflowGarden.KEY)) {
      // One with its place is dug as a basin, below.
      if (plan.isNow(entry) && !isBasin(plan, entry)) {
        out.give(
            YardFacts.DRAWN,
            new DrawnThing(
                "rain garden for " + entry.value().roof(),
                "rain garden",
                List.of(),
                List.of(),
                WorkPhase.EARTH,
                "a size to choose; a basin or swale of that size is dug"));
      }
    }
    for (Entry<Downspout> entry : plan.attributes().all(Downspout.KEY)) {
      if (plan.isNow(entry)) {
        out.give(
            YardFacts.DRAWN,
            new DrawnThing(
                "downspout of " + entry.value().roof(),
                "downspout",
                List.of(),
                List.of(),
                WorkPhase.EARTH,
                "hangs at the house already; its inlet comes with a tank"));
      }
    }
    for (Entry<Basin> entry : plan.attributes().all(Basin.KEY)) {
      if (plan.isNow(entry)) {
        Derived<Volume> earth = BasinTable.holds(entry);
        out.give(YardFacts.JOBS, new Job(WorkTask.DIG_EARTH, WorkPhase.EARTH, earth));
        out.give(
            YardFacts.DRAWN,
            new DrawnThing(
                entry.value().name(),
                "basin",
                List.of(),
                List.of(WorkTask.DIG_EARTH),
                WorkPhase.EARTH));
      }
    }
  }

  /** Both come from one line of the plan. */
  private static boolean isBasin(Plan plan, Entry<OverflowGarden> garden) {
    return plan.attributes().all(Basin.KEY).stream()
        .anyMatch(
            basin ->
                basin.place().equals(garden.place())
                    && basin.value().drains().equals(garden.value().roof()));
  }
}
