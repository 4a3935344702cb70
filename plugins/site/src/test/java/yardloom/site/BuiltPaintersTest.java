package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static yardloom.site.PaintedYard.box;
import static yardloom.site.PaintedYard.m;
import static yardloom.site.PaintedYard.p;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.ground.LevelWords;
import yardloom.site.lawn.GroundWords;
import yardloom.site.path.PathWords;
import yardloom.site.remark.HiddenLabels;
import yardloom.site.remark.RemarkWords;
import yardloom.site.tree.TreeWords;

/** What is built and planted, drawn at its place; all by hand on a lot of 20 m by 30 m. */
class BuiltPaintersTest {
  private final PaintedYard yard = new PaintedYard().lot(20, 30);

  private void building(String name, Shape shape, Double overhang, boolean neighbour) {
    BuiltWords.building(
        yard.in,
        name,
        shape,
        m(3),
        null,
        overhang == null ? null : m(overhang),
        null,
        neighbour,
        null);
  }

  @Test
  void buildings_haveTheirEaves_neighboursDoNot() {
    building("House", box(4, 5, 8, 6), 0.5, false);
    building("Hut", box(15, 5, 2, 3), null, false);
    building("Next", box(21, 5, 4, 4), 0.5, true);
    List<String> drawn = yard.drawn("site.building");
    // 8 + 2 × 0.5 by 6 + 2 × 0.5 m: eaves meet in corners.
    assertEquals("eaves 63.0", drawn.get(0).substring(0, 10));
    assertEquals(
        List.of(
            "building 48.00 m² at 8.00,8.00",
            "building 6.00 m² at 16.00,6.50",
            "neighbour 16.00 m² at 23.00,7.00"),
        drawn.subList(1, 4));
    assertEquals(
        List.of("Building | building", "Eaves | eaves line", "Neighbour's building | neighbour"),
        yard.legend("site.building"));
  }

  @Test
  void buildings_ofOneKind_haveOneLineInTheLegend() {
    building("Next", box(21, 5, 4, 4), 0.5, true);
    assertEquals(List.of("Neighbour's building | neighbour"), yard.legend("site.building"));
    PaintedYard other = new PaintedYard().lot(20, 30);
    BuiltWords.building(other.in, "Hut", box(15, 5, 2, 3), m(3), null, null, null, null, null);
    assertEquals(List.of("Building | building"), other.legend("site.building"));
  }

  /**
   * 5 m are two parts of 2.4 m, so posts at 0, 2.5 and 5 m; 1 m further round the corner one more.
   */
  @Test
  void fence_hasItsPosts_openWhereItStands() {
    BarrierWords.fence(
        yard.in,
        "Old",
        Line.through(List.of(p(1, 2), p(6, 2), p(6, 3))),
        m(1.8),
        null,
        null,
        true,
        null,
        null);
    assertEquals(
        List.of(
            "fence-existing from 1.00,2.00 to 6.00,3.00",
            "fence-mark-existing DISC 0.20 m at 1.00,2.00",
            "fence-mark-existing DISC 0.20 m at 3.50,2.00",
            "fence-mark-existing DISC 0.20 m at 6.00,2.00",
            "fence-mark-existing DISC 0.20 m at 6.00,3.00"),
        yard.drawn("site.fence"));
    assertEquals(
        List.of("Fence or hedge, existing | fence-existing line"), yard.legend("site.fence"));
  }

  @Test
  void newFence_hasFullPosts_andAWallItsGround() {
    BarrierWords.fence(
        yard.in, "New", Line.between(p(1, 9), p(1, 12)), m(1.8), null, null, false, null, null);
    BarrierWords.wall(
        yard.in, "Wall", Line.between(p(2, 20), p(8, 20)), m(0.6), m(0.3), null, null, null, false);
    List<String> drawn = yard.drawn("site.fence");
    // 3 m / 2.4 m is one part: a post at each end. The wall is 6 m × 0.3 m.
    assertEquals(
        List.of(
            "fence from 1.00,9.00 to 1.00,12.00",
            "fence-mark DISC 0.20 m at 1.00,9.00",
            "fence-mark DISC 0.20 m at 1.00,12.00",
            "wall 1.80 m² at 5.00,20.00"),
        drawn);
    assertEquals(
        List.of("Fence or hedge, new | fence line", "Wall, new | wall"), yard.legend("site.fence"));
  }

