package yardloom.water.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.Stand;
import yardloom.facts.Sunrises;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PhaseDays;
import yardloom.facts.work.PlantingDay;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.RoofYard;
import yardloom.water.drip.DripCalculator;
import yardloom.water.drip.DripWords;
import yardloom.water.drip.RouteCalculator;
import yardloom.water.line.LineCalculator;
import yardloom.water.need.EffectiveRain;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.zone.ZoneCalculator;

/** A bed of one row from its planting days to what is keyed into the timer, worked by hand. */
class FirstWeeksTimerTest {
  private static final SourceRef HERE = new SourceRef("weeks.groovy", 5, 1);
  private static final Source SAYS = Source.commonPractice("told by the test");
  private static final ElementId BED = new ElementId(ElementKind.BED, "greens");

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));
  private final List<Stand> stands = new ArrayList<>();
  private final List<PlantingDay> days = new ArrayList<>();
  private final List<PhaseDays> phases = new ArrayList<>();

  /** 20 outlets of 2 L/h, half a spacing from the ends: 40 L/h. */
  FirstWeeksTimerTest() {
    draft.add(
        new ElementId(ElementKind.WATER_POINT, "tap"),
        HERE,
        c -> new Element.WaterPoint(c, Point.metres(0, 0), "mains"));
    Shape ground = Shape.rectangle(Point.metres(2, 2), Length.metres(6), Length.metres(0.4));
    DripWords.drip(
        new BedScope(
            draft,
            draft.add(BED, HERE, c -> new Element.Bed(c, ground, Element.BedUse.ANNUAL)),
            HERE),
        Flow.litresPerHour(2),
        Length.metres(0.3),
        Length.metres(0.4),
        true,
        null,
        0.01,
        null);
  }

  private void planted(String plant, double areaM2, double kc, int day) {
    stands.add(
        new Stand(
            BED,
            HERE,
            new Stand.Kind(plant, "", Length.metres(1)),
            new Stand.Placed(
                List.of(Point.metres(3, 2.2)), Area.squareMetres(areaM2), Optional.empty()),
            new Stand.Thirst(Collections.nCopies(12, kc), SAYS, Optional.empty()),
            Stand.Planted.THROUGH_CARDBOARD));
    days.add(new PlantingDay(plant, "planted", LocalDate.of(2027, 5, day)));
  }

  /** 155 mm of reference ET in May, 180 in June, hardly any rain; sunrise at 5:42 in May. */
  private Results run() {
    Calculator told =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(
                YardFacts.STANDS,
                YardFacts.PLANTING_DAYS,
                YardFacts.PHASE_DAYS,
                YardFacts.SUNRISES,
                MonthlyWeather.KEY);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            stands.forEach(s -> out.give(YardFacts.STANDS, s));
            days.forEach(d -> out.give(YardFacts.PLANTING_DAYS, d));
            phases.forEach(p -> out.give(YardFacts.PHASE_DAYS, p));
            List<Optional<LocalTime>> rises = new ArrayList<>();
            List<Derived<Length>> et = new ArrayList<>();
            List<Derived<Length>> rain = new ArrayList<>();
            for (int m = 0; m < 12; m++) {
              rises.add(Optional.of(m == 4 ? LocalTime.of(5, 42) : LocalTime.of(7, 13)));
              double etMm = m == 4 ? 155 : m == 5 ? 180 : 1;
              et.add(Derived.by("told", SAYS).gives(Length.millimetres(etMm)));
              rain.add(Derived.by("told", SAYS).gives(Length.millimetres(0.5)));
            }
            out.give(YardFacts.SUNRISES, new Sunrises(rises));
            out.give(
                MonthlyWeather.KEY,
                new MonthlyWeather(et, rain, "told", EffectiveRain.values()[0]));
          }
        };
    return FactGraph.of(
            List.of(
                told,
                new RouteCalculator(),
                new DripCalculator(),
                new ZoneCalculator(),
                new LineCalculator(),
                new FirstWeeksCalculator()))
        .run(draft.freeze());
  }

  /**
   * 9.59 m² at 0.9: 5 mm a day in May, 9.59 × 4.5 / 0.81 = 53.3 L a day, 79.9 min at 40 L/h; for
   * two days 159.8 min; three days of June with 6 mm 191.8 L, 287.7 min. Each up to whole minutes,
   * ending 10 min before sunrise, down to five: 5:42 less 90, 170 and 298 min is 4:12, 2:52, 0:44.
   */
  @Test
  void kale_isKeyedInByItsThreeSteps() {
    planted("kale", 9.59, 0.9, 1);
    Results results = run();
    assertEquals(
        List.of(
            "Zone 1, for greens: kale |  |  |  |  |  |  |  |  | ",
            "1 to 14 | 1 May 2027 | 14 May 2027 | 1 | 04:10 | 1 | 80 |  | 1.3 | ",
            "15 to 30 | 15 May 2027 | 30 May 2027 | 2 | 02:50 | 1 | 160 |  | 2.7 | ",
            "31 to 45 | 31 May 2027 | 14 Jun 2027 | 3 | 00:40 | 1 | 288 |  | 4.8 | "),
        RoofYard.printed(new FirstWeeksTable().make(draft.freeze(), results)));
  }

  /** What is planted up to seven days after the first runs with it, later it has its own weeks. */
  @Test
  void plantsOfOneWeek_runTogether_laterOnesByThemselves() {
    planted("kale", 9.59, 0.9, 1);
    planted("leek", 3.3, 0.8, 8);
    planted("chard", 2.1, 0.85, 9);
    List<FirstWeeks> weeks = run().all(FirstWeeks.KEY);
    assertEquals(List.of("kale, leek", "chard"), weeks.stream().map(FirstWeeks::kinds).toList());
    assertEquals(
        List.of(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 5, 9)),
        weeks.stream().map(FirstWeeks::from).toList());
    // Both drink in the first step: (9.59 × 4.5 + 3.3 × 4) / 0.81 = 69.6 L, 104.4 min.
    assertEquals(105, weeks.get(0).weeks().get(0).program().turnMinutes());
  }

  private void laid(LocalDate from, LocalDate to) {
    phases.add(new PhaseDays(WorkPhase.DRIP, from, to));
    // The head is done weeks before, the chips come after: neither says when water runs.
    phases.add(new PhaseDays(WorkPhase.HEAD, from.minusDays(20), from.minusDays(19)));
    phases.add(new PhaseDays(WorkPhase.FINISH, to.plusDays(2), to.plusDays(3)));
  }

  private List<String> dates() {
    return RoofYard.printed(new FirstWeeksTable().make(draft.freeze(), run())).stream()
        .map(r -> r.split(" \\| ", -1))
        .map(c -> String.join(" | ", c[0], c[1], c[2], c[4], c[9]))
        .toList();
  }

  /**
   * Planted on 1 May, dripline laid on 18 and 19 May: keys from the 20th, the twentieth day, in the
   * middle of the second step; nineteen days by can.
   */
  @Test
  void plantsBeforeDripline_areWateredByCan_thenFromTheMorningAfterItIsLaid() {
    planted("kale", 9.59, 0.9, 1);
    laid(LocalDate.of(2027, 5, 18), LocalDate.of(2027, 5, 19));
    assertEquals(
        List.of(
            "Zone 1, for greens: kale |  |  |  | ",
            "1 to 19 | 1 May 2027 | 19 May 2027 |  | by can or hose",
            "20 to 30 | 20 May 2027 | 30 May 2027 | 02:50 | ",
            "31 to 45 | 31 May 2027 | 14 Jun 2027 | 00:40 | "),
        dates());
  }

  /** 53.3 L a day, as the timer would give: 9.59 m² × 4.5 mm / 0.81. */
  @Test
  void plantsBeforeDripline_areToldHowMuchToCarry() {
    planted("kale", 9.59, 0.9, 1);
    laid(LocalDate.of(2027, 5, 18), LocalDate.of(2027, 5, 19));
    FirstWeeks.Wait wait = run().all(FirstWeeks.KEY).get(0).waits().get(0);
    assertEquals(9.59 * 4.5 / 0.81, wait.daily().orElseThrow().value().litres(), 1e-6);
    assertEquals(
        "53",
        RoofYard.printed(new FirstWeeksTable().make(draft.freeze(), run()))
            .get(1)
            .split(" \\| ", -1)[10]
            .trim());
  }

  /** Laid on 14 June, the forty-fifth day: all of them by can, no key at all. */
  @Test
  void driplineAfterTheFirstWeeks_leavesThemToTheCan() {
    planted("kale", 9.59, 0.9, 1);
    laid(LocalDate.of(2027, 6, 14), LocalDate.of(2027, 6, 14));
    assertEquals(
        List.of("1 to 45 | 1 May 2027 | 14 Jun 2027 |  | by can or hose"),
        dates().stream().skip(1).toList());
  }

  /** Laid on 20 April: shut while the bed is bare, but not for leeks that join kale later. */
  @Test
  void driplineBeforePlants_staysShutOnBareGround() {
    planted("kale", 9.59, 0.9, 3);
    planted("leek", 3.3, 0.8, 17);
    laid(LocalDate.of(2027, 4, 19), LocalDate.of(2027, 4, 20));
    List<String> dates = dates();
    assertEquals(
        List.of(
            " | 21 Apr 2027 | 2 May 2027 |  | closed: bare",
            "1 to 14 | 3 May 2027 | 16 May 2027 | " + dates.get(2).split(" \\| ", -1)[3] + " | "),
        dates.subList(1, 3));
    assertEquals(1, dates.stream().filter(d -> d.contains("closed")).count(), dates::toString);
  }
}
