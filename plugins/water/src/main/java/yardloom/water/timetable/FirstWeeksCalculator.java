package yardloom.water.timetable;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.drip.DripRun;
import yardloom.water.line.BedHydraulics;
import yardloom.water.need.DriplineDay;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.NewPlants;
import yardloom.water.need.TaperNeed;
import yardloom.water.need.formula.Taper;
import yardloom.water.timetable.formula.TimerProgram;
import yardloom.water.zone.Zone;

/**
 * Sets what a timer runs in the first 45 days after planting: every zone by the taper from its own
 * day of planting, as long as its thirstiest bed asks. What is planted in a zone more than a week
 * later begins its own weeks then. No step begins before the dripline lies. Trees in a bed, or with
 * rings under a crown to be, drink from their root ball and are watered by hand.
 */
public final class FirstWeeksCalculator implements Calculator {
  /** Nobody changes keys for less (common practice). */
  private static final int TOGETHER_DAYS = 7;

  private static final Source TIME = Source.commonPractice("time = water / flow, whole minutes");

  @Override
  public String id() {
    return "water.first-weeks";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(
        Zone.KEY,
        DripRun.KEY,
        BedHydraulics.KEY,
        MonthlyWeather.KEY,
        YardFacts.SOIL,
        YardFacts.STANDS,
        YardFacts.PLANTING_DAYS,
        YardFacts.PHASE_DAYS,
        YardFacts.SUNRISES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(FirstWeeks.KEY, CrowdedNight.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    if (in.find(MonthlyWeather.KEY).isEmpty()) {
      return;
    }
    List<FirstWeeks> all = new ArrayList<>();
    List<NewPlants> plants = NewPlants.of(in);
    for (Zone zone : in.all(Zone.KEY)) {
      all.addAll(of(plan, in, zone, plants));
    }
    FirstNights nights = new FirstNights(all, month -> Starts.sunrise(in, month));
    nights.timed().forEach(weeks -> out.give(FirstWeeks.KEY, weeks));
    nights.crowded().forEach(night -> out.give(CrowdedNight.KEY, night));
  }

  private static List<FirstWeeks> of(Plan plan, Facts in, Zone zone, List<NewPlants> plants) {
    List<DripRun> runs = zone.runs(in);
    List<NewPlants> groups =
        plants.stream()
            .filter(g -> zone.beds().contains(g.in()) && isByLine(g.in(), runs))
            .sorted(Comparator.comparing(NewPlants::grows))
            .toList();
    List<FirstWeeks> all = new ArrayList<>();
    int from = 0;
    while (from < groups.size()) {
      LocalDate last = groups.get(from).grows().plusDays(TOGETHER_DAYS);
      int to = from;
      while (to < groups.size() && !groups.get(to).grows().isAfter(last)) {
        to++;
      }
      together(plan, in, zone, runs, groups.subList(from, to)).ifPresent(all::add);
      from = to;
    }
    return all;
  }

  private static boolean isByLine(ElementId in, List<DripRun> runs) {
    return runs.stream().anyMatch(r -> r.bed().equals(in) && r.reachesRootBalls());
  }

  private static Optional<FirstWeeks> together(
      Plan plan, Facts in, Zone zone, List<DripRun> runs, List<NewPlants> groups) {
    LocalDate first = groups.get(0).grows();
    List<FirstWeeks.Weeks> weeks = new ArrayList<>();
    List<DripRun> its =
        runs.stream().filter(r -> groups.stream().anyMatch(g -> g.in().equals(r.bed()))).toList();
    Turns turns = Turns.of(plan, in, runs);
    Optional<LocalDate> laid = DriplineDay.runs(in);
    for (Taper.Step step : Taper.STEPS) {
      Map<ElementId, Derived<TimeSpan>> needs = new LinkedHashMap<>();
      its.forEach(r -> need(plan, in, r, groups, step).ifPresent(n -> needs.put(r.bed(), n)));
      needs.entrySet().stream()
          .max(Comparator.comparing(e -> e.getValue().value()))
          .map(m -> weeks(first, step, m.getKey(), m.getValue(), turns, rained(groups, step, in)))
          .ifPresent(weeks::add);
    }
    String beds = NameRuns.text(its.stream().map(r -> r.bed().name()).toList());
    return weeks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new FirstWeeks(
                zone.number(),
                first,
                NewPlants.kinds(groups),
                beds,
                FirstWaits.waits(plan, groups, in),
                weeks.stream().flatMap(w -> w.notBefore(laid).stream()).toList()));
  }

  /** Empty where all that is planted in the bed still rests, or where no water comes out. */
  private static Optional<Derived<TimeSpan>> need(
      Plan plan, Facts in, DripRun run, List<NewPlants> groups, Taper.Step step) {
    BedHydraulics bed = BedHydraulics.of(run.bed(), in);
    Derived.Builder why = Derived.by("sum over plants of water / flow", TIME);
    Volume water = Volume.ZERO;
    for (NewPlants group : groups) {
      if (group.in().equals(run.bed()) && !TaperNeed.rests(group, step)) {
        Derived<Volume> each = TaperNeed.each(plan, group, step, in.get(MonthlyWeather.KEY));
        water = water.plus(each.value());
        why.from("water for " + group.kinds(), each);
      }
    }
    double flowM3s = bed.outflow().flow().value().cubicMetresPerSecond();
    return water.litres() <= 0 || flowM3s <= 0
        ? Optional.empty()
        : Optional.of(
            why.from("flow", bed.outflow().flow())
                .gives(TimeSpan.seconds(water.cubicMetres() / flowM3s)));
  }

  private static boolean rained(List<NewPlants> groups, Taper.Step step, Facts in) {
    MonthlyWeather weather = in.get(MonthlyWeather.KEY);
    return groups.stream()
        .allMatch(g -> TaperNeed.isRainedOn(g, TaperNeed.month(g, step), weather));
  }

  /** Never less than the need, since young plants do not wait. */
  private static FirstWeeks.Weeks weeks(
      LocalDate first,
      Taper.Step step,
      ElementId thirstiest,
      Derived<TimeSpan> need,
      Turns turns,
      boolean isRainedOn) {
    double minutes = need.value().minutes();
    int count = Math.max(1, (int) Math.ceil(minutes / turns.longest() - 1e-9));
    int each = Math.max(1, (int) Math.ceil(minutes / count - 1e-9));
    TimerProgram program = new TimerProgram(step.everyDays(), count, each);
    return new FirstWeeks.Weeks(
        step,
        first.plusDays(step.from() - 1L),
        first.plusDays(step.until() - 1L),
        thirstiest,
        need,
        program,
        turns.soak(program),
        Optional.empty(),
        isRainedOn,
        new Limits(Optional.empty(), turns.limit()));
  }
}
