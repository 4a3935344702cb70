package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static yardloom.site.PaintedYard.box;
import static yardloom.site.PaintedYard.m;
import static yardloom.site.PaintedYard.p;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.OwnMeasures;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.country.CountryWords;
import yardloom.site.ground.LevelWords;
import yardloom.site.lawn.GroundWords;
import yardloom.site.lot.LotWords;
import yardloom.site.outline.PlanWords;
import yardloom.site.outline.ShapeWords;
import yardloom.site.path.PathWords;
import yardloom.site.setback.SideWords;
import yardloom.site.tree.TreeWords;

/** The site alone, from words to tables, sheets, cautions and findings; a lot of 20 m by 30 m. */
class StudiedSiteTest {
  private final PaintedYard yard = new PaintedYard().lot(20, 30);

  private static void refused(String says, Executable what) {
    PlanException refused = assertThrows(PlanException.class, what);
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  private void tree(String name, double x, double y, Double trunk, Boolean standing) {
    TreeWords.tree(
        yard.in,
        name,
        p(x, y),
        m(3),
        m(5),
        m(1),
        trunk == null ? null : m(trunk),
        null,
        standing,
        null);
  }

  private List<Finding> findings(String rule) {
    return yard.study().findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** 2 × 4, 3 × 5 and a circle of 2 m; their edges 12 m, 16 m and 4 π m. */
  @Test
  void beds_areListedWithTheirSum() {
    BedWords.bed(yard.in, "Kale", box(1, 1, 2, 4), "annual", null, null);
    assertEquals(List.of("Kale | annual | 8.0 | 12.00"), PaintedYard.printed(yard.study(), "beds"));
    BedWords.bed(yard.in, "Roses", box(10, 1, 3, 5), null, null, null);
    BedWords.bed(yard.in, "Well", Shape.circle(p(10, 20), m(2)), "perennial", null, null);
    Outcome outcome = yard.study();
    assertEquals(
        List.of(
            "Kale | annual | 8.0 | 12.00",
            "Roses | perennial | 15.0 | 16.00",
            "Well | perennial | 12.6 | 12.57",
            "all beds |  | 35.6 | "),
        PaintedYard.printed(outcome, "beds"));
    Table beds =
        outcome.tables().stream().filter(t -> t.id().equals("beds")).findAny().orElseThrow();
    assertEquals(1, beds.totals());
    assertEquals(
        "area = ½ |Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)|",
        beds.rows().get(0).get(2).why().orElseThrow().formula());
    assertEquals(
        "area within all outlines", beds.rows().get(2).get(2).why().orElseThrow().formula());
  }

  /** Twenty-four corners are printed, twenty-five are not; nor are holes and two parts. */
  @ParameterizedTest
  @CsvSource({"24, true", "25, false"})
  void area_isWorkedOutFromCornersWhereTheyAreFew(int corners, boolean listed) {
    List<yardloom.kernel.geom.Point> ring = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double turn = 2 * Math.PI * i / corners;
      ring.add(p(10 + 2 * Math.cos(turn), 15 + 2 * Math.sin(turn)));
    }
    BedWords.bed(yard.in, "Round", Shape.polygon(ring), null, null, null);
    assertEquals(listed, isListed());
  }

  private boolean isListed() {
    Table beds =
        yard.study().tables().stream().filter(t -> t.id().equals("beds")).findAny().orElseThrow();
    return beds.rows().get(0).get(2).why().orElseThrow().formula().startsWith("area = ½");
  }

  @Test
  void area_withAHole_isNotWorkedOutFromCorners() {
    BedWords.bed(yard.in, "Frame", box(2, 2, 9, 9).minus(box(4, 4, 2, 3)), null, null, null);
    assertTrue(!isListed());
  }

  /** Of 600 m²: house 48, bed 10, ground mulched whole 70 less the bed in it, the rest open. */
  @Test
  void areas_sayTheKindWhereTwoThingsShareAName() {
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    BedWords.bed(yard.in, "Lawn", box(0, 20, 2, 5), null, null, null);
    GroundWords.mulchedGround(yard.in, "Lawn", box(0, 20, 7, 10), null, null);
    assertEquals(
        List.of(
            "House | 48.0 | 8",
            "Lawn (bed) | 10.0 | 2",
            "Lawn (mulched ground) | 60.0 | 10",
            "Open ground | 482.0 | 80",
            "lot | 600.0 | 100"),
        PaintedYard.printed(yard.study(), "areas"));
  }

  /** South 20 m to the right is S 90° E; walls of the lot counter-clockwise. */
  @Test
  void sides_areListedCounterClockwise() {
    assertEquals(
        List.of(
            "south | 20.00 | N 90°00' E | unstated | 0.00 | ",
            "east | 30.00 | N 00°00' E | unstated | 0.00 | ",
            "north | 20.00 | N 90°00' W | unstated | 0.00 | ",
            "west | 30.00 | S 00°00' E | unstated | 0.00 | "),
        PaintedYard.printed(yard.study(), "lot-sides"));
  }

  @Test
  void layout_showsTheYardAndItsTables() {
    assertTrue(
        new PaintedYard().study().sheets().isEmpty(), "nothing is laid out on an empty plan");
    assertEquals(1, yard.study().sheets().size(), "a lot is enough");
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    BedWords.bed(yard.in, "Kale", box(14, 20, 2, 4), "annual", null, null);
    Outcome outcome = yard.study();
    SheetPlan layout = outcome.sheets().get(0);
    assertEquals(
        "10 layout Layout and setting out",
        layout.number() + " " + layout.id() + " " + layout.title());
    assertEquals(Panel.SitePlan.Base.YARD, ((Panel.SitePlan) layout.panels().get(0)).base());
    assertEquals(
        List.of("areas", "beds", "lot-sides", "setting-out"),
        layout.panels().subList(1, layout.panels().size()).stream()
            .map(x -> ((Panel.TableBlock) x).table().id())
            .toList());
    assertEquals(OnPaper.ALWAYS, outcome.onPaper().get("setting-out"));
    Table tapes = ((Panel.TableBlock) layout.panels().get(4)).table();
    assertTrue(
        tapes.title().startsWith("Tapes in m: first A to B, "), "in the form that a crew carries");
    PaintedYard bedOnly = new PaintedYard();
    BedWords.bed(bedOnly.in, "Kale", box(14, 20, 2, 4), "annual", null, null);
    assertEquals(1, bedOnly.study().sheets().size(), "without a lot");
  }

  /** In metres readings are to the nearest 5 mm: √(3² + 5²) = 5.8309 is 5.830. */
  @Test
  void tapes_inMetres_areToTheNearestFiveMillimetres() {
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    BedWords.bed(yard.in, "Kale", Shape.circle(p(7, 16), m(1)), "annual", null, null);
    // From (4, 11) 3 m right and 5 m up; from (12, 11) 5 m left: √50 = 7.0710.
    assertEquals(
        "Kale | centre | 5.830 m | 7.070 m | left | radius 1.000 m",
        PaintedYard.printed(yard.study(), "setting-out").get(0));
  }

  @Test
  void cautions_areThoseThatTheThingsOnThePlanCallFor() {
    assertEquals(Spi.LEVEL, new SitePlugin().spiLevel());
    List<String> always = beginnings();
    assertEquals(List.of("Before diggi", "Not a survey"), always);
    LevelWords.swale(yard.in, "Ditch", Line.between(p(2, 23), p(8, 23)), m(0.5), m(0.25), 3, null);
    assertTrue(beginnings().contains("Structures, "));
    tree("Oak", 3, 4, 0.4, true);
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    BuiltWords.utility(yard.in, "Main", Line.between(p(2, 1), p(2, 9)), "gas", m(0.5));
    assertEquals(
        List.of(
            "Before diggi",
            "Not a survey",
            "Keep ground ",
            "Structures, ",
            "Under trees ",
            "Utility line",
            "Work near ov"),
        beginnings());
    assertTrue(
        yard.study().cautions().stream()
            .allMatch(c -> c.when() == Caution.When.BEFORE_WORK && c.where().isEmpty()));
    String fall = yard.study().cautions().get(2).text();
    assertTrue(OwnMeasures.of(fall, UnitSystem.METRIC).contains(", 150 mm in 3 m,"), fall);
    assertTrue(OwnMeasures.of(fall, UnitSystem.US).contains(", 6 in in 10 ft,"), fall);
    PaintedYard fence = new PaintedYard();
    BarrierWords.fence(
        fence.in, "F", Line.between(p(0, 0), p(2, 0)), m(1), null, null, null, null, null);
    assertTrue(
        fence.study().cautions().stream().anyMatch(c -> c.text().startsWith("Structures, ")));
  }

  private List<String> beginnings() {
    return yard.study().cautions().stream().map(c -> c.text().substring(0, 12)).toList();
  }

  /** The service of the country, by its name or its time zone. */
  @Test
  void digCall_isThatOfTheCountry() {
    assertTrue(!first().contains("811"), "the country is not known");
    CountryWords.country(yard.in, "DE");
    assertTrue(!first().contains("811"), "no service of another country");
    for (String zone : List.of("America/Chicago", "America/Indiana/Knox")) {
      PaintedYard us = new PaintedYard();
      site(us, zone);
      assertTrue(us.study().cautions().get(0).text().contains("811"), zone);
    }
    PaintedYard other = new PaintedYard();
    site(other, "Europe/Berlin");
    assertTrue(!other.study().cautions().get(0).text().contains("811"));
    CountryWords.country(other.in, "US");
    assertTrue(other.study().cautions().get(0).text().contains("811"), "what is said goes first");
    refused("'USA' is not a country", () -> CountryWords.country(yard.in, "USA"));
  }

  private String first() {
    return yard.study().cautions().get(0).text();
  }

  private static void site(PaintedYard yard, String zone) {
    PlanWords.site(
        yard.in, "Here", Angle.degrees(41), Angle.degrees(-88), m(200), zone, Angle.degrees(7));
  }

  @Test
  void site_isKept_withItsHeightBetweenTheLimits() {
    site(yard, "America/Chicago");
    var site = yard.draft.freeze().site().orElseThrow();
    assertEquals("America/Chicago", site.zone().getId());
    assertEquals(7, site.north().degrees(), 1e-9);
    assertDoesNotThrow(() -> elevated(-500));
    assertDoesNotThrow(() -> elevated(9000));
    refused("must lie between -500 m and 9000 m", () -> elevated(-500.5));
    refused("must lie between -500 m and 9000 m", () -> elevated(9000.5));
    refused("`sheets` needs at least one name", () -> PlanWords.sheets(yard.in, List.of()));
    assertDoesNotThrow(() -> PlanWords.sheets(yard.in, List.of("cover")));
  }

  private static void elevated(double height) {
    PlanWords.site(
        new PaintedYard().in, "Here", Angle.degrees(1), Angle.degrees(2), m(height), "UTC", null);
  }

  /** 12 trunks of 0.5 m are 6 m, of which the bed's 2 × 4 and the terrace's 3 × 2 lie within. */
  @Test
  void roots_areProtected_twelveTrunksWide() {
    tree("Oak", 10, 15, 0.5, true);
    tree("Young", 18, 28, 0.3, false);
    BedWords.bed(yard.in, "Kale", box(8, 12, 2, 4), "annual", null, null);
    BuiltWords.paving(yard.in, "Terrace", box(11, 15, 3, 2), "brick", null);
    BedWords.bed(yard.in, "By the young", box(17, 27, 2, 2), "annual", null, null);
    PathWords.path(yard.in, "Walk", Line.between(p(6, 13), p(14, 13)), m(1), null, null, null);
    // 1 cm² less and more than a trifle of 0.01 m² at the edge of the ring, 6 m to the right.
    BuiltWords.structure(yard.in, "Post", box(15.9, 14.95, 1, 0.09), m(2), null, null);
    BuiltWords.structure(yard.in, "Box", box(15.9, 14.95, 1, 0.12), m(2), null, null);
    List<Finding> found = findings("site.tree-roots");
    assertEquals(
        List.of(
            "WARNING structure \"Box\" 0.01 m² lie within 6.00 m of the trunk of tree \"Oak\"",
            "WARNING paving \"Terrace\" 6.00 m² lie within 6.00 m of the trunk of tree \"Oak\"",
            "NOTE bed \"Kale\" 8.00 m² lie within 6.00 m of the trunk of tree \"Oak\""),
        found.stream()
            .map(f -> f.severity() + " " + f.element().orElseThrow() + " " + f.text())
            .sorted((a, b) -> order(a) - order(b))
            .toList());
  }

  private static int order(String finding) {
    return finding.contains("Box") ? 0 : finding.contains("Terrace") ? 1 : 2;
  }

  @Test
  void rootsFactor_isBetweenNothingAndSixty_andGivenOnce() {
    refused("must lie between 0 and 60", () -> TreeWords.treeProtection(yard.in, 0, null));
    refused("must lie between 0 and 60", () -> TreeWords.treeProtection(yard.in, 60.5, null));
    TreeWords.treeProtection(yard.in, 60, "ordinance");
    refused("is already given", () -> TreeWords.treeProtection(yard.in, 8, null));
    tree("Oak", 10, 15, 0.1, true);
    BedWords.bed(yard.in, "Kale", box(15, 14, 2, 2), "annual", null, null);
    Finding found = findings("site.tree-roots").get(0);
    assertTrue(found.text().contains("within 6.00 m"), "60 × 0.1 m: " + found.text());
    assertEquals(
        "tree protection by ordinance; verify locally (given in the plan)", found.source().cite());
  }

  /** 4 in are 10 cm: what is sold by nurseries is taken for a tree to plant. */
  @Test
  void trees_ofWhichNothingIsSaid_areTold() {
    tree("Said", 3, 3, 0.5, true);
    tree("Thick", 6, 3, 0.2, null);
    tree("Thin", 9, 3, 0.08, null);
    tree("Unmeasured", 12, 3, null, null);
    assertEquals(
        List.of(
            "Thick: taken as standing already: its trunk of 20 cm is thicker than 10 cm",
            "Thin: taken as a tree to plant: its trunk of 8 cm is not thicker than 10 cm",
            "Unmeasured: taken as a tree to plant: no trunk was measured, so it is not known to be"
                + " thicker than 10 cm"),
        findings("site.tree-standing").stream()
            .map(f -> f.element().orElseThrow().name() + ": " + f.text())
            .toList());
  }

  @Test
  void shapes_haveTheSizeThatTheyAreGiven() {
    assertEquals(p(3, -4), ShapeWords.point(yard.in, m(3), m(-4)));
    Shape rect = ShapeWords.rect(yard.in, m(1), m(2), m(3), m(5));
    assertEquals(box(1, 2, 3, 5), rect);
    assertEquals(
        6,
        ShapeWords.polygon(yard.in, List.of(p(0, 0), p(4, 0), p(0, 3))).area().squareMetres(),
        1e-9);
    assertEquals(
        9, ShapeWords.line(yard.in, List.of(p(0, 0), p(4, 0), p(4, 5))).length().metres(), 1e-9);
    assertEquals(
        Math.PI * 4, ShapeWords.circle(yard.in, p(1, 1), m(2)).area().squareMetres(), 0.01);
    Shape ring = ShapeWords.ring(yard.in, p(1, 1), m(1), m(2));
    assertEquals(Math.PI * 3, ring.area().squareMetres(), 0.01, "π (2² − 1²)");
    refused("must be more than its hole's", () -> ShapeWords.ring(yard.in, p(1, 1), m(2), m(2)));
    refused("must be more than zero", () -> ShapeWords.rect(yard.in, m(1), m(2), m(0), m(5)));
    refused("must be more than zero", () -> ShapeWords.rect(yard.in, m(1), m(2), m(3), m(0)));
    refused("must be more than zero", () -> ShapeWords.circle(yard.in, p(1, 1), m(0)));
    refused("must be more than zero", () -> ShapeWords.ring(yard.in, p(1, 1), m(0), m(2)));
  }

  @Test
  void roof_isADrainedSurface_andNeedsGround() {
    assertEquals(
        48.0,
        BuiltWords.roof(yard.in, "South", box(4, 5, 8, 6), "metal")
            .getShape()
            .area()
            .squareMetres(),
        1e-9);
    assertEquals(
        "metal", yard.draft.freeze().all(yardloom.kernel.plan.Element.Roof.class).get(0).surface());
    refused("covers no ground", () -> BuiltWords.roof(yard.in, "North", Shape.EMPTY, "metal"));
    assertEquals(
        6.0,
        BuiltWords.structure(yard.in, "Shed", box(15, 25, 3, 2), m(2), null, null)
            .getShape()
            .area()
            .squareMetres(),
        1e-9);
  }

  /** Beds of 1.2 m with 0.6 m between them: two in 3 m, turned by 90° across the region. */
  @Test
  void beds_runAlongTheirBearing() {
    BedWords.beds(
        yard.in,
        "row",
        box(2, 2, 6, 3),
        m(1.2),
        m(0.6),
        Angle.degrees(90),
        null,
        null,
        null,
        null,
        null);
    assertEquals(
        List.of(
            "row 1 | perennial | 7.2 | 14.40",
            "row 2 | perennial | 7.2 | 14.40",
            "all beds |  | 14.4 | "),
        PaintedYard.printed(yard.study(), "beds"));
    // Upright: 6 m hold (6 + 0.6) / 1.8 = 3 beds of 3 m.
    BedWords.beds(
        yard.in,
        "up",
        box(10, 2, 6, 3),
        m(1.2),
        m(0.6),
        Angle.degrees(0),
        null,
        null,
        null,
        null,
        null);
    assertEquals(2 + 3 + 1, PaintedYard.printed(yard.study(), "beds").size());
    refused(
        "looks for the bearing itself",
        () ->
            BedWords.beds(
                yard.in,
                "x",
                box(2, 9, 6, 3),
                m(1.2),
                m(0.6),
                Angle.degrees(0),
                "most",
                null,
                null,
                null,
                null));
  }

  /** A plane of 5 % with contours every 0.25 m stands 5 m apart; labels keep off bed and line. */
  @Test
  void contours_areNamedOnFreeGround() {
    LevelWords.levels(
        yard.in,
        m(0.25),
        in -> {
          for (double x : List.of(-4.0, 24.0)) {
            for (double y : List.of(-4.0, 34.0)) {
              LevelWords.level(in, p(x, y), m(10 + 0.05 * x));
            }
          }
        });
    BedWords.bed(yard.in, "Kale", box(4, 2, 2, 20), "annual", null, null);
    BuiltWords.roof(yard.in, "Roof", box(9, 0, 2, 30), "metal");
    List<Mark> marks = yard.paint("site.lot-contours");
    List<Mark.Label> labels =
        marks.stream().filter(x -> x instanceof Mark.Label).map(x -> (Mark.Label) x).toList();
    // Levels 10.25, 10.50, 10.75 m lie 5, 10 and 15 m along; 10 and 11 m on the lot line itself.
    // Each is read again in the middle of its line, which runs from 4 m below to 34 m up.
    assertEquals(
        List.of(
            "10.25 m CENTRE 5.0",
            "10.25 m FIXED 5.0",
            "10.50 m CENTRE 10.0",
            "10.50 m FIXED 10.0",
            "10.75 m CENTRE 15.0",
            "10.75 m FIXED 15.0"),
        labels.stream()
            .map(
                l ->
                    l.text() + " " + l.anchor() + " " + Math.round(l.at().x().metres() * 10) / 10.0)
            .toList());
    assertEquals(15, labels.get(1).at().y().metres(), 1e-6);
    assertEquals(15, labels.get(3).at().y().metres(), 1e-6);
    // The bed ends at 22 m; 1.2 m and more beside it all is as free.
    double first = labels.get(0).at().y().metres();
    assertTrue(first >= 23.2 - 1e-6 && first <= 23.5, "first free place, " + first);
    // Without a bed that is 1.2 m above the lot line.
    double second = labels.get(2).at().y().metres();
    assertTrue(second >= 1.2 - 1e-6 && second <= 1.5, "first free place, " + second);
    // 10.00 m is the fortieth quarter metre, and every fifth line is heavy.
    assertEquals(
        List.of("contour-index", "contour", "contour", "contour", "contour"),
        marks.stream()
            .filter(x -> x instanceof Mark.Stroke)
            .map(x -> ((Mark.Stroke) x).style().name())
            .toList());
    assertEquals(List.of("Contour line | contour line"), yard.legend("site.lot-contours"));
  }

  @Test
  void pathRule_isGivenOnceForEachUse() {
    PathWords.pathRule(yard.in, "barrow", m(0.8), m(1.1), m(1.5), m(1.6), m(40), "code");
    refused(
        "the rule for barrow paths is already given",
        () -> PathWords.pathRule(yard.in, "barrow", m(0.8), null, null, null, null, "code"));
    assertDoesNotThrow(
        () -> PathWords.pathRule(yard.in, "foot", m(0.5), null, null, null, null, "code"));
    PathWords.path(
        yard.in, "Walk", Line.between(p(0, 14), p(10, 14)), m(0.75), "barrow", null, null);
    assertTrue(
        findings("site.path-width").get(0).text().contains("0.80 m")
            || findings("site.path-width").get(0).text().contains("80 cm"),
        findings("site.path-width").toString());
  }

  /** What a yard does not hold is a slip of the unit: 15 m of fence, 5 m of ditch and so on. */
  @ParameterizedTest
  @CsvSource({
    "fence, 15",
    "depth, 5",
    "path, 20",
    "tree, 120",
    "crown, 60",
    "trunk, 10",
    "eaves, 100",
    "overhang, 3",
    "clearance, 50"
  })
  void sizes_haveTheirMost(String what, double most) {
    assertDoesNotThrow(() -> sized(what, most));
    refused(
        String.format(java.util.Locale.ROOT, "must be at most %.2f m", most),
        () -> sized(what, most + 0.1));
  }

  private static void sized(String what, double size) {
    PaintedYard at = new PaintedYard();
    Line line = Line.between(p(0, 0), p(90, 0));
    switch (what) {
      case "fence" -> BarrierWords.fence(at.in, "F", line, m(size), null, null, null, null, null);
      case "depth" -> LevelWords.swale(at.in, "S", line, m(1), m(size), 2, null);
      case "path" -> PathWords.path(at.in, "P", line, m(size), null, null, null);
      case "tree" -> grown(at, 10, size, 0.5);
      case "crown" -> grown(at, size, 90, 0.5);
      case "trunk" -> grown(at, 10, 90, size);
      case "eaves" ->
          BuiltWords.building(at.in, "B", box(0, 0, 9, 9), m(size), null, null, null, null, null);
      case "overhang" ->
          BuiltWords.building(at.in, "B", box(0, 0, 9, 9), m(4), null, m(size), null, null, null);
      default -> BuiltWords.utility(at.in, "U", line, "gas", m(size));
    }
  }

  private static void grown(PaintedYard at, double crown, double height, double trunk) {
    TreeWords.tree(at.in, "T", p(5, 5), m(crown), m(height), m(1), m(trunk), null, null, null);
  }

  /** A hedge is 0.6 m wide, a crown begins at a quarter of the height. */
  @Test
  void whatIsNotSaid_isAsUsual() {
    assertEquals(
        5 * 0.6,
        BarrierWords.hedge(
                yard.in, "H", Line.between(p(1, 2), p(6, 2)), m(1.5), null, null, null, null)
            .getShape()
            .area()
            .squareMetres(),
        1e-9);
    TreeWords.tree(yard.in, "T", p(9, 9), m(4), m(8), null, null, null, null, null);
    assertEquals(
        2,
        yard.draft
            .freeze()
            .all(yardloom.kernel.plan.Element.Tree.class)
            .get(0)
            .crownBase()
            .metres(),
        1e-9,
        "8 m / 4");
    BuiltWords.structure(yard.in, "Shed", box(15, 25, 3, 2), m(2), null, null);
    assertEquals(
        4,
        yard.draft
            .freeze()
            .all(yardloom.kernel.plan.Element.Structure.class)
            .get(0)
            .attributes()
            .get(yardloom.facts.built.Pad.KEY)
            .orElseThrow()
            .depth()
            .inches(),
        1e-9);
  }

  /** Up to six corners are set out as they are; with eight, the rectangle about them. */
  @Test
  void beds_ofMoreThanSixCorners_areSetOutByARectangle() {
    BuiltWords.building(yard.in, "House", box(4, 5, 8, 6), m(3), null, null, null, null, null);
    BedWords.bed(yard.in, "six", box(2, 14, 5, 4).minus(box(5, 16, 2, 2)), null, null, null);
    BedWords.bed(
        yard.in,
        "eight",
        box(10, 14, 6, 4).minus(box(14, 16, 2, 2)).minus(box(10, 16, 1, 2)),
        null,
        null,
        null);
    List<String> rows = PaintedYard.printed(yard.study(), "setting-out");
    assertEquals(4, rows.stream().filter(r -> r.startsWith("eight | corner of the")).count());
    assertEquals(6, rows.stream().filter(r -> r.startsWith("six | corner ")).count());
    assertEquals(0, rows.stream().filter(r -> r.startsWith("six | corner of the")).count());
  }

  /** A barrow is backed out of 20 ft, 6.096 m, between beds; out of more it has to be turned. */
  @ParameterizedTest
  @CsvSource({"6.05, 0", "6.15, 1"})
  void barrow_isBackedOutOfTwentyFeet(double length, int findings) {
    PathWords.path(
        yard.in, "row", Line.between(p(10, 5), p(10, 5 + length)), m(0.9), "barrow", null, null);
    BedWords.bed(yard.in, "left", box(8, 5, 1.55, length + 0.3), null, null, null);
    BedWords.bed(yard.in, "right", box(10.45, 5, 1.55, length + 0.3), null, null, null);
    BedWords.bed(yard.in, "head", box(8, 5.3 + length, 4, 1.2), null, null, null);
    assertEquals(findings, findings("site.path-turning").size());
  }

  /** Nobody carries over a neighbour's ground: 1.5 m beyond a side of 30 m, not beyond a front. */
  @Test
  void ways_endAtTheNeighboursGround() {
    PaintedYard sided = new PaintedYard();
    LotWords.lot(
        sided.in,
        List.of(p(0, 0), p(20, 0), p(20, 30), p(0, 30)),
        s -> {
          SideWords.side(s, "east", "side", m(0), "code", null, null, null);
          SideWords.side(s, "south", "front", m(0), "code", null, null, null);
        });
    List<Shape> barriers = sided.study().results().get(YardFacts.WAYS).barriers();
    assertEquals(1, barriers.size());
    assertEquals(30 * 1.5, barriers.get(0).area().squareMetres(), 1e-6);
    assertEquals(20.75, barriers.get(0).centroid().x().metres(), 1e-6, "east of the lot");
  }
}
