package yardloom.water.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.BillLine;
import yardloom.facts.DailyRain;
import yardloom.facts.YardFacts;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.Volume;
import yardloom.water.RoofYard;

/** A tank below a roof of 100 m², from its words to the printed tables, worked by hand. */
class TankByHandTest {
  private final RoofYard yard = new RoofYard().give(YardFacts.DAILY_RAIN, rain());

  private static Length m(double metres) {
    return Length.metres(metres);
  }

  /** Two boxes of 0.5 by 0.8 by 1 m: 400 L each. */
  private void boxes(Consumer<TankScope> more) {
    yard.tank(
        "cistern",
        5,
        "main",
        t -> {
          TankWords.box(t, m(0.5), m(0.8), m(1), 2);
          more.accept(t);
        });
  }

  /** Two years: 25.4 and 10 mm on the first days of one, 5 mm on the first day of the other. */
  private static DailyRain rain() {
    List<DailyRain.Day> days = new ArrayList<>();
    LocalDate start = LocalDate.of(2021, 1, 1);
    for (int d = 0; d < 730; d++) {
      double mm = d == 0 ? 25.4 : d == 1 ? 10 : d == 365 ? 5 : 0;
      days.add(new DailyRain.Day(start.plusDays(d), Length.millimetres(mm)));
    }
    return new DailyRain("a gauge", Source.commonPractice("told by the test"), days);
  }

  /**
   * 2.4 mm of the first rain after dry days are led past, and 0.95 × 0.8 of the rest comes in: the
   * first year 100 m² × (23 + 10) mm × 0.76 = 2508 L, the second 100 × 2.6 × 0.76 = 197.6 L; 1352.8
   * in the mean. 4 L a day are 1460 L a year.
   *
   * <p>First year, use before rain: nothing on the first day, which fills 800 L; then 4 L on 200
   * days, 165 days without. Second: 197.6 L are 49 days, the fiftieth is short; 316. In the mean
   * 498.8 L, 34.16 % (13.53 and 54.79 %), 240.5 days, and 1352.8 − 498.8 = 854 L run over.
   */
  @Test
  void tankYears_ofTwoRainyDays_arePrinted() {
    boxes(
        t -> {
          TankWords.otherUse(t, Volume.litres(4));
          TankWords.inlet(t, Length.millimetres(2.4), 0.8);
          TankWords.costs(t, 340);
        });
    Outcome outcome = yard.outcome();
    Table sizes = RoofYard.table(outcome, "tank-sizes");
    assertEquals(9, sizes.rows().size(), "the eight sizes of all, and its own");
    assertEquals(
        "800 | cistern | 499 | 14 | 34 | 55 | 241 | 854 | 0.62 | 800",
        RoofYard.printed(sizes).get(2));
    String notes = String.join("\n", sizes.notes());
    assertTrue(notes.contains("Day by day through a gauge"), notes);
    assertTrue(notes.contains("364 days in a row without rain at most"), notes);
    assertTrue(notes.contains("Dry and wet year are the worst and best of these."), notes);
    // 340 / 0.4988 m³
    assertTrue(notes.contains("It costs 682 USD for each cubic metre"), notes);
    TankCurve.Point own = outcome.results().all(TankCurve.KEY).get(0).own().orElseThrow();
    assertEquals(498.8, own.used().litres(), 1e-6);
    assertEquals(854, own.overflow().litres(), 1e-6);
    assertEquals(240.5, own.emptyDays(), 1e-9);
    assertEquals(197.6 / 1460, own.dry(), 1e-9);
    assertEquals(800.0 / 1460, own.wet(), 1e-9);
  }

  /**
   * On the 31 evenings of January 800, 796 … 680 L of one year, 740 in the mean, and 197.6, 193.6 …
   * of the other, 137.6: between them 438.8 of 800 L, 0.5485 of a metre.
   */
  @Test
  void water_standsHalfFull_inJanuary() {
    boxes(
        t -> {
          TankWords.otherUse(t, Volume.litres(4));
          TankWords.inlet(t, Length.millimetres(2.4), 0.8);
        });
    TankYear year = yard.outcome().results().all(TankYear.KEY).get(0);
    assertEquals(0.5485, year.months().get(0).water().metres(), 1e-9);
  }

