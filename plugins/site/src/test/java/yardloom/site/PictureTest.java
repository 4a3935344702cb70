package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static yardloom.site.PaintedYard.box;
import static yardloom.site.PaintedYard.m;
import static yardloom.site.PaintedYard.p;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.FlatCrown;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuiltWords;
import yardloom.site.ground.LevelWords;
import yardloom.site.lawn.GroundWords;
import yardloom.site.path.PathWords;
import yardloom.site.tree.TreeWords;

/** The picture of the yard: what lies where, on a lot of 20 m by 30 m. */
class PictureTest {
  private static final String GROUND = "site.picture-ground";
  private static final String WORKS = "site.picture-works";
  private static final String CROWNS = "site.picture-crowns";

  private final PaintedYard yard = new PaintedYard().lot(20, 30);

  private void house(
      String name, double x, double y, double w, double d, Double overhang, boolean flat) {
    BuiltWords.building(
        yard.in,
        name,
        box(x, y, w, d),
        m(4),
        flat ? null : m(6),
        overhang == null ? null : m(overhang),
        null,
        null,
        null);
  }

  /**
   * Eaves of 4 m throw 2 m right and up: 8 × 6 and, from sweeping it, 2 × 8 + 2 × 6. The ground
   * around is 1020 × 1030 less the lot's 600.
   */
  @Test
  void ground_isLawnPavingAndShadows() {
    BuiltWords.paving(yard.in, "Terrace", box(12, 5, 3, 5), "brick", null);
    GroundWords.mulchedGround(yard.in, "Old lawn", box(0, 20, 7, 10), null, null);
    house("House", 4, 5, 8, 6, null, true);
    assertEquals(
        List.of(
            "picture-around 1050000.00 m² at 10.00,15.00",
            "picture-lawn 600.00 m² at 10.00,15.00",
            "picture-chips 70.00 m² at 3.50,25.00",
            "picture-paving 15.00 m² at 13.50,7.50",
            "picture-shadow 76.00 m² at 9.00,9.00"),
        yard.drawn(GROUND));
    assertEquals(
        List.of(
            "Lawn or open ground | picture-lawn",
            "Ground under chips | picture-chips",
            "Paving | picture-paving",
            "Shadow | picture-shadow"),
        yard.legend(GROUND));
  }

  /** The shadow of 3 m from (-6..-2, 5..9): in the lot a strip of 1 m, 5 m high left, 4 m right. */
  @Test
  void neighbour_throwsItsShadowOverTheLine_withoutALineInTheLegend() {
    GroundWords.openGround(yard.in, "bare");
    BuiltWords.building(yard.in, "Next", box(-6, 5, 4, 4), m(6), null, null, null, true, null);
    BuiltWords.building(yard.in, "East", box(22, 5, 4, 4), m(6), null, null, null, true, null);
    List<String> drawn = yard.drawn(GROUND);
    assertEquals(3, drawn.size(), "the eastern one's falls away from the lot");
    assertEquals("picture-bare 600.00 m² at 10.00,15.00", drawn.get(1));
    assertEquals("picture-shadow 4.50 m²", drawn.get(2).substring(0, 22));
    assertEquals(List.of("bare ground | picture-bare"), yard.legend(GROUND));
  }

