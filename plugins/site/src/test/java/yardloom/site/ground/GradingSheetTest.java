package yardloom.site.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.SitePlugin;
import yardloom.site.bed.BedWords;
import yardloom.site.lawn.GroundWords;
import yardloom.site.lot.LotWords;

/**
 * A lot of 70 by 50 ft that falls 8 in 100 to the east, all under chips, with a swale and a bed:
 * who digs finds every level, and the ditch with all its measures.
 */
class GradingSheetTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  @BeforeEach
  void draw() {
    LotWords.lot(in, List.of(p(0, 0), p(70, 0), p(70, 50), p(0, 50)), s -> {});
    LevelWords.levels(
        in,
        ft(1),
        s -> {
          LevelWords.level(s, p(0, 0), ft(100));
          LevelWords.level(s, p(70, 0), ft(94.4));
          LevelWords.level(s, p(70, 50), ft(94.4));
          LevelWords.level(s, p(0, 50), ft(100));
        });
    Shape all = Shape.polygon(List.of(p(0, 0), p(70, 0), p(70, 50), p(0, 50)));
    GroundWords.mulchedGround(in, "turned grass", all, null, null);
    Shape bed = Shape.polygon(List.of(p(20, 5), p(30, 5), p(30, 45), p(20, 45)));
    BedWords.bed(in, "low bed", bed, null, null, null);
    LevelWords.swale(
        in, "upper swale", Line.between(p(45, 8), p(45, 42)), ft(1.5), Length.inches(9), 4, null);
  }

  private Plan plan() {
    return draft.freeze();
  }

  private List<Mark> paint(String layer) {
    Plan plan = plan();
    Facts facts = FactGraph.of(List.of()).run(plan);
    return new SitePlugin()
        .painters().stream()
            .filter(x -> x.layer().id().equals(layer))
            .flatMap(x -> x.paint(plan, facts).stream())
            .toList();
  }

  private Panel.Figure figure(String start) {
    Plan plan = plan();
    Offers offers = new Offers(new SitePlugin().painters(), Map.of());
    return new GradingSheet()
        .make(plan, FactGraph.of(List.of()).run(plan), offers).get(0).panels().stream()
            .flatMap(x -> x instanceof Panel.Figure f ? Stream.of(f) : Stream.empty())
            .filter(f -> f.title().startsWith(start))
            .findFirst()
            .orElseThrow();
  }

  private static List<String> labels(List<Mark> marks) {
    return marks.stream()
        .flatMap(m -> m instanceof Mark.Label l ? Stream.of(l.text()) : Stream.empty())
        .toList();
  }

  private static List<String> measures(List<Mark> marks) {
    return marks.stream()
        .flatMap(m -> m instanceof Mark.Dimension d ? Stream.of(d.text()) : Stream.empty())
        .sorted()
        .toList();
  }

  /** 100 − 0.08 x: five contours, at x = 12.5, 25, 37.5, 50 and 62.5 ft; chips hide none. */
  @Test
  void contours_underChips_haveAllTheirLevels() {
    List<Mark> marks = paint("site.lot-contours");
    assertEquals(
        List.of("95.0 ft", "96.0 ft", "97.0 ft", "98.0 ft", "99.0 ft"),
        List.copyOf(new TreeSet<>(labels(marks))));
    for (Mark mark : marks) {
      if (mark instanceof Mark.Label label) {
        double level = Double.parseDouble(label.text().replace(" ft", ""));
        assertEquals((100 - level) / 0.08, label.at().x().feet(), 0.1);
        // The first of a line stands off the bed; a further one may stand on it, off its name.
        boolean onBed = label.at().x().feet() == 25 && label.anchor() == Mark.Anchor.CENTRE;
        assertTrue(!onBed || label.at().y().feet() < 5 || label.at().y().feet() > 45);
      }
    }
  }

  @Test
  void measuredLevels_standAtTheirPoints() {
    assertEquals(
        List.of("100.0 ft", "100.0 ft", "94.4 ft", "94.4 ft"),
        labels(paint("site.spot-levels")).stream().sorted().toList());
  }

  /** Top width: 1.5 ft + 2 × 4 × 0.75 ft = 7.5 ft. */
  @Test
  void swaleSection_hasEveryMeasure() {
    Panel.Figure section = figure("Across the swale");
    assertEquals("Across the swale: Upper swale", section.title());
    assertEquals(List.of("1'-6\"", "7'-6\"", "9\""), measures(section.marks()));
    assertEquals(List.of("sides 4 to 1"), labels(section.marks()));
  }

  /** 70 ft from side to side; the levels of both ends and of the middle, 100 − 0.08 × 35. */
  @Test
  void slopeSection_runsFromSideToSide_withNamesAsOnThePlan() {
    Panel.Figure section = figure("Section A–A");
    assertEquals(List.of("70'-0\""), measures(section.marks()));
    assertEquals(
        List.of("100.0 ft", "97.2 ft", "94.4 ft", "Low bed", "Upper swale"),
        labels(section.marks()));
    assertEquals(
        2, labels(paint("site.section-line")).stream().filter(SlopeSection.LETTER::equals).count());
  }

  /** Seen as the arrows point: from the south, so up the plan. */
  @Test
  void sectionLine_isMarkedAtBothEnds_acrossTheMiddle() {
    for (Mark mark : paint("site.section-line")) {
      if (mark instanceof Mark.Symbol arrow) {
        assertEquals(0, arrow.turn().degrees(), 1e-9);
        assertEquals(25, arrow.at().y().feet(), 1e-6);
        assertTrue(arrow.at().x().feet() < 0 || arrow.at().x().feet() > 70);
      }
    }
  }
}
