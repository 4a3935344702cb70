package yardloom.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.LightNeed;
import yardloom.facts.Obstacle;
import yardloom.facts.SolarRadiation;
import yardloom.facts.SunHours;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.sun.figure.SunPathWords;
import yardloom.sun.neighbour.ProposedWords;
import yardloom.sun.spot.SpotWords;
import yardloom.sun.spot.SunSpots;
import yardloom.sun.yard.YardWords;

class SunPluginTest extends PluginContract {
  private static final ElementId NORTH_BED = new ElementId(ElementKind.BED, "behind the wall");
  private static final ElementId SOUTH_BED = new ElementId(ElementKind.BED, "before the wall");

  @Override
  protected YardPlugin plugin() {
    return new SunPlugin();
  }

  static Outcome outcome(Draft draft, YardPlugin... others) {
    List<YardPlugin> plugins = new ArrayList<>(List.of(others));
    plugins.add(new SunPlugin());
    if (others.length == 0) {
      plugins.add(gives(List.of(), List.of()));
    }
    return new Study(PluginLoader.of(plugins)).of(draft.freeze());
  }

  /** Stands for climate: the same clear air at the sea all year. */
  private static void clearSky(Sink out) {
    Source by = Source.commonPractice("hand-made");
    out.give(
        YardFacts.RADIATION,
        new SolarRadiation(
            Collections.nCopies(12, 30.0),
            Collections.nCopies(12, 22.5),
            "three quarters",
            Collections.nCopies(12, new SolarRadiation.Sky(4.92, 101.3, 20)),
            by,
            Optional.empty()));
  }

  /** A tall wall from east to west with a bed on either side. */
  private static Draft wallBetweenBeds() {
    Draft draft = TestYards.at(40, -105);
    Line line = Line.between(Point.metres(-500, 0), Point.metres(500, 0));
    Shape strip = TestYards.rectangle(-500, -0.05, 500, 0.05);
    draft.add(
        new ElementId(ElementKind.FENCE, "wall"),
        SourceRef.NONE,
        c -> new Element.Fence(c, line, strip, Length.metres(100), 0));
    TestYards.bed(draft, NORTH_BED, TestYards.rectangle(-2, 0.5, 2, 1.5));
    TestYards.bed(draft, SOUTH_BED, TestYards.rectangle(-2, -1.5, 2, -0.5));
    return draft;
  }

  @Test
  void bedNorthOfWall_hasNoWinterSunAndBedSouthOfItAllOfIt() {
    Outcome outcome = outcome(wallBetweenBeds());
    var sun = outcome.results().get(YardFacts.SUN_HOURS);
    List<TimeSpan> behind = sun.of(NORTH_BED).orElseThrow().months();
    List<TimeSpan> before = sun.of(SOUTH_BED).orElseThrow().months();
    // Behind an endless wall there is sun only while it stands north of the east-west line, which
    // it crosses at cos H = tan δ / tan φ; on 11 June δ = 23.09°: day 14.79 h less 7.93 h.
    // 100 m are not endless: the sun peeps over for some 4 minutes at either crossing.
    assertEquals(6.86 + 0.13, behind.get(5).hours(), 0.05, "June behind the wall");
    assertEquals(0, behind.get(11).hours(), 1e-9, "December behind the wall");
    assertEquals(
        sun.open().months().get(11).hours(), before.get(11).hours(), 1e-9, "December before it");
    assertTrue(
        before.get(5).hours() < sun.open().months().get(5).hours(), "the June sun rises behind it");
  }

  @Test
  void table_listsBedsAndOpenGroundWithClass() {
    Table table =
        outcome(wallBetweenBeds()).tables().stream()
            .filter(t -> t.id().equals("sun-hours"))
            .findFirst()
            .orElseThrow();
    assertEquals(3, table.rows().size());
    assertEquals("full sun", table.rows().get(0).get(15).value().orElseThrow());
    assertEquals("part sun", table.rows().get(1).get(15).value().orElseThrow());
    assertTrue(table.notes().stream().anyMatch(n -> n.contains("temperate")), "names the scheme");
  }

  /** I07: what fruiting vegetables want stands beside what they get. */
  @Test
  void lightTable_givesClockTimesDailyLightAndTheGuide() {
    Table table =
        outcome(wallBetweenBeds()).tables().stream()
            .filter(t -> t.id().equals("sun-light"))
            .findFirst()
            .orElseThrow();
    assertTrue(table.notes().stream().anyMatch(n -> n.contains("20 to 25 mol")), "I07");
    assertEquals(3 * 4, table.rows().size(), "four days for two beds and the open ground");
    List<Object> december = table.rows().get(7).stream().map(c -> c.value().orElseThrow()).toList();
    assertEquals("none", december.get(2), "no first sun behind the wall");
    double behind = ((Number) december.get(8)).doubleValue();
    double before = ((Number) table.rows().get(3).get(8).value().orElseThrow()).doubleValue();
    assertTrue(0 < behind && behind < before / 2, behind + " of " + before);
  }

