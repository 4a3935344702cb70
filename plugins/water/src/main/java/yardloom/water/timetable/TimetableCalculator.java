package yardloom.water.timetable;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.drip.DripRun;
import yardloom.water.line.BedHydraulics;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.formula.WaterBudget;
import yardloom.water.timetable.formula.RunTime;
import yardloom.water.timetable.formula.TimerProgram;
import yardloom.water.zone.PeakNeed;
import yardloom.water.zone.Zone;

/**
 * Sets the times of every zone and month: run time by the thirstiest bed, days apart by the soil,
 * turns by its intake, and starts so that all are over before the month's earliest sunrise.
 */
public final class TimetableCalculator implements Calculator {
  /** Between waterings at most, whatever the soil holds: nobody looks less often. */
  private static final int MOST_APART = 7;

  /** Where the soil or the roots are not known. */
  private static final int USUAL_APART = 3;

  @Override
  public String id() {
    return "water.timetable";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(
        Zone.KEY,
        DripRun.KEY,
        BedHydraulics.KEY,
        WaterDemand.KEY,
        MonthlyWeather.KEY,
        YardFacts.SOIL,
        YardFacts.STANDS,
        YardFacts.SUNRISES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(ZoneTimes.KEY, CrowdedNight.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<Zone> zones = in.all(Zone.KEY);
    List<List<ZoneTimes.Month>> times = new ArrayList<>();
    zones.forEach(zone -> times.add(new ArrayList<>()));
    for (int m = 0; m < 12; m++) {
      List<Integer> run = new ArrayList<>();
      List<MonthNight.Asked> asked = new ArrayList<>();
      for (int z = 0; z < zones.size(); z++) {
        Optional<MonthNight.Asked> its = month(plan, in, zones.get(z), m);
        its.ifPresent(asked::add);
        if (its.isPresent()) {
          run.add(z);
        }
      }
      Optional<LocalTime> sunrise = Starts.sunrise(in, m);
      MonthNight night = MonthNight.of(asked, sunrise);
      for (int i = 0; i < run.size(); i++) {
        times.get(run.get(i)).add(night.times().get(i));
      }
      CrowdedNight.of("in " + Months.name(m), night.minutes(), sunrise)
          .ifPresent(crowded -> out.give(CrowdedNight.KEY, crowded));
    }
    for (int z = 0; z < zones.size(); z++) {
      out.give(ZoneTimes.KEY, new ZoneTimes(zones.get(z).number(), times.get(z)));
    }
  }

  /** How long a dripline is to run in a month. */
  private record Need(DripRun run, Derived<TimeSpan> time) {}

  private static Optional<MonthNight.Asked> month(Plan plan, Facts in, Zone zone, int m) {
    List<DripRun> runs = zone.runs(in);
    Optional<Need> thirstiest =
        runs.stream()
            .flatMap(r -> need(r, in, m).map(time -> new Need(r, time)).stream())
            .max(Comparator.comparing((Need n) -> n.time().value()))
            .filter(n -> n.time().value().minutes() >= TimerProgram.LEAST_MINUTES);
    if (thirstiest.isEmpty()) {
      return Optional.empty();
    }
    Derived<TimeSpan> need = thirstiest.get().time();
    Turns turns = Turns.of(plan, in, runs);
    Optional<Derived<TimeSpan>> wait = wait(runs, in, m);
    TimerProgram program =
        TimerProgram.of(need.value().minutes(), Months.days(m), apart(wait), turns.longest());
    return Optional.of(
        new MonthNight.Asked(m, thirstiest.get().run().bed(), need, wait, turns, program));
  }

  private static Optional<Derived<TimeSpan>> need(DripRun run, Facts in, int m) {
    BedHydraulics bed = BedHydraulics.of(run.bed(), in);
    if (bed.outflow().rate().value().metres() <= 0) {
      return Optional.empty();
    }
    return PeakNeed.of(run, in.all(WaterDemand.KEY))
        .map(
            peak ->
                Derived.by(
                        "need / bed area / (application rate × efficiency) × 1 h",
                        WaterBudget.EFFICIENCIES)
                    .from("need of " + Months.name(m), peak.monthly().get(m))
                    .from("bed area", run.on().area())
                    .from("application rate", bed.outflow().rate())
                    .from("efficiency", WaterBudget.DRIP_EFFICIENCY)
                    .gives(
                        RunTime.of(
                            Length.metres(
                                peak.monthly().get(m).value().cubicMetres()
                                    / run.on().area().squareMetres()),
                            bed.outflow().rate().value(),
                            WaterBudget.DRIP_EFFICIENCY)));
  }

  /** How long the first plant to dry out can wait. */
  private static Optional<Derived<TimeSpan>> wait(List<DripRun> runs, Facts in, int m) {
    return runs.stream()
        .flatMap(r -> WateringInterval.of(r, m, in).stream())
        .min(Comparator.comparing(Derived::value));
  }

  private static int apart(Optional<Derived<TimeSpan>> wait) {
    return wait.map(w -> (int) Math.floor(w.value().days()))
        .map(days -> Math.max(1, Math.min(MOST_APART, days)))
        .orElse(USUAL_APART);
  }
}