  /**
   * Rain before use: the first day is served too, so that 801 days' worth is not: 800 L less 4 on
   * each of 200 days, the first of them the day of rain. The tank spills before it is used, so the
   * second day fills it again: 4 + 800 L, 201 days.
   */
  @Test
  void order_rainBeforeUse_servesTheFirstDay() {
    boxes(
        t -> {
          TankWords.otherUse(t, Volume.litres(4));
          TankWords.inlet(t, Length.millimetres(2.4), 0.8);
          TankWords.order(t, "full then use");
        });
    TankCurve.Point own = yard.outcome().results().all(TankCurve.KEY).get(0).own().orElseThrow();
    // Second year 197.6 L again, from the first day on.
    assertEquals((804 + 197.6) / 2, own.used().litres(), 1e-6);
  }

  /** Whose roof has no tank need not know what one weighs. */
  @Test
  void weightOfAFullTank_isSaidOnlyWhereOneStands() {
    assertEquals(List.of(), weights());
    boxes(t -> {});
    assertEquals(1, weights().size());
  }

  private List<String> weights() {
    return yard.outcome().cautions().stream()
        .map(Caution::text)
        .filter(t -> t.startsWith("A full tank weighs 1 kg a litre"))
        .toList();
  }

  /** Water of 400 L on 0.4 m² one metre high presses with 999.1 × 9.80665 Pa = 9.8 kPa. */
  @Test
  void tanks_arePrintedWithWhatTheyWeighAndPress() {
    boxes(t -> TankWords.stand(t, m(0.5)));
    assertEquals(
        List.of("cistern | main | 2 | 400 | 800 | 400 | 0.4 | 10 | 50"),
        RoofYard.printed(RoofYard.table(yard.outcome(), "tanks")).stream()
            .map(r -> r.replace("0.40", "0.4").replace("50.0", "50"))
            .toList());
  }

  /**
   * Head of the stand and of the water, full or 4 in (0.1016 m) deep: half a metre of stand gives
   * 14.7 and 5.9 kPa (0.85 psi, less than the 1 psi of plain outlets), a metre 19.6 and 10.8, six
   * metres 68.6 and 59.8 kPa (8.7 psi, above the 7 of compensating ones); 0.4 m of water on the
   * ground 3.9 kPa (0.57 psi).
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 1, 14.70, 5.89, plain outlets while it is full; then a can",
    "1, 1, 19.60, 10.79, 'plain outlets, soaker hose'",
    "6, 1, 68.58, 59.78, compensating dripline",
    "0, 0.4, 3.92, 1.00, a can"
  })
  void head_saysWhatTheTankRuns(double standM, double highM, double full, double low, String use) {
    yard.tank(
        "butt",
        5,
        "main",
        t -> {
          TankWords.round(t, m(2), m(highM), null);
          TankWords.stand(t, m(standM));
        });
    Table table = RoofYard.table(yard.outcome(), "tank-head");
    String[] cells = RoofYard.printed(table).get(0).split(" \\| ");
    assertEquals("greens", cells[0]);
    assertEquals("butt", cells[1]);
    assertEquals(full, kilopascals(table, 3), 0.006);
    assertEquals(low, kilopascals(table, 4), 0.006);
    assertEquals(use, cells[5]);
  }

  private static double kilopascals(Table table, int column) {
    return ((Pressure) table.rows().get(0).get(column).value().orElseThrow()).kilopascals();
  }

  @Test
  void bill_hasEachTankAndValve_andOneInlet() {
    boxes(t -> {});
    List<BillLine> bill = yard.outcome().results().all(YardFacts.BILL);
    List<String> lines =
        bill.stream().map(l -> l.order().value() + " " + l.item()).sorted().toList();
    assertEquals(4, lines.size());
    assertTrue(lines.contains("1 first-flush pipe with a cap to clean it"), lines.toString());
    assertTrue(lines.contains("2 valve at the foot of a tank"), lines.toString());
    assertTrue(
        lines.stream().anyMatch(l -> l.startsWith("2 tank of ") && l.endsWith(", rectangular")),
        lines.toString());
  }

  private List<String> said() {
    return yard.said("water.tank");
  }

  /**
   * The middle of 1 m on a stand of 0.5 m is 1 m up, twice the foot of 0.5 m; on the ground 0.5.
   */
  @Test
  void tallTanks_tip_lowOnesDoNot() {
    boxes(t -> TankWords.stand(t, m(0.5)));
    assertEquals(1, said().size());
    assertTrue(said().get(0).contains("2.0 times as high as its foot is wide"), said().get(0));
    TankByHandTest low = new TankByHandTest();
    low.boxes(t -> {});
    assertEquals(List.of(), low.said());
  }

