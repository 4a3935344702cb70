package yardloom.site.setback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.LotScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.SitePlugin;
import yardloom.site.built.BuiltWords;
import yardloom.site.lot.LotWords;

/**
 * Setbacks as codes state them: by role, datum, height and what they are measured to. The wordings
 * are those of municipal codes read for this project; the numbers of the lot are ours.
 */
class SetbackRulesTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));
  private final PlanScope region = new PlanScope(draft, new SourceRef("region.groovy", 2, 1));

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  private static Shape box(double x, double y, double w, double d) {
    return Shape.rectangle(p(x, y), ft(w), ft(d));
  }

  private void lot(Consumer<LotScope> block) {
    LotWords.lot(in, List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)), block);
  }

  private void house(Shape walls, double eavesFt, double ridgeFt, double overhangFt) {
    BuiltWords.building(
        in, "house", walls, ft(eavesFt), ft(ridgeFt), ft(overhangFt), null, null, null);
  }

  private List<String> inSetback() {
    Plan plan = draft.freeze();
    Facts none = FactGraph.of(new SitePlugin().calculators()).run(plan);
    List<Finding> all = new ArrayList<>();
    for (Check check : new SitePlugin().checks()) {
      all.addAll(check.run(plan, none));
    }
    return all.stream()
        .filter(f -> f.rule().equals("site.building-setback"))
        .map(Finding::text)
        .toList();
  }

  private double whyNotFt2(String name) {
    Plan plan = draft.freeze();
    Facts none = FactGraph.of(new SitePlugin().calculators()).run(plan);
    TableMaker why =
        new SitePlugin()
            .tables().stream().filter(t -> t.id().equals("buildable-limits")).findAny().get();
    List<String> names = new ArrayList<>();
    for (List<Cell> row : why.make(plan, none).rows()) {
      String ground = row.get(0).value().get().toString();
      names.add(ground);
      if (ground.equals(name)) {
        return ((yardloom.kernel.unit.Area) row.get(1).value().get()).squareFeet();
      }
    }
    throw new AssertionError(name + " is not in " + names);
  }

  /** Z-01, San Mateo 27.04.085: the line is parallel to the front property line: 60 × 25 ft. */
  @Test
  void buildableLimits_front_isTheStripParallelToTheLotLine() {
    lot(s -> SideWords.side(s, "south", "front", ft(25), "27.04.085", null, null, null));
    assertEquals(1500, whyNotFt2("setback from south (front, 25.00 ft)"), 1e-6);
  }

  /** Z-06 and Z-08: from the curb, 10 ft outside: 15 of the 25 ft count on the lot. */
  @Test
  void buildableLimits_curbDatum_isNamedAndShorter() {
    lot(s -> SideWords.side(s, "south", "front", ft(25), "code", "curb", ft(10), null));
    assertEquals(900, whyNotFt2("setback from south (front, 25.00 ft from the curb)"), 1e-6);
  }

  /** The street's centre line, 30 ft outside: 55 ft from it leave 25 ft. */
  @Test
  void buildableLimits_streetCentreDatum_isNamed() {
    lot(s -> SideWords.side(s, "south", "front", ft(55), "code", "street centre", ft(30), null));
    assertEquals(
        1500, whyNotFt2("setback from south (front, 55.00 ft from the street centre)"), 1e-6);
  }

  /** The band of an upper floor takes what the lower setback leaves: 10 ft more of 120 ft. */
  @Test
  void buildableLimits_setbackAboveAHeight_isCountedAfterTheOneForAllHeights() {
    lot(
        s -> {
          SideWords.side(s, "east", "side", ft(5), "code", null, null, null);
          SideWords.setback(s, "east", ft(15), ft(16), null, null, null, null, "code");
        });
    assertEquals(600, whyNotFt2("setback from east (side, 5.00 ft)"), 1e-6);
    assertEquals(1200, whyNotFt2("setback from east (side, 15.00 ft, above 16.00 ft)"), 1e-6);
  }

  @Test
  void building_belowTheBand_mayStandInIt() {
    lot(
        s -> {
          SideWords.side(s, "east", "side", ft(5), "code", null, null, null);
          SideWords.setback(s, "east", ft(15), ft(16), null, null, null, null, "code");
        });
    house(box(30, 40, 24, 30), 12, 12, 0);
    assertEquals(List.of(), inSetback());
  }

  @Test
  void building_wallsInTheBand_isFoundWithHeightAndDistance() {
    lot(
        s -> {
          SideWords.side(s, "east", "side", ft(5), "code", null, null, null);
          SideWords.setback(s, "east", ft(15), ft(16), null, null, null, null, "code");
        });
    house(box(30, 40, 24, 30), 20, 20, 0);
    // 9 ft of the house lie within 15 ft of the side, over 30 ft.
    assertEquals(
        List.of(
            "270.0 sq ft lie within the setback of 15.00 ft from east that holds above 16.00 ft; it"
                + " is as high as 20.00 ft"),
        inSetback());
  }

  @Test
  void building_roofOnlyInTheBand_asksHowHighItIsThere() {
    lot(
        s -> {
          SideWords.side(s, "east", "side", ft(5), "code", null, null, null);
          SideWords.setback(s, "east", ft(15), ft(16), null, null, null, null, "code");
        });
    house(box(30, 40, 24, 30), 12, 20, 0);
    assertTrue(inSetback().get(0).contains("the walls stay below, the roof rises to 20.00 ft"));
  }

  /** A rule up to a height: a low deck is barred, and only there. */
  @Test
  void structure_belowTheUpperLimit_isFound() {
    lot(
        s -> {
          SideWords.side(s, "east", "side", null, null, null, null, null);
          SideWords.setback(s, "east", ft(4), null, ft(7), null, null, null, "code");
        });
    BuiltWords.structure(in, "deck", box(50, 20, 8, 10), ft(2), null, null);
    assertTrue(inSetback().get(0).contains("holds below 7.00 ft"), inSetback().toString());
  }

  /**
   * Z-02, Greenwood Village 15.04.580: tangent to the nearest part of the structure; Z-08, Clear
   * Creek: to eaves or projections. Walls at 26 ft with eaves of 2 ft reach into 25 ft.
   */
  @Test
  void building_measuredToTheEaves_countsTheOverhang() {
    lot(s -> SideWords.side(s, "south", "front", ft(25), "15.04.580", null, null, "eaves"));
    house(box(20, 26, 20, 30), 10, 10, 2);
    assertEquals(1, inSetback().size());
    assertTrue(inSetback().get(0).contains("25.00 ft to the eaves from south"));
  }

  @Test
  void building_measuredToTheWall_leavesTheOverhangOut() {
    lot(s -> SideWords.side(s, "south", "front", ft(25), "code", null, null, "wall"));
    house(box(20, 26, 20, 30), 10, 10, 2);
    assertEquals(List.of(), inSetback());
  }

  /** Z-03, ecode360 42181480: the front-yard minimum holds on both street sides of a corner lot. */
  @Test
  void setbackFor_role_isTakenByEverySideOfTheRole() {
    SideWords.setbackFor(region, "front", ft(25), null, null, null, null, "42181480");
    lot(
        s -> {
          SideWords.side(s, "south", "front", null, null, null, null, null);
          SideWords.side(s, "east", "front", null, null, null, null, null);
        });
    assertEquals(1500, whyNotFt2("setback from south (front, 25.00 ft)"), 1e-6);
    assertEquals(25 * 95, whyNotFt2("setback from east (front, 25.00 ft)"), 1e-6);
    assertEquals("42181480", draft.lot().get().edges().get(0).rule());
  }

  @Test
  void setbackFor_laterFile_replacesTheRegional() {
    SideWords.setbackFor(region, "front", ft(25), null, null, null, null, "region");
    SideWords.setbackFor(in, "front", ft(20), null, null, null, null, "city");
    lot(s -> SideWords.side(s, "south", "front", null, null, null, null, null));
    assertEquals(1200, whyNotFt2("setback from south (front, 20.00 ft)"), 1e-6);
  }

  @Test
  void setbackFor_twiceInOneFile_isRefusedWithTheEarlierPlace() {
    SideWords.setbackFor(region, "front", ft(25), null, null, null, null, "region");
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> SideWords.setbackFor(region, "front", ft(5), null, null, null, null, "r"));
    assertEquals(ProblemCode.DUPLICATE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("region.groovy:2"), e.getMessage());
  }

  @Test
  void side_ownSetback_goesBeforeTheRole() {
    SideWords.setbackFor(region, "front", ft(25), null, null, null, null, "region");
    lot(s -> SideWords.side(s, "south", "front", ft(10), "variance", null, null, null));
    assertEquals(600, whyNotFt2("setback from south (front, 10.00 ft)"), 1e-6);
  }

  @Test
  void side_roleWithCurbDatum_needsHowFarTheCurbLies() {
    SideWords.setbackFor(region, "front", ft(25), null, null, "curb", null, "region");
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> lot(s -> SideWords.side(s, "south", "front", null, null, null, null, null)));
    assertTrue(e.getMessage().contains("how far the curb runs outside"), e.getMessage());
  }

  @Test
  void side_outsideWithoutUse_isRefused() {
    assertThrows(
        PlanException.class,
        () -> lot(s -> SideWords.side(s, "south", "front", null, null, null, ft(4), null)));
  }

  /** Z-05, Liberty NC: legs of 10 and 70 ft, clear from 3 to 10 ft: ½ · 10 · 70 = 350 ft². */
  @Test
  void sightRule_ofTheRegion_givesEveryTriangleItsLegs() {
    SightWords.sightRule(region, ft(10), ft(70), null, ft(3), ft(10), "Liberty NC");
    lot(
        s ->
            SightWords.sightTriangle(s, "south", "east", null, null, null, null, null, null, null));
    assertEquals(350, whyNotFt2("sight triangle south/east"), 1e-6);
  }

  /**
   * Z-04, Norfolk NE 27-290: "within 25 feet of the intersection" can be read as legs or as a
   * radius. Legs of 25 ft give 312.5 ft², a quarter circle of 25 ft would give 490.9 ft²; the word
   * takes legs, so the reading is the planner's to state.
   */
  @Test
  void sightTriangle_within25FeetReadAsLegs_isSmallerThanTheQuarterCircle() {
    lot(
        s ->
            SightWords.sightTriangle(
                s, "south", "east", ft(25), ft(25), null, null, ft(3), ft(100), "27-290"));
    double legsFt2 = whyNotFt2("sight triangle south/east");
    assertEquals(312.5, legsFt2, 1e-6);
    assertTrue(legsFt2 < Math.PI * 25 * 25 / 4);
  }

  @Test
  void sightTriangle_withoutLegsOrRule_namesWhatIsMissing() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                lot(
                    s ->
                        SightWords.sightTriangle(
                            s, "south", "east", null, null, null, null, ft(3), ft(8), null)));
    assertTrue(e.getMessage().contains("`legFirst:`"), e.getMessage());
  }
}