  @Test
  void works_areBedsPathsFencesAndRoofs() {
    BedWords.bed(yard.in, "Kale", box(1, 15, 2, 5), "annual", null, null);
    BedWords.bed(yard.in, "Berries", box(4, 15, 3, 4), "perennial", null, null);
    PathWords.path(yard.in, "Walk", Line.between(p(0, 14), p(10, 14)), m(1), null, null, null);
    BarrierWords.fence(
        yard.in, "Fence", Line.between(p(0, 30), p(20, 30)), m(2), null, null, null, null, null);
    BuiltWords.structure(yard.in, "Shed", box(15, 25, 3, 2), m(2), null, null);
    LevelWords.swale(yard.in, "Ditch", Line.between(p(2, 23), p(8, 23)), m(0.5), m(0.25), 3, null);
    house("House", 4, 5, 8, 6, null, true);
    // A swale of 0.5 m with sides of 3:1 over 0.25 m is 0.5 + 2 × 0.75 = 2 m wide, 6 m long.
    assertEquals(
        List.of(
            "picture-path 10.00 m² at 5.00,14.00",
            "picture-mulch 12.00 m² at 5.50,17.00",
            "'Berries' 2.5 mm INSIDE at 5.50,17.00 on 12.0 m²",
            "picture-compost 10.00 m² at 2.00,17.50",
            "'Kale' 2.5 mm INSIDE at 2.00,17.50 on 10.0 m²",
            "picture-fence from 0.00,30.00 to 20.00,30.00",
            "picture-swale 12.00 m² at 5.00,23.00",
            "'Ditch' 2.5 mm INSIDE at 5.00,23.00 on 12.0 m²",
            "picture-built 6.00 m² at 16.50,26.00",
            "'Shed' 2.5 mm INSIDE at 16.50,26.00 on 6.0 m²",
            "picture-roof-light 48.00 m² at 8.00,8.00",
            "'House' 2.5 mm INSIDE at 8.00,8.00 on 48.0 m²"),
        yard.drawn(WORKS));
    assertEquals(
        List.of(
            "Mulched bed | picture-mulch",
            "Bed of annuals | picture-compost",
            "Path | picture-path",
            "Fence, wall or hedge | picture-fence line",
            "Swale | picture-swale",
            "Shed, frame or tank | picture-built",
            "Building | picture-roof-light"),
        yard.legend(WORKS));
    List<Mark.Label> names =
        yard.paint(WORKS).stream()
            .filter(x -> x instanceof Mark.Label)
            .map(x -> (Mark.Label) x)
            .toList();
    assertEquals(
        List.of(false, false, false, false, true), names.stream().map(Mark.Label::bold).toList());
    assertEquals(List.of(4, 4, 5, 5, 1), names.stream().map(Mark.Label::rank).toList());
  }

  @Test
  void works_ofOneKindOnly_haveNoOtherLineInTheLegend() {
    BedWords.bed(yard.in, "Berries", box(4, 15, 3, 4), "perennial", null, null);
    LevelWords.swale(yard.in, "Ditch", Line.between(p(2, 23), p(8, 23)), m(0.5), m(0.25), 3, null);
    BuiltWords.building(yard.in, "Next", box(-6, 5, 4, 4), m(6), null, null, null, true, null);
    assertEquals(
        List.of(
            "Mulched bed | picture-mulch",
            "Swale | picture-swale",
            "Neighbour's building | picture-neighbour"),
        yard.legend(WORKS));
    assertEquals("picture-neighbour 16.00 m² at -4.00,7.00", yard.drawn(WORKS).get(4));
    PaintedYard other = new PaintedYard().lot(20, 30);
    BedWords.bed(other.in, "Kale", box(1, 15, 2, 5), "annual", null, null);
    BuiltWords.structure(other.in, "Shed", box(15, 25, 3, 2), m(2), null, null);
    assertEquals(
        List.of("Bed of annuals | picture-compost", "Shed, frame or tank | picture-built"),
        other.legend(WORKS));
  }

  /** The ridge runs along the longer side; the face away from the south-west is the dark one. */
  @Test
  void roof_hasTwoFacesThatMeetOverItsLongerMiddle() {
    house("Wide", 2, 5, 8, 6, null, false);
    house("High", 12, 5, 6, 10, null, false);
    assertEquals(
        List.of(
            "picture-roof-light 30.00 m² at 13.50,10.00",
            "picture-roof-dark 30.00 m² at 16.50,10.00",
            "'High' 2.5 mm INSIDE at 15.00,10.00 on 60.0 m²",
            "picture-roof-light 24.00 m² at 6.00,6.50",
            "picture-roof-dark 24.00 m² at 6.00,9.50",
            "'Wide' 2.5 mm INSIDE at 6.00,8.00 on 48.0 m²"),
        yard.drawn(WORKS));
  }

