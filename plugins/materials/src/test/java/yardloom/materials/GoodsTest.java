package yardloom.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.materials.goods.HardWords;
import yardloom.materials.goods.SawList;
import yardloom.materials.goods.formula.FramePieces;
import yardloom.materials.goods.formula.TrellisParts;
import yardloom.materials.mulch.MulchWords;

class GoodsTest {
  private static Line line(double... feet) {
    List<Point> points = new java.util.ArrayList<>();
    for (int i = 0; i < feet.length; i += 2) {
      points.add(new Point(Length.feet(feet[i]), Length.feet(feet[i + 1])));
    }
    return Line.through(points);
  }

  private static Object order(Results r, String item) {
    return PlanKit.line(r, item).map(BillLine::order).orElseThrow().value();
  }

  @Test
  void frame_fourByEightBed_needsThreeBoards() {
    // Sides 2 × 96 in and ends 2 × (48 − 3) in from boards of 96 in: 90 1/8 in for both ends.
    PlanKit kit = PlanKit.us();
    var bed = kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 8, 4));
    HardWords.frame(bed, "2x10", Length.feet(8), null, null, null);
    Results r = PlanKit.run(kit.plan());
    SawList list = r.all(SawList.FACT).get(0);
    assertEquals(3, list.boards().value());
    assertTrue(list.proven());
    // 2 × 10 × 8 / 12 = 13.33 board feet a board.
    assertEquals(40, list.boardFeet().value(), 1e-9);
    assertEquals(3, order(r, "lumber 2x10, 8 ft"));
    // Four boards with five screws at each joint; stakes 2 + 2 on sides, 1 + 1 on ends.
    assertEquals(20, order(r, "exterior screws"));
    assertEquals(6, order(r, "stakes"));
  }

  /**
   * Two courses of 2x10 stand 18.5 in high (9.25 in dressed). An annual bed of 4 by 8 ft with 3 in
   * of compost and 2 in of chips leaves 13.5 in of soil: 36 cu ft, 1.333 cu yd; 15 % more is 1.53,
   * which is sold as 2.
   */
  @Test
  void frame_highBed_takesSoilBelowItsLayers() {
    PlanKit kit = PlanKit.us();
    var bed = kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 4, 8));
    MulchWords.compost(bed, Length.inches(3));
    MulchWords.mulch(bed, Length.inches(2));
    HardWords.frame(bed, "2x10", Length.feet(8), null, null, 2);
    BillLine soil =
        PlanKit.line(PlanKit.run(kit.plan()), "soil to fill frames and raised beds").orElseThrow();
    assertEquals(36.0 / 27, ((Volume) soil.exact().value()).cubicYards(), 1e-6);
    assertEquals(2, ((Volume) soil.order().value()).cubicYards(), 1e-6);
  }

  @Test
  void frames_ofTwoBeds_areSawnTogether() {
    // Four sides of 60 in waste 36 in each of 96; ends of 33 in come out of the rests.
    PlanKit kit = PlanKit.us();
    for (String name : List.of("a", "b")) {
      var bed = kit.bed(name, BedUse.ANNUAL, PlanKit.box(name.equals("a") ? 0 : 9, 0, 5, 3));
      HardWords.frame(bed, "2x6", Length.feet(8), null, null, null);
    }
    SawList list = PlanKit.run(kit.plan()).all(SawList.FACT).get(0);
    assertEquals(4, list.boards().value());
    assertEquals(1, list.cuts().size());
    // 60 + 33 + two cuts of 1/8 leave 2 3/4 in.
    assertEquals(2.75, list.cuts().get(0).rest().inches(), 1e-3);
  }

  @Test
  void frame_sideLongerThanStock_isParted() {
    List<Length> boards =
        FramePieces.of(PlanKit.box(0, 0, 20, 4), Length.inches(1.5), Length.feet(8));
    // Each 20 ft side in three pieces of 80 in, two ends of 45 in.
    assertEquals(8, boards.size());
    assertEquals(80, boards.get(0).inches(), 1e-6);
  }

  @Test
  void frame_unknownLumber_isRefused() {
    PlanKit kit = PlanKit.us();
    var bed = kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 8, 4));
    assertThrows(PlanException.class, () -> HardWords.frame(bed, "2x5", null, null, null, null));
    assertThrows(PlanException.class, () -> HardWords.frame(bed, "2x6", null, null, null, 0));
  }

  @Test
  void edging_outline_isBoughtInPieces() {
    PlanKit kit = PlanKit.us();
    var bed = kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 8, 4));
    HardWords.edging(bed, "steel strip", Length.feet(10));
    assertEquals(3, order(PlanKit.run(kit.plan()), "steel strip edging, pieces"));
  }

  @ParameterizedTest
  @CsvSource({"24, 8, 4", "25, 8, 5", "8, 8, 2", "3, 8, 2"})
  void posts_straightRun_standAtEndsAndBetween(double lengthFt, double spacingFt, int posts) {
    assertEquals(posts, TrellisParts.posts(line(0, 0, lengthFt, 0), Length.feet(spacingFt)));
  }

  @Test
  void posts_bentAndClosedRuns_shareCorners() {
    assertEquals(5, TrellisParts.posts(line(0, 0, 16, 0, 16, 16), Length.feet(8)));
    assertEquals(8, TrellisParts.posts(line(0, 0, 16, 0, 16, 16, 0, 16, 0, 0), Length.feet(8)));
  }

  @Test
  void trellis_wire_hasTails() {
    PlanKit kit = PlanKit.us();
    HardWords.trellis(kit.words(), "grapes", line(0, 0, 40, 0), null, 3, null, null);
    Results r = PlanKit.run(kit.plan());
    assertEquals(6, order(r, "posts for grapes"));
    assertEquals(132, ((Length) order(r, "wire for grapes")).feet(), 1e-9);
  }

  @Test
  void pavers_hundredSquareFeet_matchPublishedExample() {
    // Soil check L10: 495 with a tenth of waste; bedding 100 sq ft at 1 in, base at 4 in.
    PlanKit kit = PlanKit.us();
    HardWords.pavers(
        kit.words(), "terrace", PlanKit.box(0, 0, 10, 10), null, null, null, null, null);
    Results r = PlanKit.run(kit.plan());
    assertEquals(495, order(r, "pavers, terrace"));
    BillLine base = PlanKit.line(r, "gravel base, terrace").orElseThrow();
    assertEquals(400.0 / 324, ((Volume) base.exact().value()).cubicYards(), 1e-9);
    assertEquals(1.5, ((Volume) base.order().value()).cubicYards(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"45, 45 in", "45.125, 45 1/8 in", "0.5, 1/2 in", "33.0625, 33 1/16 in"})
  void piece_inches_printAsFractions(double inches, String text) {
    assertEquals(text, Say.fine(Length.inches(inches), UnitSystem.US));
  }

  @Test
  void tables_framedPlan_showCuts() {
    PlanKit kit = PlanKit.us();
    var bed = kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 8, 4));
    HardWords.frame(bed, "2x10", Length.feet(8), null, null, null);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan);
    Table cuts = PlanKit.table("materials-cut-list", plan, r);
    assertEquals(3, cuts.rows().size());
    assertEquals("1 × 96 in", cuts.rows().get(0).get(3).value().orElseThrow());
    assertEquals("2 × 45 in", cuts.rows().get(1).get(3).value().orElseThrow());
  }
}
