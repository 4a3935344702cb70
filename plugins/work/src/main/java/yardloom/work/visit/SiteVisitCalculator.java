package yardloom.work.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.TimeSpan;
import yardloom.work.cost.CostEstimate;
import yardloom.work.labour.KindHours;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;
import yardloom.work.phase.PhaseOrders;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;

/**
 * Gives the visits of the crew: phases that follow each other without a gap are one, kinds that are
 * planted later have their own, and looking after the yard is one round.
 */
public final class SiteVisitCalculator implements Calculator {
  private static final Source SUM = Source.plan("phases and later visits to plant");

  @Override
  public String id() {
    return "work.site-visits";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PhaseTime.FACT, YardFacts.BILL, YardFacts.LOADS, TaskLoad.FACT);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(KindHours.FACT, YardFacts.PLANTING_WINDOWS, CostEstimate.FACT);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(SiteVisit.FACT);
  }

  /** A visit while it is put together. */
  private static final class Stay {
    private final List<PhaseTime> phases = new ArrayList<>();
    private final SortedSet<String> kinds = new TreeSet<>();
    private final Derived.Builder why = Derived.by("sum over phases and kinds", SUM);
    private Optional<LocalDate> from = Optional.empty();
    private int days;
    private double hours;

    void add(String what, double more) {
      why.from(what, TimeSpan.hours(more));
      hours += more;
    }

    Optional<LocalDate> to(Workdays workdays) {
      return from.map(f -> workdays.day(f, days));
    }

    boolean isOn(LocalDate date, Workdays workdays) {
      return from.isPresent()
          && !date.isBefore(from.get())
          && !date.isAfter(to(workdays).orElseThrow());
    }

    /** Whether it begins when a visit is done, or on the morning after. */
    boolean follows(PlantingVisit visit, Map<String, Double> byKind, WorkSettings work) {
      int last = work.daysFor(visit.hours(byKind));
      return from.isPresent()
          && from.get().isAfter(visit.date())
          && !from.get().isAfter(work.workdays().day(visit.date(), last + 1));
    }

    /** The same with the days before it from {@code date} on. */
    void beginsBy(LocalDate date, Workdays workdays) {
      if (date.isBefore(from.orElseThrow())) {
        days += workdays.number(date, from.get()) - 1;
        from = Optional.of(date);
      }
    }

    boolean does(WorkPhase phase) {
      return phases.stream().anyMatch(p -> p.phase().id() == phase);
    }
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<PhaseTime> phases = in.all(PhaseTime.FACT);
    if (phases.isEmpty()) {
      return;
    }
    WorkSettings work = WorkSettings.of(plan);
    List<Stay> drafts = runs(phases);
    for (PhaseTime time : phases) {
      later(time, in, work, drafts);
    }
    // Visits without a date are in working order, and none of them is later.
    drafts.sort(Comparator.comparing(d -> d.from.orElse(LocalDate.MIN)));
    VisitCosts costs = new VisitCosts(in.find(CostEstimate.FACT), in);
    for (int i = 0; i < drafts.size(); i++) {
      Stay draft = drafts.get(i);
      List<BillLine> lines =
          in.all(YardFacts.BILL).stream().filter(l -> of(l, phases, drafts) == draft).toList();
      List<BulkLoads> loads =
          in.all(YardFacts.LOADS).stream().filter(l -> of(l.item(), l.phase(), lines)).toList();
      Derived<TimeSpan> hours = draft.why.gives(TimeSpan.hours(draft.hours));
      out.give(
          SiteVisit.FACT,
          new SiteVisit(
              i + 1,
              draft.phases.stream().map(p -> p.phase().id()).toList(),
              draft.kinds,
              draft.days,
              draft.from,
              draft.to(work.workdays()),
              hours,
              lines,
              loads,
              costs.of(hours, lines, loads)));
    }
  }

  /**
   * Phases without a free day between them; the call for the marks and the looking after by
   * themselves.
   */
  private static List<Stay> runs(List<PhaseTime> phases) {
    List<Stay> runs = new ArrayList<>();
    int done = -1;
    WorkPhase before = WorkPhase.MARK;
    for (PhaseTime time : phases) {
      boolean isAlone = before == WorkPhase.MARK || time.phase().id() == WorkPhase.ESTABLISH;
      if (isAlone || time.firstDay() > done + 1) {
        Stay run = new Stay();
        run.from = time.start();
        runs.add(run);
      }
      Stay run = runs.get(runs.size() - 1);
      run.phases.add(time);
      run.days = time.lastDay() - run.phases.get(0).firstDay() + 1;
      run.add(time.phase().id().title(), time.hours());
      done = time.lastDay();
      before = time.phase().id();
    }
    return runs;
  }

  /** What a phase leaves for later days joins the visit of such a day, or makes one. */
  private static void later(PhaseTime time, Facts in, WorkSettings work, List<Stay> drafts) {
    Map<String, Double> byKind = KindHours.byKind(in.all(KindHours.FACT));
    for (PlantingVisit visit :
        PlantingVisit.laterThan(time, in.all(YardFacts.PLANTING_WINDOWS), work.workdays())) {
      Stay draft =
          drafts.stream()
              .filter(d -> !d.does(WorkPhase.ESTABLISH))
              .filter(
                  d ->
                      d.isOn(visit.date(), work.workdays())
                          || d.does(WorkPhase.LATER) && d.follows(visit, byKind, work))
              .findFirst()
              .orElseGet(
                  () -> {
                    Stay own = new Stay();
                    own.from = Optional.of(visit.date());
                    drafts.add(own);
                    return own;
                  });
      draft.beginsBy(visit.date(), work.workdays());
      draft.kinds.addAll(visit.kinds().keySet());
      visit.kinds().keySet().forEach(k -> draft.add(k, byKind.getOrDefault(k, 0.0)));
      draft.days = Math.max(draft.days, work.daysFor(draft.hours));
    }
  }

  /** The visit before which a line must be there. */
  private static Stay of(BillLine line, List<PhaseTime> phases, List<Stay> drafts) {
    Optional<Stay> later =
        drafts.stream().filter(d -> line.plant().filter(d.kinds::contains).isPresent()).findFirst();
    WorkPhase phase = PhaseOrders.phaseOf(line, phases);
    return later.or(() -> drafts.stream().filter(d -> d.does(phase)).findFirst()).orElseThrow();
  }

  private static boolean of(String item, WorkPhase phase, List<BillLine> lines) {
    return lines.stream().anyMatch(l -> BillLine.stem(l.item()).equals(item) && l.phase() == phase);
  }
}
