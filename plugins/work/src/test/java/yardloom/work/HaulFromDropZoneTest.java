package yardloom.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Haul;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.materials.pile.PileWords;
import yardloom.work.cost.PriceWords;
import yardloom.work.haul.BarrowWay;

class HaulFromDropZoneTest {
  private static void tip(PlanKit kit, Shape spot, Length access) {
    PileWords.dropZone(kit.words(), "drive", spot, null, null, access, null, 1, null);
  }

  private static List<String> rules(Plan plan, Results r) {
    return PlanKit.findings(plan, r).stream().map(Finding::rule).sorted().toList();
  }

  private static PlanKit bigBed() {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 50, 20));
    return kit;
  }

  /** A slip of a letter is a warning; what a book for many yards holds beside, one note. */
  @Test
  void price_ofAMisspeltItemAndOfAnUnusedOne_areTold() {
    PlanKit kit = bigBed();
    PriceWords.priceBook(
        kit.words(), "item,unit,low,likely,high\ncompst,yd3,30,35,50\ngravel,yd3,1,2,3\n", null);
    Plan plan = kit.plan();
    assertEquals(
        List.of("work.price-names", "work.price-names"),
        rules(plan, PlanKit.run(plan)).stream().sorted().toList());
  }

  @Test
  void trips_sixFootBarrow_countByVolume() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 20, 20), null);
    Haul haul = PlanKit.run(kit.plan()).all(YardFacts.HAULS).get(0);
    // 1000 sq ft × 10 in = 833.3 cu ft: 139 barrows of 6 cu ft; no path, so over open ground from
    // (70,10) to (25,10): 45 ft.
    assertEquals(Haul.By.OPEN_GROUND, haul.by());
    assertEquals(139, haul.trips().value());
    assertEquals(45, haul.oneWay().value().feet(), 0.2);
    assertEquals(2 * 139 * haul.oneWay().value().feet(), haul.walk().value().feet(), 1e-6);
  }

  /**
   * Two spots for chips: the trucks come to the first, so the 139 barrows of {@link #bigBed} are
   * wheeled from there, once.
   */
  @Test
  void twoSpotsOfOneMaterial_areHauledFromWhereItIsTipped() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 20, 20), null);
    PileWords.dropZone(
        kit.words(), "lane", PlanKit.box(-30, 0, 20, 20), null, null, null, null, 1, null);
    Results r = PlanKit.run(kit.plan());
    List<Haul> chips =
        r.all(YardFacts.HAULS).stream().filter(h -> h.item().equals("wood-chip mulch")).toList();
    assertEquals(139, chips.stream().mapToInt(h -> h.trips().value()).sum());
    assertEquals(1, chips.size());
    assertEquals("drive", chips.get(0).from());
    assertTrue(
        PlanKit.printed("work-deliveries", kit.plan(), r).stream()
            .filter(d -> d.contains("wood-chip"))
            .allMatch(d -> d.contains("| drive |")));
  }

  @Test
  void way_roundAHouse_bendsAtItsCorners() {
    // House 10 × 10 m between two points 5 m off its sides: round the corners grown by 0.4 m the
    // way is 2·hypot(4.6, 5.4) + 10.8 m, mitred or a little shorter on the round.
    Shape house = Shape.rectangle(Point.metres(0, -5), Length.metres(10), Length.metres(10));
    Length way =
        new BarrowWay(List.of(house)).between(Point.metres(-5, 0), Point.metres(15, 0)).length();
    double mitred = 2 * Math.hypot(4.6, 5.4) + 10.8;
    assertTrue(way.metres() <= mitred + 0.02, way.toString());
    assertTrue(way.metres() >= 2 * Math.hypot(5, 5) + 10, way.toString());
  }

  @Test
  void way_free_isStraight() {
    assertEquals(
        5,
        new BarrowWay(List.of()).between(Point.metres(0, 0), Point.metres(3, 4)).length().metres(),
        1e-12);
  }
}
