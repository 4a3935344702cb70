package yardloom.water.overflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import yardloom.facts.BillLine;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.water.RoofYard;
import yardloom.water.roof.RoofWords;
import yardloom.water.tank.TankWords;

/** What a full tank lets go: pipe, basin and rain garden, worked by hand. */
class OverflowByHandTest {
  private static final Source SAYS = Source.commonPractice("told by the test");

  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static Length mm(double millimetres) {
    return Length.millimetres(millimetres);
  }

  /** A butt of 1 m at (5, 10). */
  private static RoofYard butt() {
    return new RoofYard().tank("butt", 5, "main", t -> TankWords.round(t, m(1), m(1), 1));
  }

  private static RoofYard led(RoofYard yard, double fromX, double toX, double insideMm) {
    OverflowWords.overflow(
        yard.plan(),
        Line.between(Point.metres(fromX, 10), Point.metres(toX, 10)),
        "butt",
        mm(insideMm));
    return yard;
  }

  private static List<String> said(RoofYard yard) {
    return yard.said("water.overflow");
  }

  @Test
  void tankWithoutOverflow_andOverflowWithoutTank_areTold() {
    assertEquals(List.of("the tank 'butt' has no overflow"), said(butt()));
    RoofYard yard = led(new RoofYard(), 5, 12, 75);
    assertEquals(List.of("there is no tank 'butt' for the overflow"), said(yard));
    assertEquals(List.of(), said(led(butt(), 5, 12, 75)));
  }

  /** From the tank it may begin 3 ft (0.914 m) and its width off: 1.914 m. */
  @Test
  void overflow_beginsAtTheTank() {
    assertEquals(List.of(), said(led(butt(), 6.9, 12, 75)));
    assertEquals(
        List.of("the overflow of 'butt' does not begin at the tank"),
        said(led(butt(), 6.95, 12, 75)));
  }

  /** It ends 2 m (6.6 ft) from a house, or 3.1 m, which is more than 10 ft (3.048 m). */
  @Test
  void overflow_endsTenFeetFromHouses() {
    RoofYard near = led(butt(), 5, 12, 75).house(RoofYard.box(14, 8, 3, 4));
    assertEquals(List.of("the overflow of 'butt' ends 2.00 m (6.6 ft) from 'house'"), said(near));
    assertEquals(List.of(), said(led(butt(), 5, 12, 75).house(RoofYard.box(15.1, 8, 3, 4))));
  }

  /** Two downspouts of 50 mm: a pipe of 70.7 mm is as wide; 75 is enough, 70 is not. */
  @Test
  void overflow_isAsWideAsTheDownspouts() {
    for (double inside : new double[] {70, 75}) {
      RoofYard yard = led(butt(), 5, 12, inside);
      for (double x : new double[] {1, 19}) {
        RoofWords.downspout(yard.plan(), Point.metres(x, 0), "main", mm(50), null, null);
      }
      assertEquals(
          inside == 70
              ? List.of("the overflow of 'butt' is narrower than the downspouts that fill the tank")
              : List.of(),
          said(yard));
    }
  }

  /** 7 m as drawn, a tenth more to order. */
  @Test
  void pipe_isBilledWithATenthForOffcuts() {
    List<BillLine> bill = led(butt(), 5, 12, 75).outcome().results().all(YardFacts.BILL);
    BillLine pipe =
        bill.stream()
            .filter(l -> l.item().equals("overflow pipe, 75 mm inside"))
            .findFirst()
            .orElseThrow();
    assertEquals(7, ((Length) pipe.exact().value()).metres(), 1e-9);
    assertEquals(7.7, ((Length) pipe.order().value()).metres(), 1e-9);
  }

  private static RoofYard basin(RoofYard yard, double depthM, String drains) {
    OverflowWords.basin(
        yard.plan(), "hollow", RoofYard.box(30, 0, 4, 3), drains, m(depthM), null, null);
    return yard;
  }

  private static SoilProfile soil(String texture, double mmPerHour) {
    return new SoilProfile(
        texture,
        false,
        Length.feet(2),
        Derived.by("told", SAYS).gives(0.15),
        Derived.by("told", SAYS).gives(Length.inches(3)),
        Optional.of(Derived.by("told", SAYS).gives(mm(mmPerHour))));
  }

  /**
   * TR-55: a roof has number 98, S = 0.20408 in; of an inch (0.95918)² / 1.16327 = 0.79090 in run
   * off, 20.089 mm: 2009 L of 100 m². The basin of 12 m² holds 1800 L at 15 cm, 90 %, and sinks in
   * within 15 hours at 10 mm an hour; the house is 5 m off.
   */
  @Test
  void basin_isPrintedWithStormAndSoil() {
    RoofYard yard =
        basin(new RoofYard(), 0.15, "main")
            .give(YardFacts.SOIL, soil("loam", 10))
            .house(RoofYard.box(39, 0, 3, 3));
    List<String> rows = RoofYard.printed(RoofYard.table(yard.outcome(), "basins"));
    assertEquals(
        List.of("hollow | main | 25 | 2 009 | 12 | 15 | 1 800 | 90 | 15 | 5"), plain(rows));
    assertEquals(
        1,
        yard.said("water.basin").stream().filter(f -> f.contains("it holds")).count(),
        "less than the storm brings");
  }

