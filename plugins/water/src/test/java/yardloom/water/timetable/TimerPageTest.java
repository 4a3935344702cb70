package yardloom.water.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.water.RoofYard;
import yardloom.water.line.BedHydraulics;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankWords;
import yardloom.water.tank.TankYear;
import yardloom.water.timetable.formula.TimerProgram;
import yardloom.water.zone.Zone;

/** The page beside the timer of one zone, worked by hand. */
class TimerPageTest {
  private static final ElementId BED = new ElementId(ElementKind.BED, "greens");

  private static Derived<Flow> flow(double lph) {
    return Derived.by("told", Source.commonPractice("told")).gives(Flow.litresPerHour(lph));
  }

  private static ZoneTimes.Month month(int month, double needMin, TimerProgram program, int soak) {
    return new ZoneTimes.Month(
        month,
        BED,
        Derived.by("told", Source.commonPractice("told")).gives(TimeSpan.minutes(needMin)),
        program,
        TimeSpan.minutes(soak),
        Optional.of(LocalTime.of(4, 5)),
        Limits.NONE);
  }

  /**
   * July: 1,550 minutes are 350 in 7 of 31 days; every third day is three days a week, 116.7 each.
   * June: 900 of 30 days are 210, every seventh day at once; May's 620 are 140 on each second day,
   * four of them, 35.
   */
  @Test
  void byHand_isTheWeeksWater_onTheDaysOfTheTimer() {
    Calculator told =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(ZoneTimes.KEY, Zone.KEY);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            out.give(Zone.KEY, new Zone(1, "", List.of(BED), flow(1), flow(2)));
            out.give(
                ZoneTimes.KEY,
                new ZoneTimes(
                    1,
                    List.of(
                        month(4, 620, new TimerProgram(2, 2, 20), 33),
                        month(5, 900, new TimerProgram(7, 1, 210), 0),
                        month(6, 1550, new TimerProgram(3, 1, 150), 0))));
          }
        };
    Plan plan =
        new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR")).freeze();
    assertEquals(
        List.of(
            "Zone 1: greens |  |  | ",
            "Every … days | 2 | 7 | 3",
            "Start | 04:05 | 04:05 | 04:05",
            "Minutes | 2 × 20, rest 33 | 210 | 150",
            "By hand, a week | 4 × 35 | 1 × 210 | 3 × 117"),
        RoofYard.printed(new TimerPageTable().make(plan, FactGraph.of(List.of(told)).run(plan))));
  }

  /**
   * A tank that is carried from: 120 L/h for 150 minutes are 300 L, of 3.785 L to the gallon 79.3;
   * litres are read first in a metric plan.
   */
  @Test
  void carried_isSaidInTheUnitsOfThePlanFirst() {
    Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));
    TankWords.tank(
        new PlanScope(draft, new SourceRef("tank.groovy", 4, 1)),
        "cistern",
        Point.metres(3, 2),
        "roof",
        null,
        t -> TankWords.box(t, Length.metres(0.5), Length.metres(0.8), Length.metres(1.25), 2));
    Plan plan = draft.freeze();
    TankPlan tank = plan.attributes().all(TankPlan.KEY).get(0).value();
    TankYear.Month all =
        new TankYear.Month(Volume.litres(9), Volume.litres(9), 1, 1, Length.metres(1));
    Calculator told =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(ZoneTimes.KEY, Zone.KEY, TankYear.KEY, BedHydraulics.KEY);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            Derived.Builder why = Derived.by("told", Source.commonPractice("told"));
            out.give(Zone.KEY, new Zone(1, "", List.of(BED), flow(1), flow(2)));
            out.give(
                TankYear.KEY,
                new TankYear(
                    tank,
                    Collections.nCopies(12, all),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    3));
            out.give(
                BedHydraulics.KEY,
                new BedHydraulics(
                    BED,
                    1,
                    new BedHydraulics.Outflow(flow(120), why.gives(Length.millimetres(4))),
                    new BedHydraulics.Pressures(
                        why.gives(Pressure.pascals(5)), why.gives(Pressure.pascals(6))),
                    new BedHydraulics.Evenness(why.gives(0.07), Optional.empty(), why.gives(0.08)),
                    new BedHydraulics.Rows(
                        why.gives(0.09), Length.metres(10), why.gives(Length.metres(11)))));
            out.give(
                ZoneTimes.KEY,
                new ZoneTimes(1, List.of(month(6, 1550, new TimerProgram(3, 1, 150), 0))));
          }
        };
    assertEquals(
        "Or from the tank, each | 300 L (79 gal)",
        RoofYard.printed(new TimerPageTable().make(plan, FactGraph.of(List.of(told)).run(plan)))
            .get(6));
  }
}