  @Test
  void unknownRoofsAndBeds_areTold_withThoseThatAre() {
    yard.tank(
        "butt",
        5,
        "mian",
        t -> {
          TankWords.round(t, m(1), m(1), 1);
          TankWords.serves(t, List.of("greens", "grens"));
        });
    String said = String.join("\n", said());
    assertEquals(2, said.lines().count());
    assertTrue(said.contains("there is no roof 'mian'"), said);
    assertTrue(said.contains("there is no bed or tree 'grens'"), said);
  }

  /** Two tanks of 1 m reach from 9.5 m to 11.55 m: over a lot that ends at 11 m, not at 12. */
  @Test
  void linkedTanks_standOnTheLot_andOutsideTheHouse() {
    for (double end : new double[] {11, 12}) {
      RoofYard other =
          new RoofYard().lot(end).tank("butts", 10, "main", t -> TankWords.round(t, m(1), m(1), 2));
      assertEquals(end == 11, !other.said("water.tank").isEmpty());
    }
    yard.house(RoofYard.box(11, 8, 3, 3));
    yard.tank("butts", 10, "main", t -> TankWords.round(t, m(1), m(1), 2));
    assertTrue(said().get(0).contains("it stands inside 'house'"), said().toString());
  }

  private static void refused(ProblemCode code, Consumer<TankScope> word) {
    PlanException e =
        assertThrows(PlanException.class, () -> new RoofYard().tank("x", 5, "main", word));
    assertEquals(code, e.problems().get(0).code(), e.getMessage());
  }

  @Test
  void words_haveTheirRanges() {
    ProblemCode range = ProblemCode.OUT_OF_RANGE;
    Length inch = Length.inches(1);
    refused(range, t -> TankWords.round(t, Length.inches(5.9), m(1), 1));
    refused(range, t -> TankWords.round(t, m(1), m(6.1), 1));
    refused(range, t -> TankWords.box(t, inch, m(1), m(1), 1));
    refused(range, t -> TankWords.box(t, m(1), inch, m(1), 1));
    refused(range, t -> TankWords.box(t, m(1), m(1), inch, 1));
    refused(range, t -> TankWords.round(t, m(1), m(1), 0));
    refused(range, t -> TankWords.round(t, m(1), m(1), 21));
    refused(range, t -> TankWords.stand(t, m(-0.1)));
    refused(range, t -> TankWords.stand(t, m(6.1)));
    refused(range, t -> TankWords.otherUse(t, Volume.litres(-1)));
    refused(range, t -> TankWords.otherUse(t, Volume.litres(10_001)));
    refused(range, t -> TankWords.inlet(t, Length.millimetres(-0.1), 0.9));
    refused(range, t -> TankWords.inlet(t, Length.millimetres(5.1), 0.9));
    refused(range, t -> TankWords.inlet(t, null, 0));
    refused(range, t -> TankWords.inlet(t, null, 1.1));
    refused(range, t -> TankWords.costs(t, 0));
    refused(ProblemCode.MISSING_OPTION, t -> {});
    refused(
        ProblemCode.DUPLICATE,
        t -> {
          TankWords.round(t, m(1), m(1), 1);
          TankWords.box(t, m(1), m(1), m(1), 1);
        });
    boxes(
        t -> {
          TankWords.stand(t, m(6));
          TankWords.inlet(t, Length.millimetres(5), 1);
          TankWords.otherUse(t, Volume.litres(10_000));
        });
    assertThrows(PlanException.class, () -> boxes(t -> {}), "the name is taken");
    new RoofYard().tank("ends", 5, "main", t -> TankWords.round(t, Length.inches(6), m(6), 20));
  }
}
