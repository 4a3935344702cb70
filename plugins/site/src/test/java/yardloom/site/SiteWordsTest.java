package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import yardloom.facts.built.Barrier;
import yardloom.facts.built.Barrier.Made;
import yardloom.facts.built.Flight;
import yardloom.facts.built.Gate;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.LotScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Lexicon;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.lot.LotWords;
import yardloom.site.outline.PlanWords;
import yardloom.site.outline.ShapeWords;
import yardloom.site.path.PathWords;
import yardloom.site.setback.SideWords;
import yardloom.site.tree.TreeWords;

class SiteWordsTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private int line;

  private PlanScope here() {
    line++;
    return new PlanScope(draft, new SourceRef("t.groovy", line, 1));
  }

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  private Handle lot(Consumer<LotScope> block) {
    return LotWords.lot(here(), List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120)), block);
  }

  private PlanException refused(Runnable work, ProblemCode code) {
    PlanException e = assertThrows(PlanException.class, work::run);
    assertEquals(code, e.problems().get(0).code(), e.getMessage());
    return e;
  }

  @Test
  void vocabulary_everyWord_readsIntoALexicon() {
    Lexicon lexicon = Lexicon.of(List.of(new SitePlugin().vocabularies().get(0)));
    assertTrue(
        lexicon
            .names()
            .containsAll(
                List.of(
                    "point",
                    "rect",
                    "circle",
                    "polygon",
                    "line",
                    "plan",
                    "site",
                    "lot",
                    "side",
                    "building",
                    "structure",
                    "fence",
                    "hedge",
                    "paving",
                    "tree",
                    "path",
                    "bed",
                    "beds",
                    "bedAlong",
                    "tap",
                    "roof",
                    "utility",
                    "keepOut")));
    assertTrue(lexicon.word(BedScope.class, "point").isPresent(), "values stand in every block");
  }

  @Test
  void lot_cornersInEitherDirection_sidesNamedByCompass() {
    List<Point> ccw = List.of(p(0, 0), p(60, 0), p(60, 120), p(0, 120));
    List<Point> cw = List.of(p(60, 120), p(60, 0), p(0, 0), p(0, 120));
    for (List<Point> ring : List.of(ccw, cw)) {
      for (Lot.Edge edge : LotWords.edges(ring)) {
        Point middle = edge.line().part(Length.ZERO, edge.line().length().div(2)).end();
        String expected =
            middle.y().feet() < 1
                ? "south"
                : middle.y().feet() > 119 ? "north" : middle.x().feet() < 1 ? "west" : "east";
        assertEquals(expected, edge.name());
      }
    }
  }

  @Test
  void lot_fiveCornersClockwise_sidesKeepTheWrittenNumbers() {
    List<Point> cw = List.of(p(0, 0), p(0, 40), p(20, 60), p(40, 40), p(40, 0));
    List<Lot.Edge> edges = LotWords.edges(cw);
    for (Lot.Edge edge : edges) {
      int k = Integer.parseInt(edge.name().substring(5)) - 1;
      assertEquals(cw.get((k + 1) % 5), edge.line().start(), edge.name());
      assertEquals(cw.get(k), edge.line().end(), edge.name());
    }
    assertEquals(5, edges.stream().map(Lot.Edge::name).distinct().count());
  }

  @Test
  void lot_diamond_namesDoNotDependOnTheFirstCorner() {
    List<Point> ring = List.of(p(0, -10), p(10, 0), p(0, 10), p(-10, 0));
    for (int turn = 0; turn < 4; turn++) {
      List<Point> turned = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        turned.add(ring.get((i + turn) % 4));
      }
      Lot.Edge south =
          LotWords.edges(turned).stream().filter(e -> e.name().equals("south")).findAny().get();
      assertEquals(p(-10, 0), south.line().start());
    }
  }

  @Test
  void side_roleAndSetback_areKept() {
    Handle lot =
        lot(
            s ->
                SideWords.side(
                    s, "south", "corner side", ft(25), "zoning sheet", null, null, null));
    Lot.Edge south =
        draft.lot().get().edges().stream().filter(e -> e.name().equals("south")).findAny().get();
    assertEquals(EdgeRole.CORNER_SIDE, south.role());
    assertEquals(25, south.setback().feet(), 1e-12);
    assertEquals(60, lot.getSouth().length().feet(), 1e-9);
  }

  @Test
  void side_misspelt_namesTheSidesAndTheNearest() {
    PlanException e =
        refused(
            () -> lot(s -> SideWords.side(s, "suoth", "front", ft(5), null, null, null, null)),
            ProblemCode.UNKNOWN_WORD);
    assertTrue(
        e.getMessage().contains("the lot has no side 'suoth'; it has south, east, north, west"),
        e.getMessage());
    assertTrue(e.getMessage().contains("Did you mean `south`?"), e.getMessage());
  }

  @Test
  void side_twice_isRefused() {
    refused(
        () ->
            lot(
                s -> {
                  SideWords.side(s, "south", "front", ft(5), null, null, null, null);
                  SideWords.side(s, "south", "front", ft(6), null, null, null, null);
                }),
        ProblemCode.DUPLICATE);
  }

  @Test
  void lot_crossingItself_tellsWhere() {
    PlanException e =
        refused(
            () -> LotWords.lot(here(), List.of(p(0, 0), p(10, 10), p(10, 0), p(0, 8)), null),
            ProblemCode.BAD_SHAPE);
    // The diagonals y = x and y = 8 - 0.8 x meet at 8 / 1.8.
    assertTrue(e.getMessage().contains("(4.44 ft, 4.44 ft)"), e.getMessage());
  }

  @Test
  void lot_cornersOnOneLine_isRefused() {
    refused(
        () -> LotWords.lot(here(), List.of(p(0, 0), p(10, 0), p(20, 0)), null),
        ProblemCode.BAD_SHAPE);
  }

  @Test
  void building_sides_faceOutwards() {
    Handle house = house("house", 30, 40, 10, null, null);
    assertEquals(30, house.getSouth().length().feet(), 1e-9);
    assertEquals(40, house.getEast().length().feet(), 1e-9);
    Handle bed =
        BedWords.bedAlong(
            here(), "wall bed", house.getSouth(), ft(3), ft(0.5), null, null, null, null, null);
    assertEquals(90, bed.getShape().area().squareMetres() / (0.3048 * 0.3048), 1e-6);
    assertEquals(0.5, bed.getShape().distance(house.getShape()).feet(), 1e-6);
  }

  private Handle house(
      String name, double width, double depth, double eaves, Double ridge, String roof) {
    return BuiltWords.building(
        here(),
        name,
        Shape.rectangle(p(15, 30), ft(width), ft(depth)),
        ft(eaves),
        ridge == null ? null : ft(ridge),
        null,
        roof,
        null,
        null);
  }

  @Test
  void building_ridgeBelowEaves_isAContradiction() {
    PlanException e =
        refused(() -> house("house", 30, 40, 10, 9.0, null), ProblemCode.CONTRADICTION);
    assertTrue(e.getMessage().contains("2.74 m (9.00 ft)"), e.getMessage());
  }

  @Test
  void building_flatRoofWithRidge_isAContradiction() {
    refused(() -> house("house", 30, 40, 10, 12.0, "flat"), ProblemCode.CONTRADICTION);
    refused(() -> house("house", 30, 40, 10, null, "gable"), ProblemCode.CONTRADICTION);
  }

  @Test
  void building_heightInInchesForFeet_asksForTheUnit() {
    PlanException e =
        refused(() -> house("house", 30, 40, 3000, null, null), ProblemCode.OUT_OF_RANGE);
    assertTrue(e.getMessage().contains("is the unit the one you meant?"), e.getMessage());
  }

  @Test
  void building_misspeltRoof_namesTheChoices() {
    PlanException e =
        refused(() -> house("house", 30, 40, 10, 15.0, "gabel"), ProblemCode.UNKNOWN_WORD);
    assertTrue(e.getMessage().contains("flat, gable, hip, shed"), e.getMessage());
  }

  @Test
  void element_sameNameTwice_namesTheEarlierPlace() {
    house("house", 30, 40, 10, null, null);
    PlanException e = refused(() -> house("house", 3, 4, 10, null, null), ProblemCode.DUPLICATE);
    assertTrue(e.getMessage().contains("t.groovy:1:1"), e.getMessage());
  }

  @Test
  void bed_emptyShape_isRefused() {
    Shape ground = Shape.rectangle(p(0, 0), ft(4), ft(4));
    refused(
        () -> BedWords.bed(here(), "none", ground.minus(ground), null, null, null),
        ProblemCode.BAD_SHAPE);
  }

  @Test
  void beds_field_areNumberedFromTheLeftAndShareTheBlock() {
    List<String> seen = new ArrayList<>();
    Handle rows =
        BedWords.beds(
            here(),
            "row",
            Shape.rectangle(p(0, 0), ft(30), ft(40)),
            ft(4),
            ft(2),
            null,
            null,
            null,
            "annual",
            null,
            b -> seen.add(b.element().id().name()));
    assertEquals(List.of("row 1", "row 2", "row 3", "row 4", "row 5"), seen);
    assertEquals(5 * 160, rows.getShape().area().squareMetres() / (0.3048 * 0.3048), 1e-5);
    assertEquals(5, draft.freeze().all(Element.Bed.class).size());
    assertTrue(
        rows.getParts().get(0).getCentre().x().feet()
            < rows.getParts().get(1).getCentre().x().feet());
  }

  @Test
  void beds_tooWide_tellsHowToFix() {
    PlanException e =
        refused(
            () ->
                BedWords.beds(
                    here(),
                    "row",
                    Shape.rectangle(p(0, 0), ft(3), ft(40)),
                    ft(4),
                    ft(2),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null),
            ProblemCode.BAD_SHAPE);
    assertTrue(e.getMessage().contains("narrower"), e.getMessage());
  }

  @Test
  void bedAlong_lotSide_liesInside() {
    Handle lot = lot(null);
    Handle bed =
        BedWords.bedAlong(
            here(), "front", lot.getSouth(), ft(4), null, ft(10), ft(20), null, null, null);
    assertTrue(lot.getShape().covers(bed.getShape()));
    assertEquals(80, bed.getShape().area().squareMetres() / (0.3048 * 0.3048), 1e-6);
    assertEquals(10, bed.getShape().bounds().getMinX() / 0.3048, 1e-6);
  }

  @Test
  void tree_branchesAboveItsTop_isAContradiction() {
    refused(
        () ->
            TreeWords.tree(here(), "oak", p(1, 1), ft(20), ft(30), ft(30), null, null, null, null),
        ProblemCode.CONTRADICTION);
  }

  @Test
  void path_loop_hasOneHoleAndTheUseWidth() {
    Line loop = Line.through(List.of(p(0, 0), p(20, 0), p(20, 20), p(0, 20), p(0, 0)));
    Handle path = PathWords.path(here(), "ring", loop, null, "barrow", null, null);
    assertEquals(23 * 23 - 17 * 17, path.getShape().area().squareMetres() / 0.09290304, 1e-6);
  }

  @Test
  void site_unknownZone_suggestsTheNearest() {
    PlanException e =
        refused(
            () ->
                PlanWords.site(
                    here(),
                    "Urbana",
                    Angle.degrees(40.1),
                    Angle.degrees(-88.2),
                    null,
                    "America/Chicgo",
                    null),
            ProblemCode.UNKNOWN_WORD);
    assertTrue(e.getMessage().contains("America/Chicago"), e.getMessage());
  }

  @Test
  void site_latitudeAndLongitudeSwapped_isOutOfRange() {
    refused(
        () ->
            PlanWords.site(
                here(),
                "Seattle",
                Angle.degrees(-122.3),
                Angle.degrees(47.6),
                null,
                "America/Los_Angeles",
                null),
        ProblemCode.OUT_OF_RANGE);
  }

  @Test
  void plan_twice_isRefused() {
    PlanWords.plan(here(), "A", null, null, null, null, "metric", null);
    assertEquals(UnitSystem.METRIC, draft.info().units());
    refused(
        () -> PlanWords.plan(here(), "B", null, null, null, null, null, null),
        ProblemCode.DUPLICATE);
  }

  @Test
  void point_stateplaneCoordinate_isRefused() {
    refused(() -> ShapeWords.point(here(), ft(2_000_000), ft(0)), ProblemCode.OUT_OF_RANGE);
  }

  @Test
  void fence_opennessInPercent_isRefused() {
    refused(
        () ->
            BarrierWords.fence(
                here(), "f", Line.between(p(0, 0), p(9, 0)), ft(6), 30, null, null, null, null),
        ProblemCode.OUT_OF_RANGE);
  }

  /**
   * The defaults that the words' own help names: 48 in, 8 ft, 2 ft, 12 in by 6 in, 4 ft and 7 in.
   */
  @Test
  void gateAndBarriers_defaults_areThoseOfTheHelp() {
    PathWords.gate(here(), "side", p(5, 30), null, null);
    Line along = Line.between(p(0, 0), p(30, 0));
    BarrierWords.fence(here(), "a", along, ft(6), null, null, false, null, null);
    BarrierWords.fence(here(), "b", along, ft(6), 0.7, null, false, null, null);
    BarrierWords.hedge(here(), "c", along, ft(4), null, null, false, null);
    BarrierWords.wall(here(), "d", along, ft(3), null, true, null, null, false);
    BarrierWords.steps(here(), "e", along, ft(2), null, null, false);
    Plan plan = draft.freeze();
    Gate gate = plan.attributes().get(Gate.KEY).orElseThrow();
    assertEquals(48, gate.width().inches(), 1e-9);
    List<Barrier> made =
        plan.all(Element.Fence.class).stream()
            .map(f -> f.attributes().get(Barrier.KEY).orElseThrow())
            .toList();
    assertEquals(
        List.of(Made.BOARDS, Made.MESH, Made.HEDGE, Made.RETAINING),
        made.stream().map(Barrier::made).toList());
    assertEquals(8, made.get(0).spacing().feet(), 1e-9);
    assertEquals(2, made.get(2).spacing().feet(), 1e-9);
    assertEquals(12, made.get(3).unitLength().inches(), 1e-9);
    assertEquals(6, made.get(3).unitHeight().inches(), 1e-9);
    Flight flight =
        plan.all(Element.Paving.class).get(0).attributes().get(Flight.KEY).orElseThrow();
    assertEquals(4, flight.width().feet(), 1e-9);
    assertEquals(7, flight.riser().inches(), 1e-9);
  }

  @Test
  void handle_tapSide_isRefusedInWords() {
    Handle tap = BuiltWords.tap(here(), "tap", p(1, 1), null);
    PlanException e = refused(tap::getSouth, ProblemCode.WRONG_TYPE);
    assertTrue(e.getMessage().contains("point without ground"), e.getMessage());
  }

  @Test
  void utility_defaultClearance_isTwoFeetToEachSide() {
    BuiltWords.utility(here(), "gas", Line.between(p(0, 0), p(10, 0)), "gas", null);
    Element.Utility gas = draft.freeze().all(Element.Utility.class).get(0);
    assertEquals(40, gas.shape().area().squareMetres() / 0.09290304, 1e-6);
  }
}
