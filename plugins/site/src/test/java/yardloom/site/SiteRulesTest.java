package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.LotScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.country.CountryWords;
import yardloom.site.lot.LotRules;
import yardloom.site.lot.LotWords;
import yardloom.site.path.PathWords;
import yardloom.site.setback.RestrictionWords;
import yardloom.site.setback.SideWords;

class SiteRulesTest {
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

  private void lot(Consumer<LotScope> sides) {
    LotWords.lot(in, List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)), sides);
  }

  private static void setbacks(LotScope s, double front, double rear, double west, double east) {
    SideWords.side(s, "south", "front", ft(front), "zoning sheet", null, null, null);
    SideWords.side(s, "north", "rear", ft(rear), null, null, null, null);
    SideWords.side(s, "west", "side", ft(west), null, null, null, null);
    SideWords.side(s, "east", "side", ft(east), null, null, null, null);
  }

  private void bed(String name, Shape shape) {
    BedWords.bed(in, name, shape, null, null, null);
  }

  private List<Finding> findings() {
    Plan plan = draft.freeze();
    List<Finding> all = new ArrayList<>();
    for (Check check : new SitePlugin().checks()) {
      all.addAll(check.run(plan, FactGraph.of(new SitePlugin().calculators()).run(plan)));
    }
    return all;
  }

  private List<Finding> findings(String rule) {
    return findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  @Test
  void checks_emptyPlan_findNothing() {
    assertEquals(List.of(), findings());
  }

  @Test
  void bedOutsideLot_halfOutside_isAnErrorWithAreaAndPlace() {
    lot(null);
    bed("east bed", box(58, 10, 4, 20));
    Finding f = findings("site.bed-outside-lot").get(0);
    assertEquals(Severity.ERROR, f.severity());
    assertEquals("40.0 sq ft of 80.0 sq ft lie outside the lot", f.text());
    assertEquals("bed \"east bed\"", f.element().get().toString());
    assertEquals(7, f.place().line());
    assertEquals(40, f.where().get().area().squareFeet(), 1e-6);
  }

  @Test
  void bedOverlap_bedAndPath_namesBothAndTheArea() {
    bed("a", box(0, 0, 4, 20));
    bed("b", box(3, 0, 4, 20));
    PathWords.path(in, "walk", Line.between(p(8, 0), p(8, 20)), ft(3), null, null, null);
    List<String> texts = findings("site.bed-overlap").stream().map(Finding::text).toList();
    assertEquals(2, texts.size());
    assertTrue(texts.get(1).startsWith("overlaps path \"walk\" on 10.0 sq ft"));
    assertTrue(texts.get(0).startsWith("overlaps bed \"a\" on 20.0 sq ft"));
  }

  @Test
  void bedSetback_bedByTheStreet_isAWarningNamingTheRule() {
    lot(s -> setbacks(s, 25, 20, 5, 5));
    bed("street", box(20, 20, 10, 10));
    Finding f = findings("site.bed-setback").get(0);
    assertEquals("50.0 sq ft lie within the setback of 25.00 ft from south", f.text());
    assertTrue(f.source().cite().contains("zoning sheet"), f.source().cite());
  }

  /** Z-11: 30 + 31 ft on a lot of 60 ft. */
  @Test
  void setbackRoom_sidesMeet_namesTheRulesThatTookTheLot() {
    lot(s -> setbacks(s, 25, 20, 30, 31));
    Finding f = findings("site.setback-room").get(0);
    assertEquals(
        "the setbacks leave no ground; the lot is taken up by those from east (31.00 ft), west"
            + " (30.00 ft)",
        f.text());
  }

  @Test
  void keepOut_bedOnSepticField_isAnErrorWithTheReason() {
    RestrictionWords.keepOut(in, "septic", box(0, 0, 20, 20), "leach field");
    bed("a", box(18, 0, 4, 10));
    assertTrue(
        findings("site.keep-out").get(0).text().contains("kept free because of leach field"));
  }

  @Test
  void utilityClearance_bedOverGas_tellsToCall() {
    CountryWords.country(in, "US");
    BuiltWords.utility(in, "gas", Line.between(p(0, 5), p(60, 5)), "gas", ft(2));
    bed("near", box(0, 6, 4, 10));
    bed("far", box(10, 7, 4, 10));
    List<Finding> found = findings("site.utility-clearance");
    assertEquals(1, found.size());
    assertTrue(found.get(0).advice().contains("call 811"));
  }

  /** P-01 and P-06: 4 ft from two sides is within reach, 5 ft is not. */
  @Test
  void bedReach_fourAndFiveFeet_onlyTheWiderIsOutOfReach() {
    bed("four", box(0, 0, 4, 20));
    bed("five", box(10, 0, 5, 20));
    List<Finding> found = findings("site.bed-reach");
    assertEquals(1, found.size());
    assertEquals("five", found.get(0).element().get().name());
    assertEquals("16.0 sq ft lie further than 24 in from where one can stand", found.get(0).text());
  }

  /** P-02: against a fence a bed is reached from one side only. */
  @Test
  void bedReach_besideAFence_countsOneSide() {
    BarrierWords.fence(
        in, "f", Line.between(p(0, 0), p(0, 40)), ft(6), null, null, null, null, null);
    bed("two", box(0.1, 0, 2, 20));
    bed("three", box(0.1, 25, 3, 15));
    List<Finding> found = findings("site.bed-reach");
    assertEquals(List.of("three"), found.stream().map(f -> f.element().get().name()).toList());
  }

  @Test
  void bedReach_rowsWithNarrowGaps_areNotEnteredThere() {
    bed("a", box(0, 0, 4, 20));
    bed("b", box(4.5, 0, 4, 20));
    assertEquals(2, findings("site.bed-reach").size());
  }

  @Test
  void pathWidth_narrowBarrowPath_tellsTheLeast() {
    PathWords.path(in, "walk", Line.between(p(8, 0), p(8, 20)), ft(2), "barrow", null, null);
    assertEquals(
        "24 in wide; barrow use needs at least 30 in", findings("site.path-width").get(0).text());
  }

  @Test
  void sideRole_unstatedSides_areNoted() {
    lot(s -> SideWords.side(s, "south", "front", ft(5), null, null, null, null));
    assertEquals(
        "nothing is said about the lot side(s) east, north, west",
        findings("site.side-role").get(0).text());
    assertTrue(
        findings("site.side-role").get(0).advice().endsWith("'front', setback: 25.ft)"),
        findings("site.side-role").get(0).advice());
  }

  /** A metric plan is advised in metres. */
  @Test
  void sideRole_ofAMetricPlan_isAdvisedInMetres() {
    Draft metric = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.METRIC, "EUR"));
    LotWords.lot(
        new PlanScope(metric, new SourceRef("t.groovy", 1, 1)),
        List.of(p(0, 0), p(50, 0), p(50, 90)),
        null);
    String advice = LotRules.sideRoles(metric.freeze()).get(0).advice();
    assertTrue(advice.endsWith("side('south', role: 'front', setback: 7.5.m)"), advice);
  }

  private Table table(String id) {
    Plan plan = draft.freeze();
    return new SitePlugin()
        .tables().stream()
            .filter(t -> t.id().equals(id))
            .findFirst()
            .get()
            .make(plan, FactGraph.of(new SitePlugin().calculators()).run(plan));
  }

  private static double ft2(Cell cell) {
    return ((Area) cell.value().get()).squareFeet();
  }

  @Test
  void areas_overlappingElements_addUpToTheLot() {
    lot(null);
    BuiltWords.building(in, "house", box(10, 30, 30, 40), ft(10), null, null, null, null, null);
    BuiltWords.paving(in, "terrace", box(10, 65, 30, 15), null, null);
    bed("over", box(55, 90, 10, 10));
    Table table = table("areas");
    double sum = 0;
    for (int i = 0; i < table.rows().size() - 1; i++) {
      sum += ft2(table.rows().get(i).get(1));
    }
    assertEquals(7200, sum, 1e-3);
    assertEquals(7200, ft2(table.rows().get(table.rows().size() - 1).get(1)), 1e-6);
    assertEquals(30 * 10, ft2(table.rows().get(1).get(1)), 1e-4, "the terrace under the house");
    assertEquals(50, ft2(table.rows().get(2).get(1)), 1e-4, "the bed's part on the lot");
  }

  /** Z-09: what is left may be built on: 50 x 75 ft. */
  @Test
  void buildableLimits_interiorLot_leavesTheHalfPlaneRectangle() {
    lot(s -> setbacks(s, 25, 20, 5, 5));
    Table table = table("buildable-limits");
    List<List<Cell>> rows = table.rows();
    assertEquals("may be built on", rows.get(rows.size() - 2).get(0).value().get());
    assertEquals(3750, ft2(rows.get(rows.size() - 2).get(1)), 1e-3);
    assertEquals(7200, ft2(rows.get(rows.size() - 1).get(1)), 1e-6);
  }

  /** A well pit 2 ft square from which beds keep 10 ft: 80 + 100 π = 394.2 sq ft about it. */
  @Test
  void buildableLimits_groundThatOnlyBedsAvoid_isAReasonOfItsOwn() {
    lot(s -> setbacks(s, 25, 20, 5, 5));
    RestrictionWords.clearance(in, "well", box(29, 59, 2, 2), Length.feet(10), "beds", null);
    List<List<Cell>> rows = table("buildable-limits").rows();
    List<Cell> reason = rows.get(rows.size() - 3);
    assertEquals("clearance of well (not for beds)", reason.get(0).value().get());
    assertEquals(80 + 100 * Math.PI, ft2(reason.get(1)), 0.5);
    List<Cell> rest = rows.get(rows.size() - 2);
    assertEquals("may be built and planted on", rest.get(0).value().get());
    assertEquals(3750 - 80 - 100 * Math.PI, ft2(rest.get(1)), 0.5);
  }

  @Test
  void tables_withoutLot_areEmpty() {
    for (String id : List.of("areas", "buildable-limits", "lot-sides", "beds")) {
      assertTrue(table(id).isEmpty(), id);
    }
  }
}
