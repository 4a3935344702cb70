package yardloom.site.setback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.WayStart;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.site.SitePlugin;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.ground.EarthWords;
import yardloom.site.ground.GroundTables;
import yardloom.site.ground.LevelWords;
import yardloom.site.lot.LotWords;
import yardloom.site.outline.ShapeWords;
import yardloom.site.path.PathWords;
import yardloom.site.tree.TreeWords;

class RestrictionRulesTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  private static Shape box(double x, double y, double w, double d) {
    return Shape.rectangle(p(x, y), ft(w), ft(d));
  }

  private List<Finding> findings(String rule) {
    Plan plan = draft.freeze();
    List<Finding> all = new ArrayList<>();
    for (Check check : new SitePlugin().checks()) {
      all.addAll(check.run(plan, FactGraph.of(new SitePlugin().calculators()).run(plan)));
    }
    return all.stream().filter(f -> f.rule().equals(rule)).toList();
  }

  private void cornerLot() {
    LotWords.lot(
        in,
        List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)),
        s ->
            SightWords.sightTriangle(
                s, "south", "east", ft(25), ft(25), null, null, Length.inches(30), ft(8), "code"));
  }

  @Test
  void sightTriangle_tallFence_isAnErrorAndALowOneIsNot() {
    cornerLot();
    BarrierWords.fence(
        in, "tall", Line.between(p(40, 1), p(59, 1)), ft(6), null, null, null, null, null);
    BarrierWords.fence(
        in, "low", Line.between(p(59, 2), p(59, 20)), ft(2.5), null, null, null, null, null);
    List<Finding> found = findings("site.restriction");
    assertEquals(List.of("tall"), found.stream().map(f -> f.element().get().name()).toList());
    assertEquals(Severity.ERROR, found.get(0).severity());
    assertTrue(found.get(0).text().contains("between 30 in and 8.00 ft"), found.get(0).text());
  }

  @Test
  void sightTriangle_treesAndBeds_areJudgedByTheirHeights() {
    cornerLot();
    TreeWords.tree(in, "high crown", p(55, 5), ft(8), ft(30), ft(9), null, null, null, null);
    TreeWords.tree(in, "low crown", p(50, 5), ft(6), ft(30), ft(4), null, null, null, null);
    BedWords.bed(in, "flowers", box(52, 10, 4, 4), null, null, null);
    List<Finding> found = findings("site.restriction");
    assertEquals(
        List.of("low crown", "flowers"),
        found.stream().map(f -> f.element().get().name()).toList());
    assertEquals(Severity.NOTE, found.get(1).severity());
  }

  @Test
  void sightTriangle_curbWithoutDistance_isRefused() {
    assertThrows(
        PlanException.class,
        () ->
            LotWords.lot(
                in,
                List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)),
                s ->
                    SightWords.sightTriangle(
                        s, "south", "east", ft(25), ft(25), "curb", null, ft(2), ft(8), null)));
  }

  @Test
  void easement_allowingPlanting_barsBuildingsOnly() {
    RestrictionWords.easement(in, "drain", box(0, 110, 60, 10), "the city", null);
    BedWords.bed(in, "bed", box(0, 112, 4, 4), null, null, null);
    BuiltWords.structure(in, "shed", box(10, 112, 8, 8), ft(8), null, null);
    List<Finding> found = findings("site.restriction");
    assertEquals(List.of("shed"), found.stream().map(f -> f.element().get().name()).toList());
    assertTrue(found.get(0).source().cite().contains("the city"));
  }

  @Test
  void clearance_ofAWell_keepsBedsAway() {
    RestrictionWords.clearance(in, "well", box(0, 0, 2, 2), ft(10), "beds", null);
    BedWords.bed(in, "near", box(8, 0, 4, 4), null, null, null);
    BedWords.bed(in, "far", box(12.5, 0, 4, 4), null, null, null);
    List<Finding> found = findings("site.restriction");
    assertEquals(List.of("near"), found.stream().map(f -> f.element().get().name()).toList());
    assertTrue(found.get(0).source().cite().contains("verify locally"));
  }

  @Test
  void treeRoots_pavingWithinTwelveDiameters_isAWarning() {
    TreeWords.tree(in, "oak", p(0, 0), ft(20), ft(30), null, Length.inches(12), null, null, null);
    BuiltWords.paving(in, "near", box(11, 0, 5, 5), null, null);
    BuiltWords.paving(in, "far", box(12.5, -10, 5, 5), null, null);
    List<Finding> found = findings("site.tree-roots");
    assertEquals(List.of("near"), found.stream().map(f -> f.element().get().name()).toList());
    assertTrue(found.get(0).text().contains("within 12.00 ft of the trunk"), found.get(0).text());
  }

  @Test
  void side_setbackFromTheCurb_losesWhatLiesOutside() {
    LotWords.lot(
        in,
        List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)),
        s -> SideWords.side(s, "south", "front", ft(30), null, "curb", ft(12), null));
    Lot.Edge south =
        draft.lot().get().edges().stream().filter(e -> e.name().equals("south")).findAny().get();
    assertEquals(18, south.setback().feet(), 1e-9);
  }

  @Test
  void access_narrowPath_isOnFootOnly() {
    PathWords.gate(in, "gate", p(0, 0), null, null);
    PathWords.path(in, "main", Line.between(p(0, 0), p(40, 0)), ft(3), "barrow", null, null);
    PathWords.path(in, "narrow", Line.between(p(20, 0), p(20, 30)), ft(1.5), null, null, null);
    BedWords.bed(in, "by main", box(5, 1.5, 4, 4), null, null, null);
    BedWords.bed(in, "by narrow", box(21, 20, 4, 4), null, null, null);
    BedWords.bed(in, "lost", box(50, 50, 4, 4), null, null, null);
    List<Finding> found = findings("site.access");
    assertEquals(
        List.of("by narrow", "lost"), found.stream().map(f -> f.element().get().name()).toList());
    assertTrue(found.get(0).text().endsWith("it can be reached on foot"));
  }

  @Test
  void access_fromHeaps_isAskedForToo() {
    PathWords.path(in, "main", Line.between(p(0, 0), p(40, 0)), ft(3), "barrow", null, null);
    BedWords.bed(in, "by main", box(5, 1.5, 4, 4), null, null, null);
    BedWords.bed(in, "lost", box(50, 50, 4, 4), null, null, null);
    draft
        .attributes()
        .add(WayStart.KEY, new WayStart("drive", box(36, 1, 10, 10)), in.place())
        .add(WayStart.KEY, new WayStart("lawn", box(80, 80, 10, 10)), in.place());
    List<Finding> found = findings("site.access");
    assertEquals(2, found.size(), "one bed from the drive, one finding for all from the lawn");
    assertTrue(found.get(0).text().contains("comes to 'drop zone lawn'"), found.toString());
    assertEquals("lost", found.get(1).element().get().name());
  }

  /** E05: reference guide p. 36; ground at four corners to a grade of 83 ft over 2,000 sq ft. */
  @Test
  void earth_byGridAndSections_standsInTheTable() {
    double side = Math.sqrt(2000);
    EarthWords.earthGrid(in, "pad", List.of(ft(-7.6), ft(-5.5), ft(-8.4), ft(-2.5)), 2, ft(side));
    EarthWords.earthSections(
        in, "ditch", List.of(Area.squareFeet(27), Area.squareFeet(27)), ft(10), "cut");
    Table table = GroundTables.earth(draft.freeze());
    assertEquals(444.4, ((Volume) table.rows().get(0).get(2).value().get()).cubicYards(), 0.05);
    assertEquals(10, ((Volume) table.rows().get(1).get(1).value().get()).cubicYards(), 1e-9);
    PlanException uneven =
        assertThrows(
            PlanException.class,
            () ->
                EarthWords.earthGrid(
                    in, "odd", List.of(ft(1), ft(1), ft(1), ft(1), ft(1)), 2, ft(9)));
    assertTrue(
        uneven.getMessage().contains("5 depths cannot stand in rows of 2"), uneven.getMessage());
  }

  /**
   * Soil check P17: a tree of 25 ft at 20 ft from a drain field (North Carolina Cooperative
   * Extension); P18: vegetables closer than 10 ft (Clemson, University of California).
   */
  @ParameterizedTest
  @CsvSource({"20, 8, 'tall,greens'", "24.9, 10, tall", "25, 9.9, greens", "25, 10, ''"})
  void drainField_treesAndVegetables_keepTheirDistance(double treeFt, double bedFt, String found) {
    RestrictionWords.drainField(in, "field", box(0, 0, 20, 20), null);
    TreeWords.tree(
        in, "tall", p(20 + treeFt, 10), ft(10), ft(25), null, null, "deciduous", null, null);
    BedWords.bed(in, "greens", box(0, 20 + bedFt, 20, 4), "annual", null, null);
    BedWords.bed(in, "berries", box(-5, 0, 4, 20), "perennial", null, null);
    assertEquals(
        found,
        String.join(
            ",",
            findings("site.drain-field").stream()
                .map(f -> f.element().get().name())
                .sorted(java.util.Comparator.reverseOrder())
                .toList()));
  }

  /** P18 again: whatever the distance asked, never on the field. */
  @Test
  void drainField_vegetablesOnIt_areAnErrorWithTheReason() {
    RestrictionWords.drainField(in, "field", box(0, 0, 20, 20), ft(1));
    BedWords.bed(in, "greens", box(16, 0, 8, 20), "annual", null, null);
    Finding on = findings("site.keep-out").get(0);
    assertEquals(Severity.ERROR, on.severity());
    assertTrue(on.text().contains("drain field"), on.text());
    assertEquals(1, findings("site.drain-field").size());
  }

  /** Coordinates in metres do not hold feet exactly: the limit is far enough anywhere on a lot. */
  @Property(tries = 100, seed = "20261125")
  void drainField_bedAtTheLimit_isFarEnoughAnywhere(@ForAll @IntRange(max = 2000) int tenths) {
    Draft lot = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
    PlanScope at = new PlanScope(lot, new SourceRef("t.groovy", 1, 1));
    double x = tenths / 10.0;
    RestrictionWords.drainField(at, "field", box(x, 0, 20, 20), null);
    BedWords.bed(at, "greens", box(x + 30, 0, 4, 20), "annual", null, null);
    BedWords.bed(at, "beans", box(x - 13.99, 0, 4, 20), "annual", null, null);
    Plan plan = lot.freeze();
    assertEquals(
        List.of("beans"),
        new SitePlugin()
            .checks().stream()
                .flatMap(
                    c ->
                        c
                            .run(plan, FactGraph.of(new SitePlugin().calculators()).run(plan))
                            .stream())
                .filter(f -> f.rule().equals("site.drain-field"))
                .map(f -> f.element().get().name())
                .toList());
  }

  @Test
  void keyholeAndRing_haveTheDerivedAreas() {
    Shape ring = ShapeWords.ring(in, p(0, 0), ft(2), ft(5));
    assertEquals(Math.PI * 21, ring.area().squareFeet(), 0.2);
    Shape keyhole = ShapeWords.keyhole(in, p(0, 0), ft(4), Angle.ZERO, ft(1.5), ft(1));
    double way = 1.5 * (4 - 1);
    assertEquals(Math.PI * (16 - 1) - way, keyhole.area().squareFeet(), 0.3);
    assertTrue(!keyhole.contains(p(0, 3)), "the entrance faces up");
    assertThrows(
        PlanException.class, () -> ShapeWords.keyhole(in, p(0, 0), ft(1), null, null, ft(1)));
    assertThrows(PlanException.class, () -> ShapeWords.ring(in, p(0, 0), ft(5), ft(2)));
  }

  private void slopingEastAt(double ratio) {
    LevelWords.levels(
        in,
        null,
        s -> {
          for (double x : new double[] {-50, 150}) {
            for (double y : new double[] {-50, 150}) {
              LevelWords.level(s, p(x, y), ft(100 - x * ratio));
            }
          }
        });
  }

  /** On a plane slope water runs towards one side of every house: R401.3 fails there. */
  @Test
  void fallFromHouse_planeSlope_isAWarning() {
    slopingEastAt(0.05);
    BuiltWords.building(in, "house", box(10, 30, 30, 40), ft(10), null, null, null, null, null);
    assertTrue(findings("site.fall-from-house").get(0).text().contains("rises 5.0 %"));
  }

  /** ramps of at most 1:12, landings of at most 2 %, 36 in clear (405.5). */
  @ParameterizedTest
  @CsvSource({
    "0.06, 'must be built as a ramp, 36 in (91 cm) clear with landings of at most 2 %'",
    "0.0833, must be built as a ramp",
    "0.0834, is steeper than a ramp may be"
  })
  void pathSlope_accessiblePath_isARampUpToOneInTwelve(double slope, String said) {
    slopingEastAt(slope);
    PathWords.path(in, "a", Line.between(p(0, 0), p(40, 0)), ft(4), "accessible", null, null);
    String text = findings("site.path-slope").get(0).text();
    assertTrue(text.contains(said), text);
  }

  /** T-16, a weak source: one page advises against swales above 15 degrees (1:3.75). */
  @ParameterizedTest
  @CsvSource({"0.26, false", "0.28, true"})
  void swale_onSteepGround_isAdvisedAgainst(double slope, boolean said) {
    slopingEastAt(slope);
    LevelWords.swale(
        in, "level", Line.between(p(45, 30), p(45, 60)), ft(1), Length.inches(6), null, null);
    assertEquals(
        said, findings("site.swale").stream().anyMatch(f -> f.text().contains("above 27 %")));
  }

  /** T-15: level along a contour; within 10 ft of a house it conflicts with T-02. */
  @Test
  void swale_onContourByTheHouse_isAWarningAndAcrossTheSlopeIsUneven() {
    slopingEastAt(0.05);
    BuiltWords.building(in, "house", box(10, 30, 30, 40), ft(10), null, null, null, null, null);
    LevelWords.swale(
        in, "level", Line.between(p(45, 30), p(45, 60)), ft(1), Length.inches(6), null, null);
    LevelWords.swale(
        in, "steep", Line.between(p(60, 30), p(90, 30)), ft(1), Length.inches(6), 1.5, null);
    List<String> texts = findings("site.swale").stream().map(Finding::text).toList();
    assertEquals(3, texts.size(), texts.toString());
    assertTrue(texts.get(0).startsWith("comes within 10 ft (3 m) of building \"house\""));
    assertTrue(texts.get(1).startsWith("its sides of 1.5:1 are steeper"));
    assertTrue(texts.get(2).startsWith("the ground along it differs by 1.50 ft"));
  }
}
