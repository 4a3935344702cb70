package yardloom.materials.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
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
import yardloom.site.lot.LotWords;

/** What a truck driver reads, and what the household is told of the spot. */
class DriverNotesTest {
  private final PlanKit kit = bigBed();

  private static PlanKit bigBed() {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(0, 0, 50, 20));
    return kit;
  }

  private void spot(Shape ground, Length access, Line way) {
    PileWords.dropZone(kit.words(), "drive", ground, null, null, access, null, 1, way);
  }

  private List<String> rules() {
    Plan plan = kit.plan();
    return PlanKit.findings(plan, PlanKit.run(plan)).stream().map(f -> f.rule()).sorted().toList();
  }

  /** Soil check M17: 10 cu yd at 37° stand 5.271 ft high and 13.988 ft across. */
  @Test
  void notes_sayWhatIsTippedWhere_andWhatToMind() {
    spot(PlanKit.box(60, 0, 20, 20), Length.feet(9), null);
    BuiltWords.utility(
        kit.words(),
        "power",
        Line.between(
            new Point(Length.feet(95), Length.ZERO), new Point(Length.feet(95), Length.feet(30))),
        "power",
        Length.feet(2));
    Plan plan = kit.plan();
    List<String> notes = DriverNotes.of(plan, PlanKit.run(plan));
    assertEquals(8, notes.size());
    assertEquals(
        "Drop zone drive: 10 cu yd of wood-chip mulch, a cone about 14 ft wide, 14 ft long and 5.3"
            + " ft high. The way in is 9 ft wide.",
        notes.get(1));
    // 1000 sq ft at 1 in are 3.09 cu yd, 3.40 with a tenth more.
    assertEquals(
        "Drop zone drive too, each load once the heap before it is spread: compost, 3.5 cu yd.",
        notes.get(2));
    assertTrue(notes.get(3).contains("need 20 ft of room"), notes.get(3));
    assertTrue(notes.get(4).startsWith("On this lot: ") && notes.get(4).contains("power"));
  }

  @Test
  void withoutASpot_thereIsNothingToRead() {
    Plan plan = kit.plan();
    assertEquals(List.of(), DriverNotes.of(plan, PlanKit.run(plan)));
  }

  /** A truck is 8 ft wide: a way of 8 ft will do. */
  @Test
  void wayOfJustATruck_isWideEnough() {
    spot(PlanKit.box(60, 0, 20, 20), Length.feet(8), null);
    assertEquals(List.of(), rules());
  }

  /** A lane of 11 ft that ends 23 in short of the spot leads to it, one 25 in short does not. */
  @ParameterizedTest
  @CsvSource({"23, 11", "25, 9"})
  void laneThatEndsAtTheSpot_isTheTrucksWay(double shortIn, double wideFt) {
    spot(PlanKit.box(60, 0, 20, 20), Length.feet(9), null);
    Line middle =
        Line.between(
            new Point(Length.feet(70), Length.feet(-40)),
            new Point(Length.feet(70), Length.inches(-shortIn)));
    BuiltWords.truckLane(kit.words(), "lane", middle, Length.feet(11), null, true);
    assertEquals(
        wideFt, PlanKit.run(kit.plan()).all(YardFacts.PILES).get(0).spot().access().feet(), 1e-9);
  }

  /** Ten feet about x = 70 ft: clear of a tree's trunk at 90, not of one at 74 ft. */
  @Test
  void way_underATree_isFound_besideItNot() {
    Line way =
        Line.between(
            new Point(Length.feet(70), Length.feet(-40)), new Point(Length.feet(70), Length.ZERO));
    spot(PlanKit.box(60, 0, 20, 20), Length.feet(10), way);
    kit.tree("far", 120, -20, 10);
    assertEquals(List.of(), rules());
    kit.tree("near", 74, -20, 10);
    assertEquals(List.of("materials.pile-overhead"), rules());
  }

  /** The lot ends at 75 ft; the heap of 14 ft about 70 ft reaches to 77. */
  @Test
  void heapOverTheLotLine_isFound() {
    spot(PlanKit.box(60, 0, 20, 20), null, null);
    LotWords.lot(
        kit.words(),
        List.of(
            Point.metres(-30, -30),
            new Point(Length.feet(75), Length.metres(-30)),
            new Point(Length.feet(75), Length.metres(30)),
            Point.metres(-30, 30)),
        null);
    assertEquals(List.of("materials.pile-outside"), rules());
  }

  /**
   * A windrow lies along its spot, turned as the spot is: 30 by 10 ft, the long way up the plan.
   */
  @Test
  void windrow_liesAlongItsSpot_whereverThatPoints() {
    spot(PlanKit.box(60, 0, 10, 30), null, null);
    Results results = PlanKit.run(kit.plan());
    Shape ground = results.all(YardFacts.PILES).get(0).ground();
    assertEquals(65, ground.centroid().x().feet(), 0.05);
    assertEquals(15, ground.centroid().y().feet(), 0.05);
    double base = results.all(YardFacts.PILES).get(0).width().feet();
    double length = results.all(YardFacts.PILES).get(0).length().feet();
    // Rectangle and two half circles.
    assertEquals(
        base * (length - base) + Math.PI * base * base / 4, ground.area().squareFeet(), 1.5);
  }

  private void refused(Angle angle, Volume barrow, Number detour) {
    assertThrows(
        PlanException.class,
        () ->
            PileWords.dropZone(
                kit.words(),
                "x",
                PlanKit.box(60, 0, 20, 20),
                null,
                angle,
                null,
                barrow,
                detour,
                null));
  }

  @Test
  void anglesBarrowsAndDetours_haveTheirRanges() {
    refused(Angle.degrees(9.9), null, null);
    refused(Angle.degrees(60.1), null, null);
    refused(null, Volume.litres(9.9), null);
    refused(null, Volume.cubicMetres(2.01), null);
    refused(null, null, 0.99);
    refused(null, null, 5.01);
    for (double end : new double[] {10, 60}) {
      PileWords.dropZone(
          kit.words(),
          "spot " + end,
          PlanKit.box(60, 30 + end, 20, 20),
          null,
          Angle.degrees(end),
          null,
          end == 10 ? Volume.litres(10) : Volume.cubicMetres(2),
          end == 10 ? 1 : 5,
          null);
    }
  }
}
