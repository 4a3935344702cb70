package yardloom.work.labour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Haul;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
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
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Unit;

/**
 * Gives the hours of every task: what the plugins say is to be done, times its rate, and the walks
 * of the barrows. Where anything is to be done, the utility marks are called for before and the
 * yard is visited after.
 */
public final class LabourCalculator implements Calculator {
  private static final Source WALK =
      Source.memory(
          "A loaded barrow goes 2 to 4 km/h; each percent of slope costs 5 % more time",
          "recalled from practice", 0, "");

  private static final Spread METRES_PER_HOUR =
      new Spread(2000, 3000, 4000, "pace of barrows", WALK);

  private static final Source ONCE = Source.commonPractice("once for the whole yard");
  private static final double SLOPE_COST = 5;

  @Override
  public String id() {
    return "work.labour";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.JOBS, YardFacts.HAULS);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(TaskLoad.FACT, KindHours.FACT, YardFacts.LOCAL_RATES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.attributes().all(LabourRates.KEY).forEach(e -> out.give(YardFacts.LOCAL_RATES, e.value()));
    LabourRates local = LabourRates.of(plan, in.find(YardFacts.REGION));
    List<TaskLoad> tasks = new ArrayList<>();
    JobSums.of(in.all(YardFacts.JOBS)).forEach(job -> tasks.add(task(local, job)));
    for (Job job : in.all(YardFacts.JOBS)) {
      job.plant()
          .ifPresent(
              plant -> out.give(KindHours.FACT, new KindHours(plant, task(local, job).likely())));
    }
    tasks.addAll(walks(plan, in.all(YardFacts.HAULS)));
    OwnItem.now(plan).forEach(item -> tasks.add(own(item)));
    tasks.removeIf(t -> t.high().value().hours() <= 0);
    if (tasks.isEmpty()) {
      return;
    }
    Derived<Integer> once = Derived.by("one for the yard", ONCE).gives(1);
    tasks.add(task(local, new Job(WorkTask.MEET_MARKER, WorkPhase.MARK, once)));
    Derived<Integer> visits = WorkSettings.of(plan).visits();
    // Nobody comes twelve times to look at chips; a plan that names visits has its reasons.
    boolean planted = in.all(YardFacts.JOBS).stream().anyMatch(job -> job.plant().isPresent());
    if (visits.value() > 0 && (planted || !visits.equals(WorkSettings.VISITS))) {
      tasks.add(task(local, new Job(WorkTask.VISIT, WorkPhase.ESTABLISH, visits)));
    }
    tasks.stream()
        .sorted(
            Comparator.comparing(TaskLoad::phase)
                .thenComparing(TaskLoad::task)
                .thenComparing(TaskLoad::title))
        .forEach(t -> out.give(TaskLoad.FACT, t));
  }

  private static TaskLoad task(LabourRates local, Job job) {
    Derived<?> amount = job.amount();
    LocalRate rate = local.of(job);
    Spread perUnit = rate.value();
    String unit = rate.unit();
    double units = LocalRate.units(amount.value(), unit);
    return new TaskLoad(
        job.task(),
        job.pace().map(p -> job.title()),
        job.phase(),
        amount,
        hours(amount, unit, units, perUnit.low(), perUnit),
        hours(amount, unit, units, perUnit.likely(), perUnit),
        hours(amount, unit, units, perUnit.high(), perUnit));
  }

  /** The plan knows one figure of its own work, not a range. */
  private static TaskLoad own(OwnItem item) {
    Derived<TimeSpan> hours =
        hours(
            item.amount(),
            item.unit(),
            LocalRate.units(item.amount().value(), item.unit()),
            item.hoursPerUnit(),
            new Spread(
                item.hoursPerUnit(),
                item.hoursPerUnit(),
                item.hoursPerUnit(),
                "pace of work",
                item.source()));
    return new TaskLoad(
        WorkTask.OWN, Optional.of(item.task()), item.phase(), item.amount(), hours, hours, hours);
  }

  private static Derived<TimeSpan> hours(
      Derived<?> amount, String unit, double units, double perUnit, Spread data) {
    String in =
        unit.equals(LocalRate.PIECE) ? "" : " in " + Unit.byWord(unit).orElseThrow().symbol();
    return Derived.by("hours = amount" + in + " × hours per " + unit, data.source())
        .from("amount", amount)
        .from("hours per " + unit, perUnit)
        .gives(TimeSpan.hours(units * perUnit));
  }

  private static List<TaskLoad> walks(Plan plan, List<Haul> hauls) {
    double slower = 1 + SLOPE_COST * Math.abs(WorkSettings.of(plan).slope());
    Map<WorkPhase, List<Haul>> byPhase = new EnumMap<>(WorkPhase.class);
    hauls.forEach(h -> byPhase.computeIfAbsent(h.phase(), p -> new ArrayList<>()).add(h));
    List<TaskLoad> tasks = new ArrayList<>();
    byPhase.forEach(
        (phase, of) -> {
          Derived.Builder why = Derived.by("sum over surfaces", WALK);
          Length sum = Length.ZERO;
          for (Haul haul : of) {
            why.from(haul.item() + " to " + haul.to(), haul.walk());
            sum = sum.plus(haul.walk().value());
          }
          Derived<Length> walk = why.gives(sum);
          tasks.add(
              new TaskLoad(
                  WorkTask.WALK,
                  Optional.empty(),
                  phase,
                  walk,
                  walking(walk, METRES_PER_HOUR.high(), slower),
                  walking(walk, METRES_PER_HOUR.likely(), slower),
                  walking(walk, METRES_PER_HOUR.low(), slower)));
        });
    return tasks;
  }

  private static Derived<TimeSpan> walking(
      Derived<Length> walk, double metresPerHour, double slower) {
    return Derived.by("hours = walk in m / pace × factor of slope", WALK)
        .from("walk", walk)
        .from("pace, metres per hour", metresPerHour)
        .from("factor of slope", slower)
        .gives(TimeSpan.hours(walk.value().metres() / metresPerHour * slower));
  }
}
