package yardloom.water.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.ClimateNormals;
import yardloom.facts.SoilProfile;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
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
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.RoofYard;
import yardloom.water.drip.DripCalculator;
import yardloom.water.drip.DripWords;
import yardloom.water.drip.RouteCalculator;
import yardloom.water.line.LineCalculator;
import yardloom.water.need.EffectiveRain;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.timetable.formula.RainSaved;
import yardloom.water.timetable.formula.SoilWater;
import yardloom.water.timetable.formula.TimerProgram;
import yardloom.water.zone.ZoneCalculator;

/** How long a rain waters a zone, by hand. */
class RainOffTest {
  private static final SourceRef HERE = new SourceRef("rain.groovy", 6, 1);
  private static final Source SAYS = Source.commonPractice("told by the test");
  private static final ElementId BED = new ElementId(ElementKind.BED, "greens");

  private static Length mm(double mm) {
    return Length.millimetres(mm);
  }

  /**
   * Ready water of FAO-56 Example 36 (from memory): onions on silt, 0.4 m of 170 mm/m at 0.3, and
   * tomatoes, 0.8 m at 0.4. At 5 mm a day 80 mm of rain last as long as these, 15 mm three days.
   */
  @ParameterizedTest
  @CsvSource({"0.4, 0.30, 80, 4.08", "0.8, 0.40, 80, 10.88", "0.4, 0.30, 15, 3", "0.8, 0.4, 0, 0"})
  void rain_lastsAsLongAsWhatStaysOfIt(double rootM, double share, double rainMm, double days) {
    Length ready = SoilWater.ready(SoilWater.total(0.17, 0, Length.metres(rootM)), share);
    assertEquals(days, RainSaved.of(mm(rainMm), ready, mm(5)).days(), 0.005);
  }

