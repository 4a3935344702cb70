package yardloom.water.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import yardloom.water.RoofYard;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankWords;
import yardloom.water.tank.TankZone;
import yardloom.water.timetable.formula.TimerProgram;
import yardloom.water.zone.Zone;

/** How a tank sinks by a watering, worked by hand. */
class TankLevelTest {
  private static final ElementId BED = new ElementId(ElementKind.BED, "greens");

  private static Derived.Builder told() {
    return Derived.by("told", Source.commonPractice("told by the test"));
  }

  private static TankZone.Level level(String name, double waterM, double kPa, double lph) {
    return new TankZone.Level(
        name,
        Length.metres(waterM),
        told().gives(Pressure.kilopascals(kPa)),
        told().gives(Flow.litresPerHour(lph)),
        told().gives(0.07));
  }

  private static ZoneTimes.Month month(int month, TimerProgram program) {
    return new ZoneTimes.Month(
        month,
        BED,
        told().gives(TimeSpan.minutes(700)),
        program,
        TimeSpan.minutes(40),
        Optional.empty(),
        Limits.NONE);
  }

  /**
   * Two boxes of 0.5 by 0.8 by 1.25 m hold 1,000 L. July asks for most on a day, twice 35 minutes:
   * at 90 L/h 105 L, 0.105 of 1.25 m: 13.1 cm, whatever the level, since it is the same water.
   * Minutes are 70 × 90 / 130 = 48.5, 70 and 70 × 90 / 40 = 157.5.
   */
  @Test
  void tank_sinksByAWatering() {
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
    TankZone.Level low = level("nearly empty", 0.1, 3, 40);
    Calculator calculator =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(ZoneTimes.KEY, Zone.KEY, TankZone.KEY);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            Derived<Flow> flow = told().gives(Flow.litresPerHour(90));
            out.give(Zone.KEY, new Zone(1, "", List.of(BED), flow, flow));
            out.give(
                TankZone.KEY,
                new TankZone(
                    1,
                    tank,
                    List.of(level("full", 1.25, 14, 130), level("half full", 0.625, 8, 90), low),
                    Optional.of(low),
                    "water stands at its outlet"));
            out.give(
                ZoneTimes.KEY,
                new ZoneTimes(
                    1,
                    List.of(
                        month(5, new TimerProgram(4, 1, 66)),
                        month(6, new TimerProgram(2, 2, 35)))));
          }
        };
    assertEquals(
        List.of(
            "Zone 1: greens; peak in Jul |  |  |  |  |  |  | ",
            "full | 125.0 | 14 | 130 | 7 | 0.69 | 49 | 13.1",
            "half full | 62.5 | 8 | 90 | 7 | 1.00 | 70 | 13.1",
            "nearly empty: stop | 10.0 | 3 | 40 | 7 | 2.25 | 158 | 13.1"),
        RoofYard.printed(
            new TankLevelTable().make(plan, FactGraph.of(List.of(calculator)).run(plan))));
  }
}
