package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static yardloom.site.PaintedYard.box;
import static yardloom.site.PaintedYard.m;
import static yardloom.site.PaintedYard.p;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Volume;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.ground.EarthWords;
import yardloom.site.ground.LevelWords;
import yardloom.site.path.PathWords;
import yardloom.site.tree.TreeWords;

/** Ground that slopes, from its levels to sheets, tables and findings; lot of 20 m by 30 m. */
class GradingTest {
  private final PaintedYard yard = new PaintedYard().lot(20, 30);

  /** A plane through the corners of the lot and 4 m around it, 10 m high in the lower left. */
  private void plane(double right, double up) {
    LevelWords.levels(
        yard.in,
        m(0.25),
        in -> {
          for (double x : List.of(-4.0, 24.0)) {
            for (double y : List.of(-4.0, 34.0)) {
              LevelWords.level(in.at(yard.in.place()), p(x, y), m(10 + right * x + up * y));
            }
          }
        });
  }

  private static List<SheetPlan> sheet(Outcome outcome, String id) {
    return outcome.sheets().stream().filter(s -> s.id().equals(id)).toList();
  }

  private List<String> findings(String rule) {
    return yard.study().findings().stream()
        .filter(f -> f.rule().equals(rule))
        .map(f -> f.severity() + " " + f.text())
        .toList();
  }

  private void swale(String name, Line line, double sides) {
    LevelWords.swale(yard.in, name, line, m(0.5), m(0.25), sides, null);
  }

  /**
   * 5 % to the right: 1 m over the lot. The section is a trapezoid of 20 m, 0.6 m deep at its foot:
   * 20 × 0.6 + 20 × 1 / 2 = 22 m². The bed from 4 m to 8 m is named over its middle, 6 m along and
   * 0.3 m up.
   */
  @Test
  void section_runsAcross_whereTheGroundFallsMoreSo() {
    plane(0.05, 0.002);
    BedWords.bed(yard.in, "Kale", box(4, 14, 4, 2), "annual", null, null);
    BedWords.bed(yard.in, "Far", box(4, 2, 3, 2), "annual", null, null);
    TreeWords.tree(yard.in, "Oak", p(10, 15), m(3), m(5), m(1), null, "deciduous", null, null);
    Panel.Figure figure = figure(sheet(yard.study(), "grading").get(0));
    assertEquals(
        "Section A–A through the middle of the lot, left to right of the plan", figure.title());
    List<String> marks = new ArrayList<>();
    figure.marks().forEach(mark -> marks.add(PaintedYard.shown(mark)));
    Mark.Region ground = (Mark.Region) figure.marks().get(0);
    assertEquals(22, ground.shape().area().squareMetres(), 1e-6);
    assertEquals(-0.6, ground.shape().bounds().getMinY(), 1e-9);
    assertEquals(1.0, ground.shape().bounds().getMaxY(), 1e-9);
    // The middle of the lot lies 15 m up: 0.03 m above the plane's line through (0, 0).
    assertEquals(
        List.of(
            "section-level from 0.00,0.00 to 20.00,0.00",
            // Levels 0.55 m over the ends and under the middle; names 0.55 m over their ground.
            "'10.03 m' 2.5 mm CENTRE at 0.00,0.55",
            "'10.53 m' 2.5 mm CENTRE at 10.00,-0.05",
            "'11.03 m' 2.5 mm CENTRE at 20.00,1.55",
            "section-bed from 4.00,0.20 to 8.00,0.40",
            "'Kale' 2.5 mm CENTRE at 6.00,0.85"),
        marks.subList(1, marks.size() - 1));
    assertEquals("20.00 m", ((Mark.Dimension) figure.marks().get(marks.size() - 1)).text());
    assertEquals(
        List.of("Existing ground, cut", "Level of the lowest ground", "Bed"),
        figure.legend().stream().map(LegendEntry::text).toList());
  }