  @Test
  void trees_areCrowns_withATrunkWhereTheyStand() {
    TreeWords.tree(yard.in, "Oak", p(3, 4), m(7), m(9), m(2), m(0.45), "deciduous", true, null);
    TreeWords.tree(yard.in, "Pear", p(12, 14), m(4), m(5), m(1), m(0.05), "deciduous", false, null);
    TreeWords.tree(yard.in, "Yew", p(15, 25), m(3), m(4), m(0.5), m(0.2), "evergreen", null, null);
    assertEquals(
        List.of(
            "tree-existing CROWN_DECIDUOUS 7.00 m at 3.00,4.00",
            "trunk DISC 0.45 m at 3.00,4.00",
            "tree CROWN_DECIDUOUS 4.00 m at 12.00,14.00",
            "tree-existing CROWN_EVERGREEN 3.00 m at 15.00,25.00",
            "trunk DISC 0.20 m at 15.00,25.00"),
        yard.drawn("site.tree"));
    assertEquals(
        List.of(
            "Deciduous tree, new | tree CROWN_DECIDUOUS",
            "Deciduous tree, existing | tree-existing CROWN_DECIDUOUS",
            "Evergreen tree, existing | tree-existing CROWN_EVERGREEN"),
        yard.legend("site.tree"));
  }

  @Test
  void pavingUtilitiesTapsAndGround_areDrawnWhereTheyLie() {
    BuiltWords.paving(yard.in, "Terrace", box(12, 5, 3, 5), "brick", null);
    BuiltWords.paving(yard.in, "New walk", box(0, 0, 1, 6), "", false);
    BuiltWords.utility(yard.in, "Main", Line.between(p(2, 1), p(2, 9)), "gas", m(0.5));
    BuiltWords.utility(yard.in, "wire", Line.between(p(9, 1), p(9, 3)), "", null);
    BuiltWords.tap(yard.in, "Tap", p(5, 6), "mains");
    GroundWords.mulchedGround(yard.in, "Old lawn", box(0, 20, 7, 10), null, null);
    assertEquals(
        List.of("paving 6.00 m² at 0.50,3.00", "paving-existing 15.00 m² at 13.50,7.50"),
        yard.drawn("site.paving"));
    assertEquals(
        List.of("Paving, new | paving", "Paving, existing | paving-existing"),
        yard.legend("site.paving"));
    List<String> utilities = yard.drawn("site.utility");
    assertEquals("utility-clearance", utilities.get(0).substring(0, 17));
    assertEquals("utility from 2.00,1.00 to 2.00,9.00", utilities.get(1));
    assertEquals("'Gas' 2.0 mm NEAR at 2.00,5.00", utilities.get(2));
    assertTrue(utilities.contains("'Wire' 2.0 mm NEAR at 9.00,2.00"), utilities.toString());
    assertEquals(2, yard.legend("site.utility").size());
    assertEquals(
        List.of("water-point TAP 0.00 m at 5.00,6.00", "'Tap' 2.0 mm NEAR at 5.00,6.00"),
        yard.drawn("site.water-point"));
    assertEquals(List.of("Water point | water-point TAP"), yard.legend("site.water-point"));
    assertEquals(
        List.of("mulched-ground 70.00 m² at 3.50,25.00"), yard.drawn("site.mulched-ground"));
    assertEquals(List.of("Mulched ground | mulched-ground"), yard.legend("site.mulched-ground"));
  }

  @Test
  void structures_areDrawn_swalesAreNot() {
    BuiltWords.structure(yard.in, "Shed", box(15, 25, 3, 2), m(2), false, null);
    BuiltWords.structure(yard.in, "Deck", box(15, 5, 2, 2), m(1), true, null);
    LevelWords.swale(yard.in, "Ditch", Line.between(p(2, 23), p(8, 23)), m(0.5), m(0.25), 3, null);
    assertEquals(
        List.of("structure-existing 4.00 m² at 16.00,6.00", "structure 6.00 m² at 16.50,26.00"),
        yard.drawn("site.structure"));
    assertEquals(
        List.of("Structure, new | structure", "Structure, existing | structure-existing"),
        yard.legend("site.structure"));
  }

