package yardloom.materials.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.DropPile;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.site.built.BuiltWords;
import yardloom.site.setback.RestrictionWords;

class DropZoneTest {
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

  @Test
  void load_onRoomySpot_isAConeOfTenYards() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 20, 20), null);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    DropPile pile = r.all(YardFacts.PILES).get(0);
    // Soil check M17: 10 cu yd at 37°: 5.271 ft high, 13.988 ft across.
    assertEquals("cone", pile.form());
    assertEquals(5.271, pile.height().value().feet(), 0.001);
    assertEquals(13.988, pile.width().feet(), 0.001);
    assertTrue(pile.fits());
    assertEquals(List.of(), rules(plan, r));
  }

  @Test
  void load_onNarrowDrive_isAWindrowThatFits() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 10, 30), null);
    DropPile pile = PlanKit.run(kit.plan()).all(YardFacts.PILES).get(0);
    assertEquals("windrow", pile.form());
    assertEquals(10, pile.width().feet(), 0.07);
    assertTrue(pile.fits());
    // Section ½·b·h = 18.84 ft² for b = 10, h = 5 tan 37°; ends hold πb²h/12 = 98.6 ft³.
    double ridge = (270 - 98.64) / 18.838;
    assertEquals(ridge + 10, pile.length().feet(), 0.2);
  }

  @Test
  void load_onTinySpot_isFlagged() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 6, 8), Length.feet(7));
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    assertFalse(r.all(YardFacts.PILES).get(0).fits());
    assertEquals(
        List.of("materials.drop-ground", "materials.pile-fits", "materials.truck-way"),
        rules(plan, r));
  }

  /**
   * At 20° a windrow 8 ft wide is 4 tan 20° = 1.456 ft high and 5.82 sq ft in section, its ends
   * hold π·64·1.456/12 = 24.4 cu ft: on 15 ft, 24.4 + 7 × 5.82 = 65.1 cu ft or 2.41 cu yd. Of 180
   * sq ft 3 in of compost are ordered as 2 cu yd and 2 in of chips as 1.5; of 270 as 3 and 2.
   */
  @ParameterizedTest
  @CsvSource({"6, false", "9, true"})
  void heapWithoutASpotOfItsOwn_hasToFitOnTheFirst(double depth, boolean isFlagged) {
    PlanKit kit = PlanKit.us();
    kit.bed("greens", BedUse.ANNUAL, PlanKit.box(0, 0, 30, depth));
    PileWords.dropZone(
        kit.words(),
        "drive",
        PlanKit.box(60, 0, 8, 15),
        null,
        Angle.degrees(20),
        null,
        null,
        1,
        null);
    Plan plan = kit.plan();
    List<Finding> found = PlanKit.findings(plan, PlanKit.run(plan));
    assertEquals(
        isFlagged ? List.of("materials.pile-fits") : List.of(),
        found.stream().map(Finding::rule).toList());
    if (isFlagged) {
      assertTrue(
          found
              .get(0)
              .text()
              .replace('\u00a0', ' ')
              .startsWith("A load of 3 cu yd of compost, for which no"),
          found.get(0).text());
    }
  }

  /** Soil check M22: 8 by 15 ft of ground at least, whichever way the spot lies. */
  @ParameterizedTest
  @CsvSource({"8, 15, false", "15, 8, false", "7.9, 15, true", "8, 14.9, true"})
  void spot_smallerThanADropNeeds_isFlagged(double width, double depth, boolean isFlagged) {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 10, 9));
    tip(kit, PlanKit.box(60, 0, width, depth), null);
    Plan plan = kit.plan();
    assertEquals(
        isFlagged ? List.of("materials.drop-ground") : List.of(), rules(plan, PlanKit.run(plan)));
  }

  @Test
  void spot_onADrainField_isFlagged() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 20, 20), null);
    RestrictionWords.drainField(kit.words(), "field", PlanKit.box(70, 10, 20, 20), null);
    Plan plan = kit.plan();
    assertEquals(List.of("materials.pile-kept-free"), rules(plan, PlanKit.run(plan)));
  }

  @Test
  void line_besideTheSpot_isKeptOffByItsClearanceOnce() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 20, 20), null);
    // The spot ends at 80 ft and the line lies 3 ft off it, with 2 ft to keep to each side.
    BuiltWords.utility(
        kit.words(),
        "power",
        Line.between(
            new Point(Length.feet(83), Length.ZERO), new Point(Length.feet(83), Length.feet(30))),
        "power",
        Length.feet(2));
    Plan plan = kit.plan();
    assertEquals(List.of(), rules(plan, PlanKit.run(plan)));
  }

  @Test
  void treeOverSpot_isFlagged() {
    PlanKit kit = bigBed();
    tip(kit, PlanKit.box(60, 0, 20, 20), null);
    kit.tree("oak", 70, 10, 10);
    Plan plan = kit.plan();
    assertTrue(rules(plan, PlanKit.run(plan)).contains("materials.pile-overhead"));
  }

  @Test
  void dropZone_ofNonsense_isRefused() {
    PlanKit kit = bigBed();
    assertThrows(PlanException.class, () -> tip(kit, Shape.EMPTY, null));
    assertThrows(
        PlanException.class,
        () ->
            PileWords.dropZone(
                kit.words(),
                "x",
                PlanKit.box(0, 0, 9, 9),
                null,
                Angle.degrees(80),
                null,
                null,
                1,
                null));
    assertThrows(
        PlanException.class,
        () ->
            PileWords.dropZone(
                kit.words(),
                "x",
                PlanKit.box(0, 0, 9, 9),
                null,
                null,
                null,
                Volume.cubicYards(20),
                1,
                null));
  }

  @Test
  void truckWay_underALineOrThroughAHouse_isFound() {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 60, 30, 10));
    kit.house(PlanKit.box(12, 20, 20, 20));
    Line way =
        Line.between(
            new Point(Length.feet(10), Length.feet(-10)),
            new Point(Length.feet(10), Length.feet(45)));
    PileWords.dropZone(
        kit.words(),
        "drive",
        PlanKit.box(0, 40, 20, 20),
        null,
        null,
        Length.feet(10),
        null,
        null,
        way);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    List<String> rules = PlanKit.findings(plan, r).stream().map(f -> f.rule()).toList();
    // A way of 10 ft about x = 10 ft reaches to 15 ft; the house begins at 12 ft.
    assertTrue(rules.contains("materials.truck-way"), rules::toString);
  }

  /** What is not said: a contractor's barrow of 6 cu ft, a truck's way of 10 ft, heaps at 37°. */
  @Test
  void dropZone_ofWhichNothingIsSaid_isAsUsual() {
    PlanKit kit = bigBed();
    PileWords.dropZone(
        kit.words(), "drive", PlanKit.box(60, 0, 20, 20), null, null, null, null, null, null);
    var zone = kit.plan().attributes().all(PileCalculator.SPOTS).get(0).value();
    assertEquals(6, zone.barrow().cubicFeet(), 1e-9);
    assertEquals(10, zone.access().feet(), 1e-9);
    assertEquals(37, zone.repose().degrees(), 1e-9);
    assertEquals(1.2, zone.detour(), 1e-9);
  }
}
