package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.FactGraph;
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
import yardloom.site.bed.BedWords;
import yardloom.site.ground.LevelWords;
import yardloom.site.lawn.GroundWords;
import yardloom.site.lot.LotWords;
import yardloom.site.remark.RemarkWords;
import yardloom.site.setback.RestrictionWords;
import yardloom.site.setback.SideWords;
import yardloom.site.setback.SightWords;
import yardloom.site.tree.TreeWords;

/** What binds the ground is seen on the site plan, at its true place and size. */
class SitePaintersTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  private static Painter painter(String layer) {
    return new SitePlugin()
        .painters().stream().filter(x -> x.layer().id().equals(layer)).findAny().orElseThrow();
  }

  private List<Mark> paint(String layer) {
    Plan plan = draft.freeze();
    return painter(layer).paint(plan, FactGraph.of(List.of()).run(plan));
  }

  private List<String> legend(String layer) {
    Plan plan = draft.freeze();
    return painter(layer).legend(plan, FactGraph.of(List.of()).run(plan)).stream()
        .map(LegendEntry::text)
        .toList();
  }

  private static Map<String, Double> areasFt2(List<Mark> marks) {
    return marks.stream()
        .filter(m -> m instanceof Mark.Region)
        .map(m -> (Mark.Region) m)
        .collect(
            Collectors.toMap(
                r -> r.style().name(), r -> r.shape().area().squareFeet(), Double::sum));
  }

  private void cornerLot() {
    LotWords.lot(
        in,
        List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)),
        s -> {
          SideWords.side(s, "east", "corner side", ft(5), "code", null, null, null);
          SideWords.setback(s, "east", ft(15), ft(16), null, null, null, null, "code");
          SightWords.sightTriangle(
              s,
              "south",
              "east",
              ft(30),
              ft(25),
              null,
              null,
              Length.inches(30),
              ft(8),
              "street code");
        });
  }

  /** Z-12: ½ · 30 · 25 ft; both legs measured, outside of the triangle; heights in feet, inches. */
  @Test
  void sightTriangle_drawn_hasBothLegsMeasuredAndTheClearHeights() {
    cornerLot();
    List<Mark> marks = paint("site.restriction");
    assertEquals(375, areasFt2(marks).get(Palette.SIGHT.name()), 1e-6);
    List<String> measures =
        marks.stream()
            .filter(m -> m instanceof Mark.Dimension)
            .map(m -> ((Mark.Dimension) m).text())
            .toList();
    assertEquals(List.of("30'-0\"", "25'-0\""), measures);
    assertTrue(
        marks.stream()
            .anyMatch(
                m ->
                    m instanceof Mark.Label l
                        && l.text().equals("Sight triangle\nclear from 2'-6\" to 8'-0\"")));
    // South leg runs west from the corner; the triangle lies on its right, so the measure is left.
    Mark.Dimension south =
        (Mark.Dimension) marks.stream().filter(m -> m instanceof Mark.Dimension).findFirst().get();
    assertEquals(60, south.from().x().feet(), 1e-6);
    assertEquals(30, south.to().x().feet(), 1e-6);
    assertTrue(south.offset().metres() > 0);
  }

  @Test
  void setbackOfUpperFloors_drawn_isTheRingTheLowerOneLeaves() {
    cornerLot();
    assertEquals(1200, areasFt2(paint("site.restriction")).get("high-setback"), 1e-6);
  }

  /** D-27, Goochland VA: easement lines are dashed. */
  @Test
  void easementAndClearance_drawn_areDashedOutlinesOfTheirGround() {
    cornerLot();
    RestrictionWords.easement(
        in, "drain", Shape.rectangle(p(0, 110), ft(60), ft(10)), "the city", null);
    RestrictionWords.clearance(
        in, "well", Shape.rectangle(p(20, 80), ft(2), ft(2)), ft(10), "beds", "health code");
    Map<String, Double> areas = areasFt2(paint("site.restriction"));
    assertEquals(600, areas.get(Palette.EASEMENT.name()), 1e-6);
    assertEquals(4 * 20 + Math.PI * 100, areas.get(Palette.CLEARANCE.name()), 0.5);
    assertTrue(!Palette.EASEMENT.dash().isEmpty() && Palette.EASEMENT.fill().isEmpty());
    assertTrue(legend("site.restriction").containsAll(List.of("Easement", "Edge of clearance")));
  }

  /** A bed may bear the name of its kind; hiding labels must not stumble over it. */
  @Test
  void labels_hiddenByNameAndByKind_leaveTheOthers() {
    BedWords.bed(in, "bed", Shape.rectangle(p(0, 0), ft(7), ft(4)), null, null, b -> {});
    BedWords.bed(in, "Kale", Shape.rectangle(p(10, 0), ft(9), ft(3)), null, null, b -> {});
    GroundWords.mulchedGround(in, "lawn", Shape.rectangle(p(0, 9), ft(8), ft(5)), null, g -> {});
    RemarkWords.hideLabel(in, "Kale");
    assertEquals(List.of("Bed", "Lawn"), labels());
    RemarkWords.hideLabel(in, "bed");
    assertEquals(List.of("Lawn"), labels());
    RemarkWords.hideLabel(in, "mulched ground \"lawn\"");
    assertEquals(List.of(), labels());
  }

  private List<String> labels() {
    return paint("site.labels").stream().map(m -> ((Mark.Label) m).text().split("\n")[0]).toList();
  }

  /** A trunk of 1 ft with the usual 12 diameters, or with 18 where a code says so. */
  @Test
  void protectedRoots_drawn_areTheFactorTimesTheTrunk() {
    TreeWords.tree(in, "oak", p(30, 60), ft(20), ft(30), null, ft(1), null, null, null);
    assertEquals(Math.PI * 144, areasFt2(paint("site.restriction")).get("roots"), 1);
    TreeWords.treeProtection(in, 18, "tree ordinance");
    assertEquals(Math.PI * 324, areasFt2(paint("site.restriction")).get("roots"), 2);
    assertEquals(List.of("Protected roots, 18 trunk diameters"), legend("site.restriction"));
  }

  private void slopingEast(double ratio) {
    LevelWords.levels(
        in,
        ft(1),
        s -> {
          LevelWords.level(s, p(0, 0), ft(100));
          LevelWords.level(s, p(100, 0), ft(100 - 100 * ratio));
          LevelWords.level(s, p(100, 100), ft(100 - 100 * ratio));
          LevelWords.level(s, p(0, 100), ft(100));
        });
  }

  private List<Double> arrowDegrees() {
    return paint("site.swale").stream()
        .filter(m -> m instanceof Mark.Symbol)
        .map(m -> ((Mark.Symbol) m).turn().degrees())
        .toList();
  }

  private String swaleText() {
    return paint("site.swale").stream()
        .filter(m -> m instanceof Mark.Label)
        .map(m -> ((Mark.Label) m).text())
        .findFirst()
        .orElseThrow();
  }

  /** T-15: on contour both ends are level; water comes from uphill, here from the west. */
  @Test
  void swale_onContour_saysItsLevelAndWaterComesDownToIt() {
    slopingEast(0.1);
    LevelWords.swale(in, "upper", Line.between(p(50, 20), p(50, 80)), ft(2), ft(0.5), 3, null);
    assertEquals("Upper\nlevel at 95.0 ft", swaleText());
    assertEquals(3, arrowDegrees().size());
    arrowDegrees().forEach(d -> assertEquals(90, d, 1e-6));
    assertTrue(
        paint("site.swale").stream()
            .filter(m -> m instanceof Mark.Symbol)
            .allMatch(m -> ((Mark.Symbol) m).at().x().feet() < 50 - 2.5));
  }

  /** T-06: 60 ft at 2 % fall 1.2 ft; arrows run down it, also when it was written uphill. */
  @Test
  void swale_falling_saysItsFallAndArrowsRunDown() {
    slopingEast(0.02);
    LevelWords.swale(in, "lead", Line.between(p(80, 50), p(20, 50)), ft(2), ft(0.5), 3, null);
    assertEquals("Lead\nfalls 2.0 %, 1'-2½\"", swaleText());
    arrowDegrees().forEach(d -> assertEquals(90, d, 1e-6));
  }

  @Test
  void swale_isNoStructureOnTheDrawing() {
    slopingEast(0.1);
    LevelWords.swale(in, "upper", Line.between(p(50, 20), p(50, 80)), ft(2), ft(0.5), 3, null);
    assertEquals(List.of(), paint("site.structure"));
    assertEquals(List.of(), legend("site.structure"));
    assertTrue(legend("site.swale").contains("Way of the water"));
  }

  /** D-28: every fifth contour is 2 to 3 times as heavy; T-14: 90 to 100 ft are eleven levels. */
  @Test
  void contours_onAPlane_areLabelledOnTheirLinesAndEveryFifthIsHeavier() {
    slopingEast(0.1);
    List<Mark> marks = paint("site.lot-contours");
    double thin = Double.MAX_VALUE;
    double thick = 0;
    for (Mark mark : marks) {
      if (mark instanceof Mark.Stroke s) {
        thin = Math.min(thin, s.style().strokeMm());
        thick = Math.max(thick, s.style().strokeMm());
      }
    }
    assertTrue(thick / thin >= 2 && thick / thin <= 3, thick + " " + thin);
    List<Mark.Label> labels =
        marks.stream().filter(m -> m instanceof Mark.Label).map(m -> (Mark.Label) m).toList();
    assertTrue(labels.size() >= 9, labels.toString());
    for (Mark.Label label : labels) {
      double level = Double.parseDouble(label.text().replace(" ft", ""));
      assertEquals(level, 100 - 0.1 * label.at().x().feet(), 1e-3, label.text());
    }
  }

  /** A level is not written where a bed or tree hides it. */
  @Test
  void contours_underATree_areLabelledBesideIt() {
    slopingEast(0.1);
    TreeWords.tree(in, "oak", p(50, 50), ft(40), ft(30), null, null, null, null, null);
    for (Mark mark : paint("site.lot-contours")) {
      if (mark instanceof Mark.Label label) {
        assertTrue(label.at().distance(p(50, 50)).feet() > 20, label.text());
      }
    }
  }
}
