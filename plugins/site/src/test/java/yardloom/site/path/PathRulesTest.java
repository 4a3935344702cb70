package yardloom.site.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.lawn.GroundWords;

/** Widths, passing and turning places of paths against published access rules. */
class PathRulesTest {
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

  private void path(String name, String use, double widthIn, Point from, Point to) {
    PathWords.path(in, name, Line.between(from, to), Length.inches(widthIn), use, null, null);
  }

  /**
   * 30 in is 76.2 cm (NIST SP 811): a metric plan asks for 76 cm, so 76 cm is enough, 75 is not.
   */
  @Test
  void width_thatPrintsAsTheLeast_isEnough() {
    Draft metric = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.METRIC, "$"));
    PlanScope plan = new PlanScope(metric, new SourceRef("t.groovy", 1, 1));
    Line way = Line.between(p(0, 0), p(30, 0));
    PathWords.path(plan, "enough", way, Length.metres(0.76), "barrow", null, null);
    PathWords.path(plan, "narrow", way, Length.metres(0.75), "barrow", null, null);
    List<Finding> found =
        PathRules.width(metric.freeze()).stream()
            .filter(f -> f.severity() == Severity.WARNING)
            .toList();
    assertEquals(1, found.size(), found.toString());
    assertEquals("75 cm wide; barrow use needs at least 76 cm", found.get(0).text());
  }

  /** A-03 and P-05: the published least and advised widths, on either side of each limit. */
  @ParameterizedTest(name = "{0} {1} in")
  @CsvFileSource(resources = "path-widths.csv", numLinesToSkip = 1)
  void width_publishedLimit_isWarnedOrNotedBelowIt(
      String use, double widthIn, String expected, String row, String source) {
    path("p", use, widthIn, p(0, 0), p(10, 0));
    List<Finding> found = PathRules.width(draft.freeze());
    assertEquals(
        expected,
        found.isEmpty() ? "fine" : found.get(0).severity() == Severity.WARNING ? "warn" : "note",
        row + " " + source);
  }

  @Test
  void width_pathRuleOfTheRegion_replacesTheUsual() {
    PathWords.pathRule(
        in, "accessible", Length.inches(48), null, null, null, null, "city access code");
    path("p", "accessible", 44, p(0, 0), p(10, 0));
    Finding found = PathRules.width(draft.freeze()).get(0);
    assertEquals(Severity.WARNING, found.severity());
    assertTrue(found.source().cite().contains("city access code"), found.source().cite());
  }

  /** A-08 with A-04 (2010 ADA, passing spaces): 36 in wide and 450 ft long needs two at least. */
  @Test
  void passing_450FeetOf36Inches_needsTwoPlaces() {
    path("long", "accessible", 36, p(0, 0), p(450, 0));
    Finding found = PathRules.passing(draft.freeze()).get(0);
    assertTrue(found.text().contains("450.00 ft without room"), found.text());
    assertTrue(found.text().endsWith("2 at least"), found.text());
    assertTrue(found.source().cite().contains("ADA"), found.source().cite());
  }

  /** with 60 by 60 in every 150 ft no stretch is longer than 200 ft. */
  @Test
  void passing_placesEvery150Feet_isEnough() {
    path("long", "accessible", 36, p(0, 0), p(450, 0));
    BuiltWords.paving(in, "place 1", box(147.5, -1.5, 5, 5), "concrete", null);
    BuiltWords.paving(in, "place 2", box(297.5, -1.5, 5, 5), "concrete", null);
    assertEquals(List.of(), PathRules.passing(draft.freeze()));
  }

  /** a place of 48 in is none. */
  @Test
  void passing_placesTooNarrow_areNotCounted() {
    path("long", "accessible", 36, p(0, 0), p(300, 0));
    BuiltWords.paving(in, "place", box(148, -1.5, 4, 4), "concrete", null);
    assertEquals(1, PathRules.passing(draft.freeze()).size());
  }

  /** 60 in wide all along, or 200 ft long, needs none. */
  @Test
  void passing_wideOrShort_isNotAsked() {
    path("wide", "accessible", 60, p(0, 0), p(450, 0));
    path("short", "accessible", 36, p(0, 50), p(200, 50));
    path("on foot", "foot", 24, p(0, 100), p(450, 100));
    assertEquals(List.of(), PathRules.passing(draft.freeze()));
  }

  /** A-06 (2010 ADA 304.3.1, from memory): a 60 in circle to turn in where a path ends. */
  @Test
  void path_throughABuilding_isFound_alongItsWallIsNot() {
    BuiltWords.building(in, "house", box(10, 10, 20, 20), ft(10), null, null, null, null, null);
    path("through", "foot", 24, p(0, 20), p(40, 20));
    path("along", "foot", 24, p(0, 9), p(40, 9));
    List<Finding> found = PathRules.throughBuilding(draft.freeze());
    assertEquals(1, found.size());
    assertEquals("through", found.get(0).element().orElseThrow().name());
    assertTrue(found.get(0).text().contains("40.0 sq ft"), found.get(0).text());
  }

  @Test
  void turning_blindEnds_areFoundUnlessPavedWideEnough() {
    path("blind", "accessible", 36, p(0, 0), p(40, 0));
    BuiltWords.paving(in, "turning", box(40, -2.5, 5, 5), "concrete", null);
    List<Finding> found = PathRules.turning(draft.freeze());
    assertEquals(1, found.size(), "the start is blind, the end has its place");
    assertTrue(found.get(0).text().contains("60 in"), found.get(0).text());
    assertEquals(Source.Standing.MEMORY, found.get(0).source().standing());
  }

  @Test
  void turning_endAtAGateOrAnotherPath_isNotBlind() {
    path("first", "accessible", 48, p(0, 0), p(40, 0));
    path("second", "accessible", 48, p(40, 0), p(40, 30));
    PathWords.gate(in, "street", p(0, 0), null, null);
    PathWords.gate(in, "lane", p(40, 31), null, null);
    assertEquals(List.of(), PathRules.turning(draft.freeze()));
  }

  /** A barrow turns on open ground; between beds and a fence it cannot. */
  @Test
  void turning_barrowPathShutInByBeds_isNotedOnceForAll() {
    for (int i = 0; i < 2; i++) {
      double x = 20 * i;
      path("row " + i, "barrow", 36, p(x, 0), p(x, 30));
      BedWords.bed(in, "left " + i, box(x - 5.5, 0, 4, 31), null, null, null);
      BedWords.bed(in, "right " + i, box(x + 1.5, 0, 4, 31), null, null, null);
      BedWords.bed(in, "head " + i, box(x - 5.5, 31, 11, 4), null, null, null);
    }
    List<Finding> found = PathRules.turning(draft.freeze());
    assertEquals(1, found.size());
    assertEquals(Severity.NOTE, found.get(0).severity());
    assertTrue(found.get(0).text().contains("row 0, row 1"), found.get(0).text());
  }

  /**
   * A path of 4 ft that ends at a lawn turned over: an aisle of 3 ft between two beds leads a
   * barrow on, since 30 in is the least width of its path; one of 2 ft does not.
   */
  @Test
  void turning_barrowPathIntoAnAisleOfMulchedGround_isFineFromThirtyInches() {
    path("p", "barrow", 48, p(0, 0), p(30, 0));
    GroundWords.mulchedGround(in, "turned", box(30, -20, 30, 40), null, null);
    BedWords.bed(in, "north", box(32, -20, 30, 40), null, null, null);
    BedWords.bed(in, "left", box(0, 2, 30, 9), null, null, null);
    BedWords.bed(in, "right", box(0, -11, 30, 9), null, null, null);
    assertEquals(1, PathRules.turning(draft.freeze()).size());
    Draft wider = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
    PlanScope other = new PlanScope(wider, new SourceRef("t.groovy", 7, 3));
    PathWords.path(
        other, "p", Line.between(p(0, 0), p(30, 0)), Length.inches(48), "barrow", null, null);
    GroundWords.mulchedGround(other, "turned", box(30, -20, 30, 40), null, null);
    BedWords.bed(other, "north", box(33, -20, 30, 40), null, null, null);
    BedWords.bed(other, "left", box(0, 2, 30, 9), null, null, null);
    BedWords.bed(other, "right", box(0, -11, 30, 9), null, null, null);
    assertEquals(List.of(), PathRules.turning(wider.freeze()));
  }

  @Test
  void turning_barrowPathIntoOpenGround_isFine() {
    path("row", "barrow", 36, p(0, 0), p(0, 30));
    BedWords.bed(in, "left", box(-5.5, 0, 4, 26), null, null, null);
    assertEquals(List.of(), PathRules.turning(draft.freeze()));
  }
}
