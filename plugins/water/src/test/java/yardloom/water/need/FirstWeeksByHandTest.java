package yardloom.water.need;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PhaseDays;
import yardloom.facts.work.PlantingDay;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
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
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.RoofYard;

/** Water of the first weeks after planting, worked by hand to the printed tables. */
class FirstWeeksByHandTest {
  private static final SourceRef HERE = new SourceRef("plants.groovy", 2, 1);
  private static final Source SAYS = Source.commonPractice("told by the test");

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "USD"));
  private final List<Stand> stands = new ArrayList<>();
  private final List<PlantingDay> days = new ArrayList<>();

  private final List<PhaseDays> laid = new ArrayList<>();

  private void stand(String bed, String plant, double areaM2, double kc, int fromMonth) {
    List<Double> year = new ArrayList<>(Collections.nCopies(12, kc));
    for (int m = 1; m < fromMonth; m++) {
      year.set(m - 1, 0.0);
    }
    stands.add(
        new Stand(
            new ElementId(ElementKind.BED, bed),
            HERE,
            new Stand.Kind(plant, "", Length.metres(1)),
            new Stand.Placed(
                List.of(Point.metres(1, 1)), Area.squareMetres(areaM2), Optional.empty()),
            new Stand.Thirst(year, SAYS, Optional.empty()),
            Stand.Planted.THROUGH_CARDBOARD));
  }

  private void planted(String plant, int month, int day) {
    days.add(new PlantingDay(plant, "planted", LocalDate.of(2027, month, day)));
  }

  private void tree(String name, double trunkIn) {
    Point at = Point.metres(9, 9);
    draft.add(
        new ElementId(ElementKind.TREE, name),
        HERE,
        c ->
            new Element.Tree(
                c,
                at,
                Shape.circle(at, Length.metres(2)),
                Length.metres(4),
                Length.metres(4),
                Length.metres(1),
                Length.inches(trunkIn),
                Element.Leaf.DECIDUOUS));
  }

  /** By millimetres of reference ET and of rain that plants can use, in May, June and July. */
  private static MonthlyWeather weather() {
    List<Derived<Length>> et = new ArrayList<>();
    List<Derived<Length>> rain = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      double etMm = m == 4 ? 155 : m == 5 ? 180 : m == 6 ? 217 : 1;
      double rainMm = m == 4 ? 100 : m == 5 ? 170 : 0;
      et.add(Derived.by("told", SAYS).gives(Length.millimetres(etMm)));
      rain.add(Derived.by("told", SAYS).gives(Length.millimetres(rainMm)));
    }
    return new MonthlyWeather(et, rain, "told", EffectiveRain.values()[0]);
  }

  private Table table(TableMaker maker) {
    Plan plan = draft.freeze();
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
                MonthlyWeather.KEY);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            stands.forEach(s -> out.give(YardFacts.STANDS, s));
            days.forEach(d -> out.give(YardFacts.PLANTING_DAYS, d));
            laid.forEach(d -> out.give(YardFacts.PHASE_DAYS, d));
            out.give(MonthlyWeather.KEY, weather());
          }
        };
    return maker.make(plan, FactGraph.of(List.of(told)).run(plan));
  }

  private List<String> rows(TableMaker maker) {
    return RoofYard.printed(table(maker)).stream()
        .map(r -> r.replaceAll("(\\d)\\.0+(?= |$)", "$1"))
        .toList();
  }

  /** What follows pea has no row: the crew does not plant it. It is named, and by whom it is. */
  @Test
  void whatFollowsAnother_isNamedBelow() {
    stand("A", "pea", 10, 0.9, 5);
    planted("pea", 5, 1);
    planted("bean", 5, 1);
    assertTrue(table(new TaperTable()).notes().stream().noneMatch(n -> n.contains("Not in")));
    Stand pea = stands.get(0);
    stands.add(
        new Stand(
            pea.in(),
            HERE,
            new Stand.Kind("bean", "", pea.kind().spread()),
            new Stand.Placed(pea.placed().at(), pea.placed().area(), Optional.empty()),
            new Stand.Thirst(pea.thirst().kc(), SAYS, Optional.empty()),
            new Stand.Planted(
                false, pea.planted().phase(), Optional.of(new Stand.Ground(HERE, "pea")))));
    assertEquals(3, rows(new TaperTable()).size());
    assertTrue(
        table(new TaperTable()).notes().stream()
            .anyMatch(
                n -> n.startsWith("Not in the rows: bean, which the household plants later")));
  }

  /**
   * 10 m² at 0.9 from 1 May. May has 155 / 31 = 5 mm a day: 10 × 4.5 / 0.81 = 55.6 L each day, 14
   * times; for two days 111.1 L, 8 times. The last step lies mostly in June, 180 / 30 = 6 mm: 10 ×
   * 5.4 × 3 / 0.81 = 200 L, 5 times. In June 170 mm of rain are more than 0.9 × 180 = 162 mm.
   */
  @Test
  void kale_fromMayOn_isWateredInThreeSteps() {
    stand("greens", "kale", 10, 0.9, 1);
    planted("kale", 5, 1);
    List<String> rows = rows(new TaperTable());
    assertEquals(3, rows.size());
    assertRow(rows.get(0), "1 May 2027", "14 May 2027", "every day", 14, 55.6, 778);
    assertRow(rows.get(1), "15 May 2027", "30 May 2027", "every second day", 8, 111.1, 889);
    assertRow(
        rows.get(2),
        "31 May 2027",
        "14 Jun 2027",
        "look every third day, water only if dry: rain usually does it then",
        5,
        200,
        1000);
  }

  private static void assertRow(
      String row, String from, String until, String when, int times, double each, double all) {
    List<String> cells = Stream.of(row.split(" \\| ")).toList();
    assertEquals(List.of("greens", "kale"), cells.subList(0, 2));
    assertEquals(List.of(from, until, when, String.valueOf(times)), cells.subList(2, 6));
    assertEquals(each, Double.parseDouble(cells.get(6).replace(" ", "")), 0.5);
    assertEquals(all, Double.parseDouble(cells.get(7).replace(" ", "")), 0.5);
  }

  /** Dripline laid until 19 May brings water from the 20th on. */
  @Test
  void until_theDriplineLies_itIsByCan() {
    stand("greens", "kale", 10, 0.9, 1);
    planted("kale", 5, 1);
    laid.add(new PhaseDays(WorkPhase.DRIP, LocalDate.of(2027, 5, 17), LocalDate.of(2027, 5, 19)));
    assertEquals(
        "By can or hose until the dripline lies; from 20 May 2027 the timer waters beds with"
            + " dripline.",
        table(new TaperTable()).notes().get(2));
  }

  /** Currants at rest until July: watered in on 10 May, then from 1 July on. */
  @Test
  void whatIsPlantedAtRest_isWateredFromItsLeavesOn() {
    stand("greens", "currant", 10, 0.9, 7);
    planted("currant", 5, 10);
    List<String> rows = rows(new TaperTable());
    assertEquals(4, rows.size());
    assertTrue(
        rows.get(0)
            .startsWith(
                "greens | currant | 10 May 2027 | 30 Jun 2027 | water in on the day, then none: it"
                    + " rests; look monthly"),
        rows.get(0));
    // July: 217 / 31 = 7 mm: 10 × 6.3 / 0.81 = 77.8 L, 1089 in all
    assertTrue(
        rows.get(1)
            .startsWith(
                "greens | currant | 1 Jul 2027 | 14 Jul 2027 | every day | 14 | 78 | 1 089"),
        rows.get(1));
  }

  /** Two kinds of one bed and day share their rows; without a day there are none. */
  @Test
  void kindsOfOneDay_shareTheirRows_andThoseWithoutADayHaveNone() {
    stand("greens", "kale", 10, 0.9, 1);
    stand("greens", "chard", 5, 0.9, 1);
    stand("greens", "leek", 5, 0.9, 1);
    planted("kale", 5, 1);
    planted("chard", 5, 1);
    List<String> rows = rows(new TaperTable());
    assertEquals(3, rows.size());
    // 15 m² × 4.5 mm / 0.81 = 83.3 L, 1167 in all
    assertTrue(
        rows.get(0)
            .startsWith(
                "greens | chard, kale | 1 May 2027 | 14 May 2027 | every day | 14 | 83 | 1 167"),
        rows.get(0));
  }

  /** Minnesota: 1 to 1.5 gal for each inch of trunk, 1.5 years for each: 2 in, 7.6 to 11.4 L. */
  @Test
  void newTree_isWateredByItsTrunk() {
    tree("apple", 2);
    List<String> rows = rows(new EstablishmentTable());
    assertEquals(1, rows.size());
    String[] cells = rows.get(0).split(" \\| ");
    assertEquals("apple", cells[0]);
    assertEquals("8", cells[3]);
    assertEquals("11", cells[4]);
    assertEquals(
        List.of("daily", "every 2 to 3 days", "weekly"), List.of(cells[5], cells[6], cells[7]));
    assertEquals(3, Double.parseDouble(cells[8]), 1e-9);
  }
}
