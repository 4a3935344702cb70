package yardloom.work.haul;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Haul;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.pile.PileWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.lot.LotWords;
import yardloom.site.path.PathWords;
import yardloom.site.setback.SideWords;
import yardloom.work.labour.TaskLoad;

/**
 * Barrows go over mulched ground and through gates, never through beds, walls or neighbours. Ways
 * are counted by hand, in feet; a barrow keeps 0.4 m (1.312 ft) off what stands in its way.
 */
class HaulRoundThingsTest {
  private static final double DETOUR = 1.3;
  private static final double HALF = 0.4 / 0.3048;

  /** A bend stands 5 mm further off, and so does the next. */
  private static final double HAIRS = 0.15;

  /** A heap about (10, 10) and nothing else. */
  private static PlanKit yard() {
    PlanKit kit = PlanKit.us();
    heap(kit, PlanKit.box(0, 0, 20, 20));
    return kit;
  }

  private static void heap(PlanKit kit, Shape spot) {
    PileWords.dropZone(kit.words(), "drive", spot, null, null, null, null, DETOUR, null);
  }

  private static Point at(double x, double y) {
    return new Point(Length.feet(x), Length.feet(y));
  }

  private static Haul haul(Results r, String to) {
    return r.all(YardFacts.HAULS).stream().filter(h -> h.to().equals(to)).findFirst().orElseThrow();
  }

  private static void assertWay(PlanKit kit, Haul.By by, double straightLegs, double hairs) {
    Haul haul = haul(PlanKit.run(kit.plan()), "Beans");
    assertEquals(by, haul.by());
    assertEquals(straightLegs * DETOUR, haul.oneWay().value().feet(), hairs);
  }