  @Test
  void noUse_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> RainSaved.of(mm(12), mm(20), Length.ZERO));
  }

  /** Whatever was drawn before, plants that are left so many days have not passed ready water. */
  @Property(tries = 300, seed = "20261128")
  void plantsLeftSoLong_areNeverShort(
      @ForAll @DoubleRange(min = 0, max = 1) double drawn,
      @ForAll @DoubleRange(min = 0, max = 80) double rainMm,
      @ForAll @DoubleRange(min = 3, max = 60) double readyMm,
      @ForAll @DoubleRange(min = 0.5, max = 9) double useMm) {
    Length total = mm(readyMm * 2);
    int days = (int) RainSaved.of(mm(rainMm), mm(readyMm), mm(useMm)).days();
    Length depletion = SoilWater.depleted(mm(readyMm * drawn), Length.ZERO, mm(rainMm), total);
    for (int d = 0; d < days; d++) {
      depletion = SoilWater.depleted(depletion, mm(useMm), Length.ZERO, total);
    }
    assertTrue(depletion.millimetres() <= readyMm + 1e-9, depletion + " of " + readyMm);
  }

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));

  RainOffTest() {
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

  private static Stand stand(String plant, double kc, double rootM, double easy) {
    return new Stand(
        BED,
        HERE,
        new Stand.Kind(plant, "", Length.metres(1)),
        new Stand.Placed(List.of(Point.metres(3, 2.2)), Area.squareMetres(1.1), Optional.empty()),
        new Stand.Thirst(
            Collections.nCopies(12, kc),
            SAYS,
            Optional.of(new Stand.Roots(Length.metres(rootM), easy, SAYS, true))),
        Stand.Planted.THROUGH_CARDBOARD);
  }

  private static Derived.Builder told() {
    return Derived.by("told", SAYS);
  }

  private static ZoneTimes.Month month(int month, int minutes) {
    return new ZoneTimes.Month(
        month,
        BED,
        told().gives(TimeSpan.minutes(620)),
        new TimerProgram(2, 1, minutes),
        TimeSpan.ZERO,
        Optional.empty(),
        Limits.NONE);
  }

  /** 180 mm of ET and no rain in June, 155 and 62 in July; soil of 170 mm/m, 0.6 m deep. */
  private Results run(boolean hasSoil) {
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
                YardFacts.SOIL,
                YardFacts.CLIMATE,
                ZoneTimes.KEY,
                MonthlyWeather.KEY);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            out.give(YardFacts.STANDS, stand("tomato", 1.15, 0.7, 0.40));
            out.give(YardFacts.STANDS, stand("lettuce", 0.95, 0.3, 0.30));
            if (hasSoil) {
              out.give(
                  YardFacts.SOIL,
                  new SoilProfile(
                      "silt",
                      false,
                      Length.metres(0.6),
                      told().gives(0.17),
                      told().gives(mm(102)),
                      Optional.empty()));
            }
            out.give(
                YardFacts.CLIMATE,
                new ClimateNormals(
                    "told",
                    IntStream.range(0, 12)
                        .mapToObj(
                            m ->
                                new ClimateNormals.Month(
                                    mm(m == 6 ? 62 : 0),
                                    Temperature.celsius(9 + m),
                                    Optional.empty(),
                                    Optional.empty()))
                        .toList(),
                    SAYS,
                    SAYS));
            List<Derived<Length>> et = new ArrayList<>();
            for (int m = 0; m < 12; m++) {
              et.add(told().gives(mm(m == 5 ? 180 : 155)));
            }
            out.give(MonthlyWeather.KEY, new MonthlyWeather(et, et, "told", EffectiveRain.CROPWAT));
            out.give(ZoneTimes.KEY, new ZoneTimes(1, List.of(month(5, 33), month(6, 27))));
          }
        };
    return FactGraph.of(
            List.of(
                told,
                new RouteCalculator(),
                new DripCalculator(),
                new ZoneCalculator(),
                new LineCalculator()))
        .run(draft.freeze());
  }

  /**
   * July, 5 mm a day: of 62 mm 1 − 0.2 × 62 / 125 = 0.9008 is of use, of 12 mm 10.81, of 25 mm
   * 22.52. Tomatoes use 5.75 a day: 1.88 and 3.92 days, below their ready water of 102 × (0.4 −
   * 0.04 × 0.75) = 37.7 mm. Lettuce uses 4.75 and holds 51 × (0.3 + 0.04 × 0.25) = 15.8 mm: 2.28
   * days, and no more than 3.33.
   *
   * <p>June, 6 mm a day, has less rain than that: of 12 mm alone 1 − 0.2 × 12 / 125 = 0.9808 is of
   * use, of 25 mm 0.96. Tomatoes, 6.9 a day: 11.77 mm are 1.71 days; lettuce, 5.7, holds 51 × 0.272
   * = 13.9 mm, 2.43 days.
   */
  @Test
  void days_areThoseOfThePlantThatHasUsedItFirst() {
    assertEquals(
        List.of("1 | 12 mm | 1.7 | 1.9", "1 | 25 mm | 2.4 | 3.3"),
        RoofYard.printed(new RainOffTable().make(draft.freeze(), run(true))));
  }

  /** Whole days on the page; 62 mm of 31 days are 14 mm a week. */
  @Test
  void page_saysWholeDays_andTheRainThatIsCountedOn() {
    List<String> page = RoofYard.printed(new TimerPageTable().make(draft.freeze(), run(true)));
    assertEquals("Rain counted on, a week | 0 mm | 14 mm", page.get(0));
    assertTrue(page.contains("Off after 12 mm, days | 1 | 1"), page::toString);
    assertTrue(page.contains("Off after 25 mm, days | 2 | 3"), page::toString);
  }

  /** Without a soil nobody knows what stays: the old rule alone. */
  @Test
  void page_withoutSoil_keepsTheRuleOfThumb() {
    Results results = run(false);
    assertTrue(RoofYard.printed(new RainOffTable().make(draft.freeze(), results)).isEmpty());
    String page =
        String.join("\n", RoofYard.printed(new TimerPageTable().make(draft.freeze(), results)));
    assertFalse(page.contains("Off after") || page.contains("counted on"), page);
    assertFalse(TimerPageTable.saysRain(results));
  }
}
