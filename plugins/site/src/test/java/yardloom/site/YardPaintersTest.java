package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.source.Source;
import yardloom.kernel.study.FindingMarks;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

class YardPaintersTest {
  private static final Plan YARD = DemoYard.plan(UnitSystem.US);
  private static final Facts NONE = FactGraph.of(List.of()).run(YARD);

  private static List<Mark> paint(String layer) {
    return new SitePlugin()
        .painters().stream()
            .filter(p -> p.layer().id().equals(layer))
            .flatMap(p -> p.paint(YARD, NONE).stream())
            .toList();
  }

  @Test
  void layers_ofAllPainters_differ() {
    Set<String> ids = new HashSet<>();
    new SitePlugin().painters().forEach(p -> assertTrue(ids.add(p.layer().id()), p.layer().id()));
  }

  @Test
  void painters_emptyPlan_drawNothing() {
    PlanInfo info = new PlanInfo("p", "P", "", "", "", "", UnitSystem.US, "$");
    Plan empty = new Draft(info).freeze();
    for (Painter painter : new SitePlugin().painters()) {
      assertEquals(List.of(), painter.paint(empty, NONE), painter.layer().id());
      assertEquals(List.of(), painter.legend(empty, NONE), painter.layer().id());
    }
  }

  @Test
  void lotFill_anyOrder_liesBelowAllElse() {
    Layer lowest =
        new SitePlugin()
            .painters().stream()
                .filter(Painter::shownByDefault)
                .map(Painter::layer)
                .sorted()
                .findFirst()
                .orElseThrow();
    assertEquals("site.lot", lowest.id());
  }

  /** 25 ft in front and 5 ft on the other sides of 60 by 120 ft leave 50 by 90 ft. */
  @Test
  void setbackLine_rectangle_leavesTheBuildablePart() {
    Mark.Region region = (Mark.Region) paint("site.setback").get(0);
    assertEquals(
        50 * 90 * 0.3048 * 0.3048,
        region.shape().area().in(yardloom.kernel.unit.Unit.SQUARE_METRE),
        1e-6);
  }

  /** The demo house stands 14 ft from both sides, 30 ft from the front, 54 ft from the rear. */
  @Test
  void dimensions_houseToLotLines_areShown() {
    List<String> texts =
        paint("site.dimensions").stream().map(m -> ((Mark.Dimension) m).text()).toList();
    for (String wanted : List.of("60'-0\"", "120'-0\"", "30'-0\"", "54'-0\"", "32'-0\"")) {
      assertTrue(texts.contains(wanted), wanted + " in " + texts);
    }
    assertEquals(2, texts.stream().filter("14'-0\""::equals).count());
  }

  @Test
  void dimensions_distanceLines_areAsLongAsTheySay() {
    for (Mark mark : paint("site.dimensions")) {
      Mark.Dimension d = (Mark.Dimension) mark;
      String text = yardloom.kernel.draw.DimensionText.of(d.from().distance(d.to()), UnitSystem.US);
      assertEquals(text, d.text());
    }
  }

  @Test
  void labels_beds_showTheirAreaInPlanUnits() {
    List<String> texts = paint("site.labels").stream().map(m -> ((Mark.Label) m).text()).toList();
    assertTrue(texts.contains("Bed 1\n80\u00a0sq ft"), texts.toString());
  }

  @Test
  void findings_withGround_areNumberedAsListed() {
    Shape ground = Shape.rectangle(Point.metres(0, 0), Length.metres(1), Length.metres(1));
    Finding plain = Finding.of("kernel.a", Severity.ERROR, "bad", "mend it", Source.plan("plan"));
    Finding marked = Finding.of("kernel.b", Severity.NOTE, "here", "", Source.plan("plan"));
    List<Mark> marks = FindingMarks.of(List.of(plain, marked.marking(ground)));
    assertEquals(2, marks.size());
    assertEquals("(2)", ((Mark.Label) marks.get(1)).text());
    assertEquals(1, FindingMarks.legend(List.of(plain.marking(ground))).size());
    assertEquals(Optional.empty(), plain.where());
  }

  @Test
  void cautions_utilities_areAlwaysNamed() {
    assertTrue(SiteCautions.of(YARD).stream().anyMatch(c -> c.text().contains("buried lines")));
  }

  /** By hand: what a person sees when walking in, and its names; nothing that only paper knows. */
  @Test
  void yard_isWhatStandsAndLiesThere() {
    List<String> yard =
        new SitePlugin()
            .painters().stream().filter(Painter::partOfYard).map(p -> p.layer().title()).toList();
    assertEquals(
        Set.of(
            "Lot",
            "Lot line",
            "Labels",
            "Beds",
            "Mulched whole",
            "Paths",
            "Paving",
            "Buildings",
            "Structures",
            "Fences",
            "Trees",
            "Swales",
            "Banks of swales",
            "Keep-outs"),
        Set.copyOf(yard));
  }

  /** By hand: who has to see what of the site beside their own layers. */
  @ParameterizedTest
  @CsvSource({
    "WAYS, Utilities",
    "PLANTING, Utilities+Water points",
    "IRRIGATION, Utilities+Water points",
    "STAKE, Dimensions+Points to set out from",
    "HEAD, Water points",
    "DRIP, Water points",
    "LAYOUT, 'Contours+Dimensions+Notes and dimensions of the plan+Points to set out from+Setback"
        + " lines+Sight, easement and clearance+Utilities+Water points'",
    "GRADING, Contours+Levels+Section line+Utilities",
    "COVER, Picture: beds and buildings+Picture: ground+Picture: trees",
    "CREW, Notes and dimensions of the plan+Points to set out from+Water points",
    "MOW, ''"
  })
  void offers_showEachPageWhatItNeeds(String use, String titles) {
    List<String> offered =
        new SitePlugin()
            .painters().stream()
                .filter(p -> p.uses().stream().anyMatch(u -> u.toString().equals(use)))
                .map(p -> p.layer().title())
                .sorted()
                .toList();
    assertEquals(titles, String.join("+", offered));
  }
}