  /** Half a metre beyond the walls: 8 × 6, 28 m of walls × 0.5 and four quarters of a circle. */
  @Test
  void roof_standsOutByItsEaves() {
    house("House", 4, 5, 8, 6, 0.5, true);
    Mark.Region roof = (Mark.Region) yard.paint(WORKS).get(0);
    assertEquals(9 * 7, roof.shape().area().squareMetres(), 0.01);
  }

  /**
   * A lobed disc has r = R (0.88 + 0.12 |sin|), so π R² (0.88² + 2 · 0.88 · 0.12 · 2/π + 0.12²/2) =
   * 0.9161 π R². Lobes are 0.9 m wide: 2 π 2 / 0.9 = 14, of 10 points each; a stem has 6.
   */
  @Test
  void crown_isALobedDisc_withShadeBelowRightAndLightAboveLeft() {
    TreeWords.tree(yard.in, "Pear", p(15, 20), m(4), m(5), m(1.5), m(0.4), "deciduous", null, null);
    List<Mark> marks = yard.paint(CROWNS);
    double share = 0.88 * 0.88 + 2 * 0.88 * 0.12 * 2 / Math.PI + 0.12 * 0.12 / 2;
    region(marks.get(0), "picture-crown-shade", share * Math.PI * 4, 15.16, 19.84, 140);
    region(marks.get(1), "picture-crown", share * Math.PI * 4, 15, 20, 140);
    region(marks.get(2), "picture-crown-light", share * Math.PI * 1.24 * 1.24, 14.68, 20.32, 140);
    region(marks.get(3), "picture-stem", share * Math.PI * 0.04, 15, 20, 60);
    assertEquals(5, marks.size());
    Mark.Label name = (Mark.Label) marks.get(4);
    assertEquals("Pear", name.text());
    assertEquals(5, name.rank(), "beds have their leaders first");
    assertEquals(20 - 0.45 * 2, name.at().y().metres(), 1e-9, "below the stem");
    Mark.Region crown = (Mark.Region) marks.get(1);
    assertEquals(
        15 + 2 * 0.88,
        crown.shape().corners().stream()
            .filter(c -> c.y().equals(m(20)) && c.x().metres() > 15)
            .findFirst()
            .orElseThrow()
            .x()
            .metres(),
        1e-9,
        "between two lobes");
    assertEquals(List.of("Deciduous tree | picture-crown"), yard.legend(CROWNS));
  }

  private static void region(Mark mark, String style, double area, double x, double y, int points) {
    Mark.Region region = (Mark.Region) mark;
    assertEquals(style, region.style().name());
    assertEquals(area, region.shape().area().squareMetres(), area * 0.01, style);
    assertEquals(x, region.shape().centroid().x().metres(), 0.005, style);
    assertEquals(y, region.shape().centroid().y().metres(), 0.005, style);
    assertEquals(points, region.shape().corners().size(), style);
  }

  @Test
  void evergreen_hasItsOwnColours_andAThinStemIsDrawnWiderThanItIs() {
    TreeWords.tree(yard.in, "Pine", p(5, 25), m(3), m(5), m(1), m(0.05), "evergreen", null, null);
    List<Mark> marks = yard.paint(CROWNS);
    assertEquals("picture-evergreen", ((Mark.Region) marks.get(1)).style().name());
    assertEquals("picture-evergreen-light", ((Mark.Region) marks.get(2)).style().name());
    double share = 0.88 * 0.88 + 2 * 0.88 * 0.12 * 2 / Math.PI + 0.12 * 0.12 / 2;
    region(marks.get(3), "picture-stem", share * Math.PI * 0.12 * 0.12, 5, 25, 60);
    assertEquals(List.of("Evergreen tree | picture-evergreen"), yard.legend(CROWNS));
  }