  private static Panel.Figure figure(SheetPlan sheet) {
    return sheet.panels().stream()
        .filter(x -> x instanceof Panel.Figure)
        .map(x -> (Panel.Figure) x)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void section_runsUp_whereTheGroundFallsMoreSo() {
    plane(0.01, -0.03);
    Panel.Figure figure = figure(sheet(yard.study(), "grading").get(0));
    assertEquals(
        "Section A–A through the middle of the lot, bottom to top of the plan", figure.title());
    assertEquals("'10.10 m' 2.5 mm CENTRE at 0.00,1.45", PaintedYard.shown(figure.marks().get(2)));
    assertEquals("'9.20 m' 2.5 mm CENTRE at 30.00,0.55", PaintedYard.shown(figure.marks().get(4)));
  }

  /** Less than 0.3 m over the whole lot is level: 0.014 × 20 = 0.28, 0.016 × 20 = 0.32. */
  @ParameterizedTest
  @CsvSource({"0.014, 0", "0.016, 1"})
  void sheet_isMadeWhereTheGroundFalls(double ratio, int sheets) {
    plane(ratio, 0);
    assertEquals(sheets, sheet(yard.study(), "grading").size());
    assertTrue(sheet(new PaintedYard().lot(20, 30).study(), "grading").isEmpty(), "no levels");
  }

  @Test
  void sheet_enlargesBedsAndSwales_andHasTheTablesOfEarth() {
    plane(0.05, 0);
    assertEquals(
        List.of("SitePlan", "Figure", "Notes"), panels(sheet(yard.study(), "grading").get(0)));
    BedWords.bed(yard.in, "Kale", box(4, 14, 3, 2), "annual", null, null);
    BuiltWords.structure(yard.in, "Shed", box(15, 25, 3, 2), m(2), null, null);
    swale("Ditch", Line.between(p(12, 4), p(12, 10)), 3);
    Outcome outcome = yard.study();
    SheetPlan grading = sheet(outcome, "grading").get(0);
    assertEquals(15, grading.number());
    assertEquals(
        List.of("SitePlan", "Enlarged", "Figure", "Figure", "Notes", "level-beds", "swales"),
        panels(grading));
    Shape window = ((Panel.Enlarged) grading.panels().get(1)).window().orElseThrow();
    assertEquals(6 + 2 * 6, window.area().squareMetres(), 1e-6, "bed and ditch, no shed");
    assertEquals(
        Set.of("site.lot-contours", "site.section-line", "site.spot-levels", "site.utility"),
        ((Panel.SitePlan) grading.panels().get(0)).layers());
    // (0.5 + 3 × 0.25) × 0.25 × 6 = 1.875 m³.
    assertEquals(
        List.of("Ditch | 6.00 | 2.00 | 25.0 | 1.88 | 1\u00a0875"),
        PaintedYard.printed(outcome, "swales"));
    // The plane over x = 4..7 m is balanced at 5.5 m: 10.275 m. The wedge of 1.5 m × 0.075 m / 2
    // above it, 2 m deep, is 0.1125 m³.
    assertEquals(List.of("Kale | 10.28 | 0.11 | 0.0"), PaintedYard.printed(outcome, "level-beds"));
    assertEquals(OnPaper.ALWAYS, outcome.onPaper().get("level-beds"));
  }

  private static List<String> panels(SheetPlan sheet) {
    return sheet.panels().stream()
        .map(
            x ->
                x instanceof Panel.TableBlock block
                    ? block.table().id()
                    : x.getClass().getSimpleName())
        .toList();
  }

  /**
   * Sections 0, 6, 8 m² every 3 m: a pyramid of 3 × 6 / 3 = 6 and 3 × (6 + 8) / 2 = 21. The grid of
   * 2 m cells: means (0.5 + 0.3 + 0.2 + 0.4) / 4 = 0.35 and (0.3 − 0.9 + 0.4 − 0.6) / 4 = −0.2.
   */
  @Test
  void earth_isDugAndFilled_inTableAndJobs() {
    EarthWords.earthSections(
        yard.in,
        "Berm",
        List.of(Area.squareMetres(0), Area.squareMetres(6), Area.squareMetres(8)),
        m(3),
        null);
    EarthWords.earthSections(
        yard.in, "Ditch", List.of(Area.squareMetres(2), Area.squareMetres(2)), m(5), "cut");
    EarthWords.earthGrid(
        yard.in, "Pad", List.of(m(0.5), m(0.3), m(-0.9), m(0.2), m(0.4), m(-0.6)), 3, m(2));
    swale("Swale", Line.between(p(12, 4), p(12, 10)), 3);
    Outcome outcome = yard.study();
    assertEquals(
        List.of("Berm | 0.00 | 27.00", "Ditch | 10.00 | 0.00", "Pad | 1.40 | 0.80"),
        PaintedYard.printed(outcome, "earth"));
    assertEquals(
        List.of(
            "DIG_EARTH 1.875",
            "FILL_EARTH 27.0",
            "DIG_EARTH 10.0",
            "DIG_EARTH 1.4",
            "FILL_EARTH 0.8"),
        outcome.results().all(YardFacts.JOBS).stream()
            .map(
                j ->
                    j.task()
                        + " "
                        + Math.round(1e6 * ((Volume) j.amount().value()).cubicMetres()) / 1e6)
            .toList());
  }

  @Test
  void house_wantsGroundThatFalls_lessOnPaving() {
    // 3 % away from the house on the right: enough on paving, not on soil.
    plane(-0.03, 0);
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    // The left wall is the worst: there the ground rises.
    assertEquals(
        List.of(
            "WARNING the ground rises 3.0 % away from it over 10 ft (3 m) where it is worst; a fall"
                + " of 5 % is asked, 2 % on hard surfaces"),
        findings("site.fall-from-house"));
    Finding found =
        yard.study().findings().stream()
            .filter(f -> f.rule().equals("site.fall-from-house"))
            .findFirst()
            .orElseThrow();
    assertEquals(4.0, found.ground().orElseThrow().centroid().x().metres(), 1e-6);
    assertEquals(8.0, found.ground().orElseThrow().centroid().y().metres(), 1e-6);
  }

  /** A cone-like roof of levels: the house stands 0.1 m above the ground 3 m off, 3.3 %. */
  @ParameterizedTest
  @CsvSource({"false, 1", "true, 0"})
  void house_onAMound_needsTwoPercentOnPavingOnly(boolean paved, int findings) {
    LevelWords.levels(
        yard.in,
        null,
        in -> {
          for (double x : List.of(-10.0, 4.0, 12.0, 26.0)) {
            for (double y : List.of(-9.0, 5.0, 11.0, 25.0)) {
              // 3.3 % down in the direction of whichever wall is further away.
              double out = Math.max(Math.max(4 - x, x - 12), Math.max(5 - y, y - 11));
              LevelWords.level(in, p(x, y), m(10 - 0.033 * Math.max(0, out)));
            }
          }
        });
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    BuiltWords.building(yard.in, "Next", box(22, 5, 3, 3), m(3), null, null, null, true, null);
    if (paved) {
      BuiltWords.paving(yard.in, "Around", box(-1, 0, 20, 20), "brick", null);
    }
    assertEquals(findings, findings("site.fall-from-house").size());
  }

  /** 1 in 20 (5 %) for a walk, 1 in 12 (8.3 %) for a ramp and a barrow, 1 in 48 (2.1 %) across. */
  @ParameterizedTest
  @CsvSource({
    "accessible, 0.051, 0, 'WARNING slopes 5.1 % along: it must be built as a ramp'",
    "accessible, 0.049, 0, ''",
    "accessible, 0.084, 0, 'WARNING slopes 8.4 % along: it is steeper than a ramp may be (8.3 %)'",
    "accessible, 0, 0.022, 'WARNING slopes 2.2 % across: it tilts more than 2.1 %'",
    "accessible, 0, 0.020, ''",
    "barrow, 0.084, 0, 'NOTE slopes 8.4 % along: it is hard going with a full barrow (above 8.3"
        + " %)'",
    "barrow, 0.083, 0.08, ''",
    "foot, 0.12, 0.06, ''"
  })
  void path_slopesNoMoreThanItsUseAllows(String use, double along, double across, String says) {
    plane(along, across);
    PathWords.path(yard.in, "Walk", Line.between(p(2, 14), p(12, 14)), m(1.2), use, null, null);
    List<String> found = findings("site.path-slope");
    assertEquals(says.isEmpty() ? 0 : 1, found.size(), found.toString());
    assertTrue(says.isEmpty() || found.get(0).startsWith(says), found.toString());
  }

  @Test
  void swale_keepsItsSidesLevelAndDistance() {
    plane(0.04, 0.2);
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    swale("Steep", Line.between(p(2, 25), p(8, 25)), 1.5);
    // From (2, 13) along to (12, 13): 2.0 m off the house less half of 2 m; 0.4 m from end to end.
    swale("Near", Line.between(p(2, 13), p(12, 13)), 3);
    assertEquals(
        List.of(
            "WARNING comes within 10 ft (3 m) of building \"House\"; there a swale must lead water"
                + " away at 2 % or more, not hold it",
            "WARNING the ground along it differs by 0.40 m; a swale on contour lies level",
            "WARNING its sides of 1.5:1 are steeper than 2:1",
            "WARNING the ground along it differs by 0.24 m; a swale on contour lies level"),
        findings("site.swale"));
  }

  /** tan 15° is 26.8 %; a swale 1 in, 2.54 cm, off level is level enough. */
  @ParameterizedTest
  @CsvSource({"0.27, 0.004, 1", "0.265, 0.004, 0", "0.1, 0.005, 1"})
  void swale_onContour_isNotOnTooSteepASlope(double up, double right, int findings) {
    plane(right, up);
    swale("Ditch", Line.between(p(2, 25), p(8, 25)), 2);
    List<String> found = findings("site.swale");
    assertEquals(findings, found.size(), found.toString());
    if (up == 0.27) {
      assertTrue(
          found.get(0).startsWith("WARNING the ground there slopes 27 %; above 27 % (15°)"),
          found.toString());
    }
  }

  @Test
  void levels_farAwayOrSteep_areTold() {
    LevelWords.levels(
        yard.in,
        null,
        in -> {
          LevelWords.level(in, p(0, 0), m(10));
          LevelWords.level(in, p(20, 0), m(11));
          LevelWords.level(in, p(20, 2), m(14.5));
          LevelWords.level(in, p(0, 60.5), m(12));
          LevelWords.level(in, p(0, 59.5), m(12));
        });
    assertEquals(
        List.of(
            "WARNING from the level of 11.00 m at (20.00 m, 0.00 m) to that of 14.50 m at (20.00 m,"
                + " 2.00 m) the ground would rise 3.50 m in 2.00 m; steeper than 1 in 1 is a wall"
                + " or a slip",
            "WARNING the level of 12.00 m at (0.00 m, 60.50 m) lies 30.50 m outside of the lot;"
                + " levels further than 30.00 m away are mostly slips"),
        findings("site.levels"));
  }

  @Test
  void wall_ofLessThanThreeMetres_isANote() {
    LevelWords.levels(
        yard.in,
        null,
        in -> {
          LevelWords.level(in, p(0, 0), m(10));
          LevelWords.level(in, p(20, 0), m(11));
          LevelWords.level(in, p(20, 2), m(13.5));
        });
    List<String> found = findings("site.levels");
    assertEquals(1, found.size());
    assertTrue(found.get(0).startsWith("NOTE from the level of 11.00 m"), found.get(0));
  }
}
