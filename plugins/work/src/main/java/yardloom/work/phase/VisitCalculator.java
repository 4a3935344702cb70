package yardloom.work.phase;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import yardloom.facts.PlantingWindow;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PlantingDay;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.work.labour.Workdays;

/** Gives the days on which the crew plants: that of the phase, and more where kinds need them. */
public final class VisitCalculator implements Calculator {
  @Override
  public String id() {
    return "work.planting-visits";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PhaseTime.FACT);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.PLANTING_WINDOWS, YardFacts.STANDS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(PlantingVisit.FACT, YardFacts.PLANTING_DAYS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<PlantingVisit> visits = new ArrayList<>();
    for (PhaseTime time : in.all(PhaseTime.FACT)) {
      List<PlantingWindow> windows =
          PlantingVisit.windowsOf(time.phase().id(), in.all(YardFacts.PLANTING_WINDOWS));
      time.start()
          .ifPresent(start -> visits.addAll(PlantingVisit.of(windows, start, Workdays.of(plan))));
    }
    SortedSet<String> known = new TreeSet<>();
    for (PlantingVisit visit : PlantingVisit.inOrder(visits)) {
      out.give(PlantingVisit.FACT, visit);
      visit
          .kinds()
          .forEach(
              (plant, how) ->
                  out.give(YardFacts.PLANTING_DAYS, new PlantingDay(plant, how, visit.date())));
      known.addAll(visit.kinds().keySet());
    }
    // Kinds without days of their own are planted when their phase begins.
    for (PhaseTime time : in.all(PhaseTime.FACT)) {
      time.start().ifPresent(start -> others(time.phase().id(), start, in, known, out));
    }
  }

  private static void others(
      WorkPhase phase, LocalDate start, Facts in, SortedSet<String> known, Sink out) {
    for (Stand stand : in.all(YardFacts.STANDS)) {
      boolean isTree = stand.in().kind() == ElementKind.TREE;
      boolean isNow = phase == (isTree ? WorkPhase.TREES : WorkPhase.PLANT);
      if (!stand.planted().stands() && !stand.follows() && isNow && known.add(stand.plant())) {
        out.give(YardFacts.PLANTING_DAYS, new PlantingDay(stand.plant(), "", start));
      }
    }
  }
}
