package yardloom.work.phase;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkSettings;

/** Gives the phases of the work with their days. Phases without anything to do are left out. */
public final class ScheduleCalculator implements Calculator {
  @Override
  public String id() {
    return "work.schedule";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(TaskLoad.FACT, YardFacts.BILL);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(PhaseTime.FACT);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<TaskLoad> tasks = in.all(TaskLoad.FACT);
    if (tasks.isEmpty()) {
      return;
    }
    Map<WorkPhase, Double> hours = new EnumMap<>(WorkPhase.class);
    tasks.forEach(t -> hours.merge(t.phase(), t.likely().value().hours(), Double::sum));
    WorkSettings work = settings(plan, in);
    PhaseSchedule.of(needed(hours, in.all(YardFacts.BILL)), hours, work)
        .forEach(t -> out.give(PhaseTime.FACT, t));
  }

  /** What the plan says, with frost days of the climate where it says none. */
  public static WorkSettings settings(Plan plan, Facts facts) {
    WorkSettings work = WorkSettings.of(plan);
    return facts
        .find(YardFacts.FROST)
        .map(f -> work.orFrost(f.lastOfSpring().value(), f.firstOfFall().value()))
        .orElse(work);
  }

  /** The phases that have work or are always there; waits pass through those left out. */
  private static List<Phase> needed(Map<WorkPhase, Double> hours, List<BillLine> bill) {
    Set<WorkPhase> used = EnumSet.noneOf(WorkPhase.class);
    used.addAll(hours.keySet());
    bill.forEach(line -> used.add(line.phase()));
    Map<WorkPhase, Phase> dropped = new EnumMap<>(WorkPhase.class);
    List<Phase> kept = new ArrayList<>();
    for (Phase p : PhaseData.phases()) {
      if (p.always() || used.contains(p.id())) {
        kept.add(p);
      } else {
        dropped.put(p.id(), p);
      }
    }
    return kept.stream().map(p -> p.after(through(p.after(), dropped))).toList();
  }

  private static List<WorkPhase> through(List<WorkPhase> after, Map<WorkPhase, Phase> dropped) {
    List<WorkPhase> kept = new ArrayList<>();
    for (WorkPhase id : after) {
      if (dropped.containsKey(id)) {
        kept.addAll(through(dropped.get(id).after(), dropped));
      } else {
        kept.add(id);
      }
    }
    return kept.stream().distinct().toList();
  }
}