  /**
   * From the heap to (20, 10), over the lawn to a corner of the bed, and to its middle (55, 10).
   */
  @Test
  void mulchedGround_isAWayAsPathsAre() {
    PlanKit kit = yard();
    kit.ground("lawn", PlanKit.box(20, 0, 60, 40));
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(50, 6, 10, 8));
    Haul haul = haul(PlanKit.run(kit.plan()), "Beans");
    assertEquals(Haul.By.PATHS, haul.by());
    double straight = 55 - 10;
    assertTrue(haul.oneWay().value().feet() >= straight);
    assertEquals(straight + 1.5, haul.oneWay().value().feet(), 1.5);
  }

  /** A bed of 4 by 60 ft lies across: round its end at y = −10. */
  @Test
  void bedInTheWay_isGoneRound() {
    PlanKit kit = yard();
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(60, 5, 10, 10));
    assertWay(kit, Haul.By.OPEN_GROUND, 55, 0.01);
    kit.bed("hedge", BedUse.PERENNIAL, PlanKit.box(30, -10, 4, 60));
    double down = 10 + 10 + HALF;
    double legs = Math.hypot(20 - HALF, down) + 4 + 2 * HALF + Math.hypot(31 - HALF, down);
    assertWay(kit, Haul.By.OPEN_GROUND, legs, HAIRS);
  }

  /** Beds with 2 ft between them all about the heap: over one of them, on boards. */
  @Test
  void bedsTooNearEachOther_areGoneOver() {
    PlanKit kit = yard();
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(60, 5, 10, 10));
    kit.bed("south", BedUse.PERENNIAL, PlanKit.box(-6, -6, 32, 3));
    kit.bed("north", BedUse.PERENNIAL, PlanKit.box(-6, 23, 32, 3));
    kit.bed("west", BedUse.PERENNIAL, PlanKit.box(-6, -1, 3, 22));
    kit.bed("east", BedUse.PERENNIAL, PlanKit.box(23, -1, 3, 22));
    assertWay(kit, Haul.By.OVER_BEDS, 55, 0.01);
    Plan plan = kit.plan();
    Table table = PlanKit.table("materials-barrows", plan, PlanKit.run(plan));
    assertTrue(table.notes().stream().anyMatch(n -> n.startsWith("By beds, on boards")));
  }

  /** A fence of 200 ft at x = 40: straight through a gate of 4 ft, round its end by one of 2 ft. */
  @ParameterizedTest
  @CsvSource({"48, true", "24, false"})
  void gate_letsThroughWhatFits(double inches, boolean isThrough) {
    PlanKit kit = yard();
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(65, 5, 10, 10));
    Line line = Line.between(at(40, -100), at(40, 100));
    BarrierWords.fence(
        kit.words(), "long fence", line, Length.feet(6), null, Length.inches(2), true, null, null);
    PathWords.gate(kit.words(), "side", at(40, 10), Length.inches(inches), null);
    double end = 90 + HALF;
    double round = Math.hypot(30, end) + Math.hypot(30, end) + 2 * HALF;
    assertWay(kit, Haul.By.OPEN_GROUND, isThrough ? 60 : round, isThrough ? 0.01 : 1);
  }

  private static PlanKit lotWithHouse(double houseWide) {
    PlanKit kit = PlanKit.us();
    LotWords.lot(
        kit.words(),
        List.of(at(0, 0), at(50, 0), at(50, 100), at(0, 100)),
        s -> {
          SideWords.side(s, "south", "front", null, null, null, null, null);
          SideWords.side(s, "east", "side", null, null, null, null, null);
          SideWords.side(s, "west", "side", null, null, null, null, null);
          SideWords.side(s, "north", "rear", null, null, null, null, null);
        });
    heap(kit, PlanKit.box(20, 5, 10, 10));
    kit.house(PlanKit.box(0, 30, houseWide, 20));
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(20, 70, 10, 10));
    return kit;
  }

  /** By the passage of 6 ft beside the house, 1.312 ft off its wall. */
  @Test
  void passageBesideTheHouse_isTheWay() {
    double legs = Math.hypot(19 + HALF, 20 - HALF) + 20 + 2 * HALF;
    assertWay(
        lotWithHouse(44), Haul.By.OPEN_GROUND, legs + Math.hypot(19 + HALF, 25 - HALF), HAIRS);
  }

  /** The neighbours' ground is no way: from (25, 10) to (25, 75) there is none. */
  @Test
  void houseFromLineToLine_leavesNoWay() {
    PlanKit kit = lotWithHouse(50);
    assertWay(kit, Haul.By.NO_WAY, 65, 0.01);
    Plan plan = kit.plan();
    Table table = PlanKit.table("materials-barrows", plan, PlanKit.run(plan));
    assertTrue(table.notes().stream().anyMatch(n -> n.startsWith("No way: ")));
  }

  /**
   * The same 19.2 cu ft of loose gravel in a large barrow of 10 cu ft: half of it would be 5, which
   * nobody wheels; at 3 cu ft they are still 7 trips, and compost goes by the level barrow.
   */
  @Test
  void largeBarrow_carriesNoMoreThanThreeCubicFeetOfGravel() {
    PlanKit kit = PlanKit.us();
    PileWords.dropZone(
        kit.words(),
        "drive",
        PlanKit.box(0, 0, 20, 20),
        null,
        null,
        null,
        Volume.cubicFeet(10),
        DETOUR,
        null);
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(40, 20, 30, 8));
    BuiltWords.paving(kit.words(), "walk", PlanKit.box(30, 5, 12, 4), "gravel", false);
    Plan plan = kit.plan();
    List<String> rows = PlanKit.printed("materials-barrows", plan, PlanKit.run(plan));
    assertTrue(rows.get(0).startsWith("Walk | gravel | Build | 0.71 | 7 | "), rows::toString);
    // 240 sq ft an inch deep: 20 cu ft, two barrows of ten.
    assertTrue(
        rows.stream()
            .anyMatch(r -> r.startsWith("Beans | compost | Cardboard and its cover | 0.74 | 2 | ")),
        rows::toString);
  }

  /**
   * A gravel walk of 12 by 4 ft, 4 in deep: 16 cu ft, a fifth more loose 19.2; a cubic yard is nine
   * barrows of 3 cu ft (question page of a bulk-soil dealer), so 7 trips. To its middle (36, 7):
   * √(26² + 3²) × 1.3 = 34.02 ft, and 14 times that 476.4 ft or 145.2 m, at 3,000 m an hour 0.0484
   * h. Compost an inch deep on a bed of 9 by 8 ft is 6 cu ft, one barrow of 6, from the same spot
   * to (44.5, 24).
   */
  @Test
  void gravelAndCompost_areWheeledToo_andTakeHours() {
    PlanKit kit = yard();
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(40, 20, 9, 8));
    BuiltWords.paving(kit.words(), "walk", PlanKit.box(30, 5, 12, 4), "gravel", false);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    List<String> rows = PlanKit.printed("materials-barrows", plan, r);
    assertEquals("Walk | gravel | Build | 0.71 | 7 | open ground | 34.0 | 476.3", rows.get(0));
    double beans = Math.hypot(34.5, 14) * DETOUR;
    assertTrue(
        rows.contains(
            String.format(
                java.util.Locale.ROOT,
                "Beans | compost | Cardboard and its cover | 0.22 | 1 | open ground | %.1f | %.1f",
                beans,
                2 * beans)),
        rows::toString);
    double hours =
        r.all(TaskLoad.FACT).stream()
            .filter(t -> t.task() == WorkTask.WALK && t.phase() == WorkPhase.BUILD)
            .mapToDouble(t -> t.likely().value().hours())
            .sum();
    assertEquals(0.0484, hours, 0.0001);
    // 16 cu ft in place at 2.5 hours a cubic yard, as the post on crushed rock has it.
    double placed =
        r.all(TaskLoad.FACT).stream()
            .filter(t -> t.task() == WorkTask.PLACE_ROCK)
            .mapToDouble(t -> t.likely().value().hours())
            .sum();
    assertEquals(16 / 27.0 * 2.5, placed, 1e-6);
  }

  /**
   * Whatever stands where: no way leads through a house or a fence, and none over another's bed.
   */
  @Property(tries = 60, seed = "20261127")
  void anyYard_waysCrossNoWallAndNoOtherBed(
      @ForAll @IntRange(min = 0, max = 60) int x,
      @ForAll @IntRange(min = 30, max = 70) int y,
      @ForAll @IntRange(min = 3, max = 40) int wide,
      @ForAll @IntRange(min = 0, max = 60) int gate) {
    PlanKit kit = yard();
    kit.house(PlanKit.box(12, 26, wide, 11));
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(x, y, 9, 7));
    kit.bed("peas", BedUse.PERENNIAL, PlanKit.box(25, 45, 21, 4));
    kit.ground("lawn", PlanKit.box(52, 30, 20, 40).minus(PlanKit.box(12, 26, wide, 11)));
    Line line = Line.between(at(-5, 42), at(70, 42));
    BarrierWords.fence(
        kit.words(), "fence", line, Length.feet(6), null, Length.inches(2), true, null, null);
    PathWords.gate(kit.words(), "side", at(gate, 42), null, null);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    assertFalse(r.all(YardFacts.HAULS).isEmpty());
    for (Haul haul : r.all(YardFacts.HAULS)) {
      Element.Building house = plan.all(Element.Building.class).get(0);
      boolean isInHouse = house.shape().overlaps(PlanKit.box(x, y, 9, 7));
      if (haul.by() == Haul.By.NO_WAY || isInHouse) {
        continue;
      }
      assertFalse(haul.way().jts().crosses(house.shape().jts()), () -> haul.to() + haul.way());
      if (haul.by() == Haul.By.OPEN_GROUND) {
        for (Element.Bed bed : plan.all(Element.Bed.class)) {
          Point end = haul.way().end();
          assertTrue(
              bed.shape().contains(end) || !haul.way().jts().crosses(bed.shape().jts()),
              () -> haul.to() + " over " + bed.id());
        }
      }
    }
  }
}
