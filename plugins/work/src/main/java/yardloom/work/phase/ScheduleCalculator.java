package yardloom.work.phase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardloom.facts.BillLine;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.PhaseDays;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.work.labour.KindHours;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkSettings;

/** Gives the phases of the work with their days. Phases without anything to do are left out. */
public final class ScheduleCalculator implements Calculator {
  /** Posts carry nothing for so long after their concrete is poured (common practice). */
  private static final int CONCRETE_DAYS = 2;

  /** What is laid about plants. */
  private static final Set<WorkPhase> CHIPS_OF_BEDS = Set.of(WorkPhase.FINISH, WorkPhase.LATER);

  @Override
  public String id() {
    return "work.schedule";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(TaskLoad.FACT, YardFacts.BILL, YardFacts.SURFACES);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(
        KindHours.FACT,
        YardFacts.LOADS,
        YardFacts.FROST,
        YardFacts.PLANTING_WINDOWS,
        YardFacts.STANDS,
        YardFacts.CLIMATE,
        YardFacts.REFERENCE_ET);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(PhaseTime.FACT, CareVisit.FACT, YardFacts.PHASE_DAYS);
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
    List<Phase> phases =
        needed(
            layered(PhaseData.phases(), in.all(YardFacts.SURFACES)), hours, in.all(YardFacts.BILL));
    Set<WorkTask> ofPlan = EnumSet.noneOf(WorkTask.class);
    tasks.forEach(t -> ofPlan.add(t.task()));
    PhaseSchedule.Scheduled scheduled =
        PhaseSchedule.of(
            phases.stream().map(p -> due(p, tasksOf(p.id(), tasks), hours, work)).toList(),
            new PhaseSchedule.Given(
                hours,
                work,
                in.all(YardFacts.PLANTING_WINDOWS),
                KindHours.byKind(in.all(KindHours.FACT)),
                months(in),
                in.all(YardFacts.LOADS).stream().map(BulkLoads::phase).collect(Collectors.toSet()),
                under(in.all(YardFacts.SURFACES), in.all(YardFacts.STANDS))));
    // What a phase waits for is settled by the schedule.
    for (PhaseTime time : scheduled.times()) {
      WorkPhase id = time.phase().id();
      Set<PlantedGround> ground =
          PlantedGround.of(id, in.all(YardFacts.STANDS), in.all(YardFacts.SURFACES));
      give(time.doing(tasksOf(id, tasks), ofPlan, ground), out);
    }
    scheduled.care().forEach(v -> out.give(CareVisit.FACT, v));
  }

  /** By phase, the kinds that are planted in what it covers last. */
  private static Map<WorkPhase, Set<String>> under(
      List<MulchSurface> surfaces, List<Stand> stands) {
    Map<WorkPhase, Set<String>> under = new EnumMap<>(WorkPhase.class);
    for (MulchSurface s : surfaces) {
      Optional<WorkPhase> last =
          s.courses().stream().map(LaidLayer::phase).max(Comparator.naturalOrder());
      if (last.filter(CHIPS_OF_BEDS::contains).isPresent()) {
        Set<String> kinds = under.computeIfAbsent(last.get(), p -> new TreeSet<>());
        stands.stream()
            .filter(
                stand -> stand.in().equals(s.of()) && !stand.planted().stands() && !stand.follows())
            .forEach(stand -> kinds.add(stand.plant()));
      }
    }
    return under;
  }

  /** The months that ask for care of what is planted. */
  public static CareMonths months(Facts facts) {
    return CareMonths.of(
        facts.all(YardFacts.STANDS),
        facts.find(YardFacts.CLIMATE),
        facts.find(YardFacts.REFERENCE_ET));
  }

  private static void give(PhaseTime time, Sink out) {
    out.give(PhaseTime.FACT, time);
    if (time.start().isPresent() && time.end().isPresent()) {
      out.give(
          YardFacts.PHASE_DAYS,
          new PhaseDays(time.phase().id(), time.start().get(), time.end().get()));
    }
  }

  /** The phase; longer where concrete is to set before the rest is done. */
  private static Phase due(
      Phase phase, Set<WorkTask> own, Map<WorkPhase, Double> hours, WorkSettings work) {
    return own.contains(WorkTask.MIX_CONCRETE)
        ? phase.atLeast(work.daysFor(hours.get(phase.id())) + CONCRETE_DAYS)
        : phase;
  }

  private static Set<WorkTask> tasksOf(WorkPhase phase, List<TaskLoad> tasks) {
    Set<WorkTask> own = EnumSet.noneOf(WorkTask.class);
    tasks.stream().filter(t -> t.phase() == phase).forEach(t -> own.add(t.task()));
    return own;
  }

  /** What the plan says, with the one set of frost days that every table has. */
  public static WorkSettings settings(Plan plan, Facts facts) {
    WorkSettings work = WorkSettings.of(plan);
    return facts
        .find(YardFacts.FROST)
        .map(f -> work.withFrost(f.lastOfSpring().value(), f.firstOfFall().value()))
        .orElse(work);
  }

  /** The phases, each also waiting for those of the layers below its own. */
  private static List<Phase> layered(List<Phase> phases, List<MulchSurface> surfaces) {
    Map<WorkPhase, Set<WorkPhase>> below = new EnumMap<>(WorkPhase.class);
    for (MulchSurface s : surfaces) {
      for (int i = 1; i < s.courses().size(); i++) {
        WorkPhase lower = s.courses().get(i - 1).phase();
        WorkPhase upper = s.courses().get(i).phase();
        if (lower != upper) {
          below.computeIfAbsent(upper, p -> EnumSet.noneOf(WorkPhase.class)).add(lower);
        }
      }
    }
    return phases.stream()
        .map(
            p -> {
              Set<WorkPhase> after = new LinkedHashSet<>(p.after());
              after.addAll(below.getOrDefault(p.id(), Set.of()));
              return p.after(List.copyOf(after));
            })
        .toList();
  }

  /** The phases in which something is done or bought; waits pass through those left out. */
  private static List<Phase> needed(
      List<Phase> phases, Map<WorkPhase, Double> hours, List<BillLine> bill) {
    Set<WorkPhase> used = EnumSet.noneOf(WorkPhase.class);
    used.addAll(hours.keySet());
    bill.forEach(line -> used.add(line.phase()));
    Map<WorkPhase, Phase> dropped = new EnumMap<>(WorkPhase.class);
    List<Phase> kept = new ArrayList<>();
    for (Phase p : phases) {
      if (used.contains(p.id())) {
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
