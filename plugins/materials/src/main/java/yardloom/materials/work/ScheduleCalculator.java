package yardloom.materials.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.materials.calc.PhaseSchedule;
import yardloom.materials.data.WorkData;
import yardloom.materials.model.Phase;
import yardloom.materials.model.TaskLoad;
import yardloom.materials.model.WorkSettings;

/** Gives the phases of the work with their days. Phases without anything to do are left out. */
public final class ScheduleCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.schedule";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(MaterialFacts.TASKS, YardFacts.BILL);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(MaterialFacts.PHASES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<TaskLoad> tasks = in.all(MaterialFacts.TASKS);
    if (tasks.isEmpty()) {
      return;
    }
    Map<String, Double> hours = new HashMap<>();
    tasks.forEach(t -> hours.merge(t.phase(), t.likely().value().hours(), Double::sum));
    WorkSettings work = settings(plan, in);
    PhaseSchedule.of(needed(hours, in.all(YardFacts.BILL)), hours, work)
        .forEach(t -> out.give(MaterialFacts.PHASES, t));
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
  private static List<Phase> needed(Map<String, Double> hours, List<BillLine> bill) {
    boolean irrigation = bill.stream().anyMatch(l -> l.group().equals("irrigation"));
    List<Phase> all = WorkData.phases();
    List<String> dropped = new ArrayList<>();
    for (Phase p : all) {
      boolean drop =
          switch (p.id()) {
            case "head", "drip" -> !irrigation;
            case "plant", "compost" -> !hours.containsKey(p.id());
            default -> false;
          };
      if (drop) {
        dropped.add(p.id());
      }
    }
    List<Phase> kept = new ArrayList<>();
    for (Phase p : all) {
      if (!dropped.contains(p.id())) {
        kept.add(
            new Phase(
                p.id(),
                p.title(),
                through(p.after(), dropped, all),
                p.leastDays(),
                p.groups(),
                p.steps(),
                p.tools(),
                p.cautions()));
      }
    }
    return kept;
  }

  private static List<String> through(List<String> after, List<String> dropped, List<Phase> all) {
    List<String> kept = new ArrayList<>();
    for (String id : after) {
      if (dropped.contains(id)) {
        Phase gone = all.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
        kept.addAll(through(gone.after(), dropped, all));
      } else {
        kept.add(id);
      }
    }
    return kept.stream().distinct().toList();
  }
}