  @Test
  void planWithoutSite_givesNoHoursAndSaysWhy() {
    Draft draft = TestYards.nowhere();
    TestYards.bed(draft, NORTH_BED, TestYards.rectangle(0, 0, 2, 1));
    Outcome outcome = outcome(draft);
    assertTrue(outcome.results().find(YardFacts.SUN_HOURS).isEmpty());
    assertEquals(List.of("sun.site"), outcome.findings().stream().map(f -> f.rule()).toList());
  }

  /** Planting holds these against what plants ask for. */
  @Test
  void bedBehindTheWall_hasLessSeasonsSunAndALowerClass() {
    SunHours sun = outcome(wallBetweenBeds()).results().get(YardFacts.SUN_HOURS);
    SunHours.Place behind = sun.of(NORTH_BED).orElseThrow();
    SunHours.Place before = sun.of(SOUTH_BED).orElseThrow();
    assertEquals(
        List.of("part sun", "full sun"), List.of(behind.lightClass(), before.lightClass()));
    assertTrue(behind.season().hours() < before.season().hours());
    assertEquals("1 April to 30 September", sun.season());
    assertTrue(sun.scheme().startsWith("'temperate': full sun from "), sun.scheme());
  }

  /** A house next door south of the lot, and a tall shed proposed south of its windows. */
  @Test
  void shadeOnNeighboursWindows_isFoundForWhatIsProposedOnly() {
    for (boolean proposed : new boolean[] {true, false}) {
      Draft draft = TestYards.at(40, -105);
      ElementId shed = new ElementId(ElementKind.STRUCTURE, "shed");
      draft.add(
          shed,
          SourceRef.NONE,
          c -> new Element.Structure(c, TestYards.rectangle(-6, -4, 6, -2), Length.metres(5)));
      draft.add(
          new ElementId(ElementKind.BUILDING, "next door"),
          SourceRef.NONE,
          c ->
              new Element.Building(
                  c,
                  TestYards.rectangle(-4, 0, 4, 6),
                  Length.metres(3),
                  Length.metres(3),
                  Length.ZERO,
                  Element.RoofForm.FLAT,
                  true));
      if (proposed) {
        draft.attributes().add(ProposedWords.PROPOSED, shed, SourceRef.NONE);
      }
      List<Finding> found =
          outcome(draft).findings().stream().filter(f -> f.rule().equals("sun.neighbour")).toList();
      assertEquals(proposed ? 1 : 0, found.size());
    }
  }

  /** A point among tall plants of a bed: the sky over the bed counts, not the leaves around it. */
  @Test
  void sunPathInsidePlantedCanopy_showsTheSkyWithoutItsOwnPlants() {
    Draft draft = TestYards.at(40, -105);
    Shape bed = TestYards.rectangle(-2, -2, 2, 2);
    TestYards.bed(draft, SOUTH_BED, bed);
    draft.attributes().add(SunPathWords.SUN_POINT, Point.metres(0.5, 0.5), SourceRef.NONE);
    Obstacle shrubs =
        new Obstacle(
            SOUTH_BED,
            Obstacle.Form.PRISM,
            bed,
            Length.ZERO,
            Length.metres(2),
            Collections.nCopies(12, 0.3));
    Panel.Figure path =
        outcome(draft, gives(List.of(), List.of(shrubs))).sheets().get(0).panels().stream()
            .filter(p -> p instanceof Panel.Figure)
            .map(p -> (Panel.Figure) p)
            .filter(f -> f.title().startsWith("Sun path"))
            .findFirst()
            .orElseThrow();
    assertTrue(path.title().contains("without its own plants"), path.title());
    assertTrue(
        path.marks().stream()
            .noneMatch(m -> m instanceof Mark.Region r && r.about().startsWith("sky hidden")),
        "nothing else hides the sky");
  }

  /** A tree's light is taken in its crown, which does not shade itself. */
  @Test
  void treeThatAsksForSun_hasLessBehindAWall() {
    for (boolean walled : new boolean[] {true, false}) {
      Draft draft = walled ? wallBetweenBeds() : TestYards.at(40, -105);
      TestYards.bed(
          draft, new ElementId(ElementKind.BED, "far"), TestYards.rectangle(-20, 40, -18, 42));
      ElementId apple = new ElementId(ElementKind.TREE, "apple");
      Point at = Point.metres(0, 4);
      Length crown = Length.metres(3);
      draft.add(
          apple,
          SourceRef.NONE,
          c ->
              new Element.Tree(
                  c,
                  at,
                  Shape.circle(at, crown.div(2)),
                  crown,
                  Length.metres(3),
                  Length.metres(1),
                  Length.ZERO,
                  Element.Leaf.DECIDUOUS));
      LightNeed need =
          new LightNeed(
              apple, SourceRef.NONE, "apple", LightNeed.Amount.FULL_SUN, Source.plan("catalogue"));
      SunHours sun =
          outcome(draft, gives(List.of(need), List.of())).results().get(YardFacts.SUN_HOURS);
      assertEquals(walled, sun.of(apple).orElseThrow().season().hours() < 6);
    }
  }

