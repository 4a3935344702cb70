package yardloom.water.timetable;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.drip.DripRun;
import yardloom.water.line.BedHydraulics;
import yardloom.water.timetable.formula.CycleSoak;
import yardloom.water.timetable.formula.TimerProgram;

/**
 * How long the dripline of several beds may run at once until the first of them runs off.
 *
 * @param rate of the fastest of them
 * @param intake of the soil; empty where nothing is known
 * @param limit the longest turn; empty where the soil keeps up
 */
record Turns(Length rate, Optional<Length> intake, Optional<Derived<TimeSpan>> limit) {
  private static final Source CYCLE_SOAK =
      Source.commonPractice("cycle and soak: a turn ends before water runs off");

  static Turns of(Plan plan, Facts in, List<DripRun> runs) {
    Derived<Length> rate =
        runs.stream()
            .map(r -> BedHydraulics.of(r.bed(), in).outflow().rate())
            .max(Comparator.comparing(Derived::value))
            .orElseThrow();
    Optional<Derived<Length>> intake = in.find(YardFacts.SOIL).flatMap(SoilProfile::intakePerHour);
    return new Turns(
        rate.value(),
        intake.map(Derived::value),
        intake
            .filter(i -> rate.value().compareTo(i.value()) > 0)
            .map(i -> limit(storage(plan, in, runs), rate, i)));
  }

  private static Derived<TimeSpan> limit(
      Derived<Length> storage, Derived<Length> rate, Derived<Length> intake) {
    return Derived.by("storage / (application rate − intake) × 1 h", CYCLE_SOAK)
        .from("storage", storage)
        .from("application rate", rate)
        .from("intake", intake)
        .gives(CycleSoak.longestTurn(storage.value(), rate.value(), intake.value()));
  }

  /** In minutes; infinite where the soil keeps up. */
  double longest() {
    return limit.map(l -> l.value().minutes()).orElse(Double.POSITIVE_INFINITY);
  }

  /** The wait between the turns of a program, in whole minutes; none where it has one turn. */
  TimeSpan soak(TimerProgram program) {
    return intake
        .filter(i -> program.turns() > 1)
        .map(i -> CycleSoak.soak(TimeSpan.minutes(program.turnMinutes()), rate, i))
        .map(s -> TimeSpan.minutes(Math.ceil(s.minutes())))
        .orElse(TimeSpan.ZERO);
  }

  private static Derived<Length> storage(Plan plan, Facts in, List<DripRun> runs) {
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    double steepest =
        runs.stream()
            .flatMap(r -> surface.flatMap(s -> s.slopeAt(r.on().shape().heart())).stream())
            .mapToDouble(s -> s.ratio())
            .max()
            .orElse(0);
    return SurfaceStorage.of(in.get(YardFacts.SOIL).texture(), steepest);
  }
}
