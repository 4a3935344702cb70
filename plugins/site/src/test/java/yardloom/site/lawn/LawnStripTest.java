package yardloom.site.lawn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.lot.LotWords;
import yardloom.site.path.PathWords;

/** Source of the values: width times length on the plan. */
class LawnStripTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  private void bed(String name, double x, double y, double w, double d) {
    BedWords.bed(in, name, Shape.rectangle(p(x, y), ft(w), ft(d)), null, null, null);
  }

  @BeforeEach
  void lot() {
    LotWords.lot(in, List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)), null);
  }

  /**
   * Beds 2 ft apart over 20 ft: 40 sq ft, less what circles of 1.25 ft in the lawn reach into both
   * ends: a segment on a chord of 2 ft, 1.25² acos(0.75 / 1.25) − 0.75 × 1 = 0.699 sq ft, twice.
   */
  @Test
  void gapOfTwoFeet_isAPathToBe() {
    bed("a", 20, 40, 4, 20);
    bed("b", 26, 40, 4, 20);
    List<LawnStrip> strips = LawnStrip.of(draft.freeze());
    assertEquals(1, strips.size());
    assertEquals(2, strips.get(0).width().feet(), 0.01);
    assertEquals(38.60, strips.get(0).ground().area().squareFeet(), 0.01);
    Finding finding = LawnStripCheck.findings(draft.freeze(), strips).get(0);
    assertTrue(finding.text().contains("24 in wide"), finding.text());
    assertTrue(finding.text().contains("bed \"a\", bed \"b\""), finding.text());
    // One strip and the sum.
    assertEquals(2, LawnStripTable.of(draft.freeze(), strips).rows().size());
  }

  /**
   * Three inches between bed and lot line over 24 ft: 6 sq ft, joined to the bed. Where it opens to
   * the lawn at both ends it is somewhat wider.
   */
  @Test
  void sliverAtTheLotLine_isJoinedToTheBed() {
    bed("a", 0.25, 40, 4, 24);
    LawnStrip strip = LawnStrip.of(draft.freeze()).get(0);
    assertTrue(strip.width().inches() >= 3 && strip.width().inches() < 6, "" + strip.width());
    assertEquals(6, strip.ground().area().squareFeet(), 0.8);
    assertEquals("join it to the bed", strip.advice());
  }

  @Test
  void gapWithAPath_orThreeFeetWide_isNoStrip() {
    bed("a", 20, 40, 4, 20);
    bed("b", 26, 40, 4, 20);
    PathWords.path(in, "between", Line.between(p(25, 40), p(25, 60)), ft(2), null, null, null);
    bed("c", 33, 40, 4, 20);
    assertEquals(List.of(), LawnStrip.of(draft.freeze()));
  }

  /** A lawn turned over up to 9 in from the fence line leaves 0.75 × 30 = 22.5 sq ft of grass. */
  @Test
  void stripBesideGroundMulchedWhole_isJoinedToIt() {
    GroundWords.mulchedGround(
        in, "turned", Shape.rectangle(p(0.75, 90), ft(59.25), ft(30)), null, null);
    LawnStrip strip = LawnStrip.of(draft.freeze()).get(0);
    assertEquals("mulched ground \"turned\"", strip.names());
    assertEquals(22.5, strip.ground().area().squareFeet(), 0.9);
    assertEquals("join it to the mulched ground, or sheet-mulch it", strip.advice());
  }

  /** Beds in it leave aisles of chips, not lawn. */
  @Test
  void gapBetweenBedsInMulchedGround_isNoStrip() {
    GroundWords.mulchedGround(in, "turned", Shape.rectangle(p(0, 30), ft(60), ft(90)), null, null);
    bed("a", 20, 40, 4, 20);
    bed("b", 26, 40, 4, 20);
    assertEquals(List.of(), LawnStrip.of(draft.freeze()));
  }

  /** 2 in between a fence and the lot line are not lawn; 20 in between fence and bed are. */
  @Test
  void groundBehindAFence_isNoStrip_groundBeforeItIs() {
    BarrierWords.fence(
        in, "fence", Line.between(p(0.2, 0), p(0.2, 120)), ft(5), null, null, null, null, null);
    GroundWords.mulchedGround(in, "turned", Shape.rectangle(p(0, 90), ft(60), ft(30)), null, null);
    assertEquals(List.of(), LawnStrip.of(draft.freeze()));
    bed("a", 2, 20, 4, 20);
    assertEquals(1, LawnStrip.of(draft.freeze()).size());
  }

  /**
   * Beds a, b, c with gaps of 2 ft and 1.75 ft over 20 ft, and d 9 in from c: three strips, of
   * which the two that become paths are one finding. Each loses two segments at its ends, as above:
   * the second has 35 sq ft less 2 × (1.25² acos(√(1.25² − 0.875²) / 1.25) − 0.875 × 0.893) = 0.90:
   * 38.60 + 34.10 in all.
   */
  @Test
  void stripsOfOneAdvice_areOneFinding() {
    bed("a", 20, 40, 4, 20);
    bed("b", 26, 40, 4, 20);
    bed("c", 31.75, 40, 4, 20);
    bed("d", 36.5, 40, 4, 20);
    List<Finding> found = LawnStripCheck.findings(draft.freeze(), LawnStrip.of(draft.freeze()));
    assertEquals(2, found.size());
    assertEquals(
        "2 strips of lawn up to 24 in wide, 72.7 sq ft in all, are left: beside bed \"a\", bed"
            + " \"b\"; beside bed \"b\", bed \"c\"",
        found.get(0).text());
    assertEquals("make each a path, or sheet-mulch it", found.get(0).advice());
    assertTrue(found.get(1).text().startsWith("a strip of lawn up to 9 in wide"), "" + found);
    assertEquals("join it to the bed, or sheet-mulch it", found.get(1).advice());
  }
}