  /** What is proposed takes the bed's sun exactly as it has it less than without. */
  @Test
  void bedThatLosesSunToWhatIsProposed_isFoundWithBothHours() {
    ElementId wall = new ElementId(ElementKind.FENCE, "wall");
    Draft draft = wallBetweenBeds();
    draft.attributes().add(ProposedWords.PROPOSED, wall, SourceRef.NONE);
    List<Finding> found =
        outcome(draft).findings().stream().filter(f -> f.rule().equals("sun.proposed")).toList();
    assertEquals(2, found.size(), "the wall shades one bed all day and the other in the evening");
    String behind =
        found.stream()
            .filter(f -> f.element().equals(Optional.of(NORTH_BED)))
            .findFirst()
            .orElseThrow()
            .text();
    Draft open = TestYards.at(40, -105);
    TestYards.bed(open, NORTH_BED, TestYards.rectangle(-2, 0.5, 2, 1.5));
    Object before = table(outcome(open), "sun-hours").rows().get(0).get(13).value().orElseThrow();
    String hours = String.format(java.util.Locale.ROOT, "%.1f h", ((TimeSpan) before).hours());
    assertTrue(behind.contains("(" + hours + " without it"), behind + " / " + hours);
  }

  private static Table table(Outcome outcome, String id) {
    return outcome.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void sheet_hasMapsWithOneLegendEachAndTheClassTable() {
    Draft draft = wallBetweenBeds();
    draft.attributes().add(YardWords.CELL, Length.metres(0.25), SourceRef.NONE);
    SheetPlan sheet = outcome(draft).sheets().get(0);
    assertEquals("sun", sheet.id());
    List<Panel.Figure> figures =
        sheet.panels().stream()
            .filter(p -> p instanceof Panel.Figure)
            .map(p -> (Panel.Figure) p)
            .toList();
    assertEquals(4, figures.size());
    figures.forEach(f -> assertTrue(!f.legend().isEmpty() && !f.marks().isEmpty(), f.title()));
    assertTrue(sheet.panels().stream().anyMatch(p -> p instanceof Panel.TableBlock));
    // Band fills fall in lightness from most to least sun, so grey prints keep the order.
    List<Integer> grey =
        figures.get(0).legend().stream()
            .map(e -> e.style().fill())
            .filter(f -> !f.isEmpty())
            .map(f -> Integer.parseInt(f.substring(3, 5), 16))
            .toList();
    assertEquals(grey.stream().sorted().toList(), grey);
    assertEquals(
        grey.size(),
        figures.get(0).legend().stream().map(e -> e.style().hatch()).distinct().count(),
        "every band has its own hatch");
  }

  @Test
  void bestSpot_avoidsTheShadeOfTheWallAndSaysWhenNothingIsLeft() {
    Draft draft = TestYards.at(40, -105);
    Shape lot = TestYards.rectangle(-10, -10, 10, 10);
    draft.lot(new Lot(SourceRef.NONE, lot, List.of()));
    Line line = Line.between(Point.metres(-10, 0), Point.metres(10, 0));
    draft.add(
        new ElementId(ElementKind.FENCE, "wall"),
        SourceRef.NONE,
        c ->
            new Element.Fence(
                c, line, TestYards.rectangle(-10, -0.1, 10, 0.1), Length.metres(4), 0));
    draft
        .attributes()
        .add(
            SpotWords.BEST_SPOT,
            new SpotWords.BestSpot(Area.squareMetres(20), "tomato", 7),
            SourceRef.NONE)
        .add(
            SpotWords.BEST_SPOT,
            new SpotWords.BestSpot(Area.squareMetres(2000), "wheat", 7),
            SourceRef.NONE);
    Outcome outcome = outcome(draft);
    SunSpots spots = outcome.results().get(SunSpots.KEY);
    Shape best = spots.searches().get(0).found().get(0).ground();
    assertTrue(best.bounds().getMaxY() < 0 || best.bounds().getMinY() > 4, "clear of the wall");
    assertTrue(spots.searches().get(1).found().isEmpty());
    assertEquals(1, outcome.findings().stream().filter(f -> f.rule().equals("sun.spot")).count());
  }

  /** Tall plants of one bed shade the next bed and not the ground they grow in. */
  @Test
  void plantsOfABed_shadeOthersAndNotTheirOwnBed() {
    Draft draft = TestYards.at(40, -105);
    TestYards.bed(draft, SOUTH_BED, TestYards.rectangle(-50, 0, 50, 1));
    TestYards.bed(draft, NORTH_BED, TestYards.rectangle(-50, 1.1, 50, 2.1));
    Obstacle corn =
        new Obstacle(
            SOUTH_BED,
            Obstacle.Form.PRISM,
            TestYards.rectangle(-50, 0, 50, 1),
            Length.ZERO,
            Length.metres(3),
            Collections.nCopies(12, 0.0));
    var sun = outcome(draft, gives(List.of(), List.of(corn))).results().get(YardFacts.SUN_HOURS);
    assertEquals(
        sun.open().months().get(11).hours(),
        sun.of(SOUTH_BED).orElseThrow().months().get(11).hours(),
        1e-9);
    assertEquals(0, sun.of(NORTH_BED).orElseThrow().months().get(11).hours(), 0.3);
  }

  /** Light needs and shade as planting would give them, radiation as climate would. */
  private static YardPlugin gives(List<LightNeed> needs, List<Obstacle> shade) {
    return new Giver(
        Set.of(YardFacts.LIGHT_NEEDS, YardFacts.OBSTACLES, YardFacts.RADIATION),
        (plan, out) -> {
          clearSky(out);
          needs.forEach(n -> out.give(YardFacts.LIGHT_NEEDS, n));
          shade.forEach(o -> out.give(YardFacts.OBSTACLES, o));
        });
  }

  private static SunSpots spots(double deepM, Optional<Double> trunkM) {
    Draft draft = TestYards.at(40, -105);
    draft.lot(new Lot(SourceRef.NONE, TestYards.rectangle(0, 0, 10, deepM), List.of()));
    Point at = Point.metres(5, 5);
    trunkM.ifPresent(
        trunk ->
            draft.add(
                new ElementId(ElementKind.TREE, "tree"),
                SourceRef.NONE,
                c ->
                    new Element.Tree(
                        c,
                        at,
                        Shape.circle(at, Length.metres(0.5)),
                        Length.metres(1),
                        Length.metres(2),
                        Length.metres(1),
                        Length.metres(trunk),
                        Element.Leaf.DECIDUOUS)));
    draft
        .attributes()
        .add(
            SpotWords.BEST_SPOT,
            new SpotWords.BestSpot(Area.squareMetres(6), "beans", 0),
            SourceRef.NONE);
    return outcome(draft).results().get(SunSpots.KEY);
  }

  /** A metre off a trunk of 0.4 m: a circle of 1.2 m, 4.52 m², is not free. */
  @Test
  void freeGround_keepsAMetreOffTrunks() {
    assertEquals(
        100 - Math.PI * 1.44, spots(10, Optional.of(0.4)).freeGround().area().squareMetres(), 0.1);
  }

  /** Cells of a foot: a strip of 1.3 m holds four of them, 1.2 m; one of 1.0 m three. */
  @Test
  void places_areAtLeastFourFeetWide() {
    assertEquals(1, spots(1.3, Optional.empty()).searches().get(0).found().size());
    assertTrue(spots(1.0, Optional.empty()).searches().get(0).found().isEmpty());
  }

  /** Windows are 1.5 m up, or half way up lower walls. */
  @Test
  void neighboursWindows_areAMetreAndAHalfUp() {
    for (double eavesM : new double[] {3, 2}) {
      Draft draft = TestYards.at(40, -105);
      ElementId shed = new ElementId(ElementKind.STRUCTURE, "shed");
      draft.add(
          shed,
          SourceRef.NONE,
          c -> new Element.Structure(c, TestYards.rectangle(-6, -4, 6, -2), Length.metres(5)));
      draft.add(
          new ElementId(ElementKind.BUILDING, "next door"),
          SourceRef.NONE,
          c ->
              new Element.Building(
                  c,
                  TestYards.rectangle(-4, 0, 4, 6),
                  Length.metres(eavesM),
                  Length.metres(eavesM),
                  Length.ZERO,
                  Element.RoofForm.FLAT,
                  true));
      draft.attributes().add(ProposedWords.PROPOSED, shed, SourceRef.NONE);
      String found =
          outcome(draft).findings().stream()
              .filter(f -> f.rule().equals("sun.neighbour"))
              .map(Finding::text)
              .findFirst()
              .orElseThrow();
      assertTrue(
          found.contains((eavesM == 3 ? "1.50 m (4.9 ft)" : "1.00 m (3.3 ft)") + " above ground"),
          found);
    }
  }
}