  /** 3 m along wires from north to south and 0.5 m deep; lit 2.7 m by 0.2 m; the stem 0.12 m. */
  @Test
  void treeTrainedFlat_liesAlongItsWires() {
    TreeWords.tree(
        yard.in,
        "Fan",
        p(8, 22),
        m(3),
        m(2),
        m(0.5),
        m(0.1),
        "deciduous",
        null,
        t ->
            t.element()
                .attributes()
                .add(FlatCrown.KEY, new FlatCrown(m(3), m(0.5), Angle.ZERO), t.place()));
    List<Mark> marks = yard.paint(CROWNS);
    region(marks.get(0), "picture-crown", 3 * 0.5, 8, 22, 4);
    region(marks.get(1), "picture-crown-light", 2.7 * 0.2, 8, 22, 4);
    assertEquals(4, marks.size());
    assertEquals(22 - 0.45 * 1.5, ((Mark.Label) marks.get(3)).at().y().metres(), 1e-9);
    assertEquals(
        List.of(23.5, 20.5),
        ((Mark.Region) marks.get(0))
            .shape().corners().stream()
                .map(c -> c.y().metres())
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList());
    assertEquals(List.of("Tree trained flat | picture-crown"), yard.legend(CROWNS));
  }

  /**
   * A bed of 9 × 2 m under the crown of a pear, 4 m wide, whose stem stands 5 m from its left end:
   * 3 m are seen left of it and 2 m right of it. Its name belongs to that ground, not to the crown.
   */
  @Test
  void bedUnderACrown_isNamedWhereItIsSeen() {
    BedWords.bed(yard.in, "Thyme", box(2, 15, 9, 2), "perennial", null, null);
    TreeWords.tree(yard.in, "Pear", p(7, 16), m(4), m(5), m(1.5), m(0.4), "deciduous", null, null);
    Mark.Label name = (Mark.Label) yard.paint(WORKS).get(1);
    assertEquals("Thyme", name.text());
    Shape ground = name.ground().orElseThrow();
    assertFalse(ground.covers(box(6.9, 15.9, 0.2, 0.2)), "the stem");
    // The crown begins at x = 5 in the bed's middle and ends at x = 9.
    assertTrue(ground.covers(box(2.1, 15.1, 2.8, 1.8)));
    assertTrue(ground.covers(box(9.1, 15.1, 1.8, 1.8)));
    assertTrue(name.at().x().metres() < 5, "in the larger piece");
  }

  @Test
  void picture_standsOnTheCoverOnly() {
    for (String layer : List.of(GROUND, WORKS, CROWNS)) {
      assertFalse(PaintedYard.painter(layer).shownByDefault());
      assertEquals(Set.of(SheetPage.COVER), PaintedYard.painter(layer).uses());
    }
  }

  /**
   * Before the work there are the lot, the house with its shadow and the old tree; the new tree,
   * the bed, the path and the chips are not there yet. Names as the script has them.
   */
  @Test
  void before_showsWhatStands_afterAlsoWhatIsNew() {
    TreeWords.tree(yard.in, "Old oak", p(5, 25), m(7), m(5), m(1), m(0.5), "deciduous", null, null);
    TreeWords.tree(
        yard.in, "New pear", p(15, 25), m(3), m(4), m(1), m(0.03), "deciduous", null, null);
    assertEquals(Set.of("Old oak"), abouts("site.before-crowns"));
    assertEquals(Set.of("Old oak", "New pear"), abouts(CROWNS));
    assertEquals(Set.of(SheetPage.BEFORE), PaintedYard.painter("site.before-crowns").uses());
    assertEquals(List.of(), yard.legend("site.before-crowns"));
  }

  private Set<String> abouts(String layer) {
    return yard.paint(layer).stream()
        .filter(m -> m instanceof Mark.Region)
        .map(m -> ((Mark.Region) m).about().replaceAll("^tree |\"", ""))
        .collect(java.util.stream.Collectors.toSet());
  }
}