  /** Rows without zeros after the point. */
  private static List<String> plain(List<String> rows) {
    return rows.stream().map(r -> r.replaceAll("(\\d)\\.0+(?= |$)", "$1")).toList();
  }

  /** 20 cm hold 2400 L, which is enough; 25 hours at 8 mm are a day and more, 24 at 8.34 not. */
  @Test
  void basin_isLargeEnough_dryInADay_offTheHouseAndOnTheLot() {
    RoofYard good = basin(new RoofYard(), 0.2, "main").give(YardFacts.SOIL, soil("loam", 8.34));
    assertEquals(List.of(), good.lot(60).said("water.basin"));
    RoofYard slow = basin(new RoofYard(), 0.2, "main").give(YardFacts.SOIL, soil("loam", 8));
    assertTrue(slow.said("water.basin").get(0).contains("it stands full for 25 hours"));
    RoofYard near = basin(new RoofYard(), 0.2, "main").house(RoofYard.box(36, 0, 3, 3));
    assertEquals(
        List.of("basin 'hollow': it lies 2.00 m (6.6 ft) from a building"),
        near.said("water.basin"));
    assertEquals(
        List.of("basin 'hollow': it lies beyond the lot"),
        basin(new RoofYard(), 0.2, "main").lot(33).said("water.basin"));
    assertTrue(
        basin(new RoofYard(), 0.2, "mian").said("water.basin").get(0).contains("no roof 'mian'"));
  }

  /**
   * On 3 % of slope a garden is 3 to 5 in deep: the lesser of them, 76.2 mm, takes 2009 L on 26.4
   * m² and sinks in within 7.6 hours at 10 mm an hour; a quarter of 100 m² is asked for.
   */
  @Test
  void rainGarden_isSizedByStormAndByFactor() {
    RoofYard yard = new RoofYard().give(YardFacts.SOIL, soil("loam", 10));
    OverflowWords.rainGarden(yard.plan(), "main", 3, null, 0.25);
    String[] cells =
        RoofYard.printed(RoofYard.table(yard.outcome(), "rain-gardens")).get(0).split(" \\| ");
    assertEquals("main", cells[0]);
    assertEquals("2 009", cells[3]);
    assertEquals(25, Double.parseDouble(cells[6]), 0.01);
  }

  private static void refused(Executable word) {
    assertThrows(PlanException.class, word);
  }

  @Test
  void words_haveTheirRanges() {
    RoofYard yard = new RoofYard();
    refused(() -> OverflowWords.rainGarden(yard.plan(), "main", -1, null, null));
    refused(() -> OverflowWords.rainGarden(yard.plan(), "main", 12.1, null, null));
    refused(() -> OverflowWords.rainGarden(yard.plan(), "main", 3, Length.inches(0.09), null));
    refused(() -> OverflowWords.rainGarden(yard.plan(), "main", 3, Length.inches(20.1), null));
    refused(() -> OverflowWords.rainGarden(yard.plan(), "main", 3, null, 0));
    refused(() -> OverflowWords.rainGarden(yard.plan(), "main", 3, null, 1.1));
    Shape box = RoofYard.box(30, 0, 4, 3);
    Length two = Length.inches(2);
    refused(
        () -> OverflowWords.basin(yard.plan(), "a", box, "main", Length.inches(1.9), null, null));
    refused(
        () -> OverflowWords.basin(yard.plan(), "a", box, "main", Length.inches(24.1), null, null));
    refused(
        () -> OverflowWords.basin(yard.plan(), "a", box, "main", two, Length.inches(0.09), null));
    refused(
        () -> OverflowWords.basin(yard.plan(), "a", box, "main", two, Length.inches(20.1), null));
    OverflowWords.basin(yard.plan(), "a", box, "main", two, Length.inches(0.1), null);
    OverflowWords.basin(yard.plan(), "b", box, "main", Length.inches(24), Length.inches(20), null);
    refused(() -> OverflowWords.basin(yard.plan(), "a", box, "main", two, null, null));
    refused(() -> led(yard, 5, 12, 12));
    refused(() -> led(yard, 5, 12, 306));
    Point at = Point.metres(0, 0);
    refused(() -> RoofWords.downspout(yard.plan(), at, "main", null, null, null));
    refused(() -> RoofWords.downspout(yard.plan(), at, "main", mm(50), mm(50), null));
    refused(() -> RoofWords.downspout(yard.plan(), at, "main", null, mm(50), null));
    refused(() -> RoofWords.downspout(yard.plan(), at, "main", mm(15), null, null));
    refused(() -> RoofWords.downspout(yard.plan(), at, "main", mm(400), null, null));
    RoofWords.downspout(yard.plan(), at, "main", null, mm(50), mm(75));
  }
}