  /** Names in the middle of what they name; mulched ground's where nothing else lies in it. */
  @Test
  void labels_nameWhatStandsThere() {
    building("House", box(4, 5, 8, 6), null, false);
    building("Next", box(21, 5, 4, 4), null, true);
    BuiltWords.structure(yard.in, "Shed", box(15, 25, 3, 2), m(2), false, null);
    BuiltWords.paving(yard.in, "Terrace", box(12, 5, 3, 5), "brick", null);
    PathWords.path(yard.in, "Walk", Line.between(p(0, 14), p(10, 14)), m(1), null, null, null);
    TreeWords.tree(yard.in, "Oak", p(3, 4), m(7), m(9), m(2), m(0.45), "deciduous", true, null);
    BarrierWords.fence(
        yard.in, "Fence", Line.between(p(8, 30), p(20, 30)), m(2), null, null, null, null, null);
    LevelWords.swale(yard.in, "Ditch", Line.between(p(2, 17), p(8, 17)), m(0.5), m(0.25), 3, null);
    BedWords.bed(yard.in, "Kale", box(16, 10, 2, 4), "annual", null, null);
    // A bed over the left 4 m leaves 3 m by 10 m of the ground.
    BedWords.bed(yard.in, "Roses", box(0, 20, 4, 10), null, null, null);
    GroundWords.mulchedGround(yard.in, "Old lawn", box(0, 20, 7, 10), null, null);
    List<String> drawn = yard.drawn("site.labels");
    assertEquals(
        List.of(
            "'House' 2.5 mm CENTRE at 8.00,8.00 on 48.0 m²",
            "'Next' 2.0 mm CENTRE at 23.00,7.00 on 16.0 m²",
            "'Shed' 2.0 mm CENTRE at 16.50,26.00 on 6.0 m²",
            // Inside the lot: 12 m by 1.2 m less half the fence's 5 cm; y = 30 - (0.025 + 1.2) / 2.
            "'Fence' 2.0 mm INSIDE at 14.00,29.39 on 14.1 m²",
            "'Terrace/brick' 2.0 mm CENTRE at 13.50,7.50 on 15.0 m²",
            "'Oak' 2.0 mm NEAR at 3.00,4.00",
            "'Walk' 2.0 mm CENTRE at 5.00,14.00 on 10.0 m²",
            "'Kale/8.0\u00a0m²' 2.0 mm CENTRE at 17.00,12.00 on 8.0 m²",
            "'Roses/40.0\u00a0m²' 2.0 mm CENTRE at 2.00,25.00 on 40.0 m²"),
        drawn.subList(0, 9));
    assertEquals("'Old lawn' 2.0 mm CENTRE at 5.50,25.00 on 30.0 m²", drawn.get(9));
    assertEquals(10, drawn.size());
  }

  @Test
  void hiddenLabels_areLeftOff_byNameOrKind_andAWrongNameIsFound() {
    BedWords.bed(yard.in, "Kale", box(16, 10, 2, 4), "annual", null, null);
    BedWords.bed(yard.in, "Roses", box(0, 20, 4, 10), null, null, null);
    TreeWords.tree(yard.in, "Oak", p(3, 4), m(7), m(9), m(2), m(0.45), "deciduous", true, null);
    RemarkWords.hideLabel(yard.in, "Roses");
    RemarkWords.hideLabel(yard.in, "tree");
    RemarkWords.hideLabel(yard.in, "Kals");
    assertEquals(
        List.of("'Kale/8.0\u00a0m²' 2.0 mm CENTRE at 17.00,12.00 on 8.0 m²"),
        yard.drawn("site.labels"));
    List<Finding> findings = new HiddenLabels().run(yard.draft.freeze(), null);
    assertEquals(
        List.of(
            "site.hidden-label no element and no kind is called 'Kals', so no label is hidden."
                + " Did you mean `Kale`?"),
        findings.stream().map(f -> f.rule() + " " + f.text()).toList());
    assertEquals(7, findings.get(0).place().line());
  }

  @Test
  void remarks_areWrittenAtTheirPlace() {
    RemarkWords.note(yard.in, "old well", p(3, 8), null);
    RemarkWords.dimension(yard.in, p(1, 2), p(4, 6), m(0.6), "about");
    RemarkWords.dimension(yard.in, p(1, 2), p(1, 9), null, null);
    // 3 m right and 4 m up are 5 m.
    assertEquals(
        List.of(
            "note DOT 0.00 m at 3.00,8.00",
            "'old well' 2.5 mm NEAR at 3.00,8.00",
            "about 5.00 m from 1.00,2.00 to 4.00,6.00 off 0.60",
            "7.00 m from 1.00,2.00 to 1.00,9.00 off 0.00"),
        yard.drawn("site.remarks"));
  }

  @Test
  void remarks_haveOneToHundredAndSixtyLetters_andTwoEnds() {
    String most = "x".repeat(160);
    RemarkWords.note(yard.in, most, p(3, 8), null);
    RemarkWords.dimension(yard.in, p(1, 2), p(4, 6), null, most);
    RemarkWords.accept(yard.in, "site.bed-reach", most, null);
    refused(
        "a note has 1 to 160 letters, got 161",
        () -> RemarkWords.note(yard.in, most + "x", p(3, 8), null));
    refused("has 1 to 160 letters, got 1", () -> RemarkWords.note(yard.in, " ", p(3, 8), null));
    refused(
        "the text of a dimension has 1 to 160 letters, got 161",
        () -> RemarkWords.dimension(yard.in, p(1, 2), p(4, 6), null, most + "x"));
    refused(
        "a reason has 1 to 160 letters, got 0",
        () -> RemarkWords.accept(yard.in, "site.bed-reach", "", null));
    refused(
        "a dimension needs two points apart from each other",
        () -> RemarkWords.dimension(yard.in, p(1, 2), p(1, 2), null, null));
    assertEquals(3, yard.paint("site.remarks").size());
    assertEquals(Mark.Anchor.NEAR, ((Mark.Label) yard.paint("site.remarks").get(1)).anchor());
  }

  private static void refused(String says, Executable what) {
    PlanException refused = assertThrows(PlanException.class, what);
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }
}
