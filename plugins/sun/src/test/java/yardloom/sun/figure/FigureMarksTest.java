package yardloom.sun.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import yardloom.facts.Field;
import yardloom.facts.Obstacle;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.sun.TestYards;
import yardloom.sun.body.Ground;
import yardloom.sun.light.LightSchemes;
import yardloom.sun.shade.Scenes;
import yardloom.sun.shade.ShadeScene;
import yardloom.sun.shade.SkyLook;
import yardloom.sun.spot.SunSpots;
import yardloom.sun.yard.SunField;

/** Which marks the figures of the sun make, and where. */
class FigureMarksTest {
  private static <T extends Mark> List<T> of(Panel.Figure figure, Class<T> kind) {
    return figure.marks().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static List<Mark.Label> labels(Panel.Figure figure, String text) {
    return of(figure, Mark.Label.class).stream().filter(l -> l.text().equals(text)).toList();
  }

  private static List<Mark.Region> regions(Panel.Figure figure, String about) {
    return of(figure, Mark.Region.class).stream().filter(r -> r.about().equals(about)).toList();
  }

  private static void assertAt(double x, double y, Point at) {
    assertEquals(x, at.x().metres(), 2e-3);
    assertEquals(y, at.y().metres(), 2e-3);
  }

  private static Panel.Figure path(double latitude, double northDeg, Obstacle... hiding) {
    double north = Math.toRadians(northDeg);
    ShadeScene scene =
        new ShadeScene(Math.toRadians(latitude), north, Ground.LEVEL, List.of(), List.of(hiding));
    return SunPathFigure.of(
        Math.toRadians(latitude),
        new SkyLook(scene, north, 0, 0, ShadeScene.NOBODY),
        "the middle of the lot");
  }

  /**
   * At 40° north the noon sun stands 50° high on the equinox, 73.44° in June, 26.56° in December;
   * the zenith is the middle, the horizon 10 m out, so it lies 10 × 40 / 90 = 4.444, 1.840 and
   * 7.049 m south. Sunset hour angles acos(-tan 40° tan δ) are 111.3°, 90° and 68.7°: full hours
   * ±7, ±6 and ±4, 15 + 13 + 9 dots; every third is named, on the solstices: 5 + 3.
   */
  @Test
  void pathsOfTheSun_lieWhereItStands() {
    Panel.Figure figure = path(40, 0);
    assertEquals("Sun path at the middle of the lot", figure.title());
    assertEquals(15 + 13 + 9, of(figure, Mark.Symbol.class).size());
    assertEquals(2, labels(figure, "12 h").size());
    assertAt(0, -1.840, labels(figure, "12 h").get(0).at());
    assertAt(0, -7.049, labels(figure, "12 h").get(1).at());
    assertEquals(1, labels(figure, "6 h").size());
    assertTrue(labels(figure, "6 h").get(0).at().x().metres() > 0, "the morning sun is east");
    assertEquals(
        5 + 3, of(figure, Mark.Label.class).stream().filter(l -> l.text().endsWith(" h")).count());
    List<Mark.Symbol> equinox =
        of(figure, Mark.Symbol.class).stream()
            .filter(s -> s.about().equals("21 March and 23 September, 12 h"))
            .toList();
    assertAt(0, -4.444, equinox.get(0).at());
    List<Mark.Stroke> paths = of(figure, Mark.Stroke.class);
    assertEquals(3, paths.size());
    // The equinox sun rises due east on the rim and sets due west.
    assertAt(10, 0, paths.get(1).line().start());
    assertAt(-10, 0, paths.get(1).line().end());
    assertEquals(61, paths.get(0).line().points().size());
  }

  /** Rings at 0, 30 and 60° are 10, 6.667 and 3.333 m wide; letters stand 6° below the horizon. */
  @Test
  void ringsAndCompass_frameTheSky() {
    Panel.Figure figure = path(40, 0);
    assertEquals(10, regions(figure, "0° up").get(0).shape().bounds().getMaxX(), 0.02);
    assertEquals(20 / 3.0, regions(figure, "30° up").get(0).shape().bounds().getMaxX(), 0.02);
    assertEquals(10 / 3.0, regions(figure, "60° up").get(0).shape().bounds().getMaxX(), 0.02);
    double out = 10 * 96 / 90.0;
    assertAt(0, out, labels(figure, "N").get(0).at());
    assertAt(out, 0, labels(figure, "E").get(0).at());
    assertAt(0, -out, labels(figure, "S").get(0).at());
    assertAt(-out, 0, labels(figure, "W").get(0).at());
    assertTrue(labels(figure, "N").get(0).bold());
    Mark.Label thirty = labels(figure, "30°").get(0);
    double far = 20 / 3.0;
    assertAt(far * Math.sin(Math.toRadians(15)), far * Math.cos(Math.toRadians(15)), thirty.at());
    assertFalse(thirty.bold());
    assertTrue(labels(figure, "0°").isEmpty());
  }

  /** At 70° north the December sun does not rise; in June it does not set: 24 full hours. */
  @Test
  void polarNight_hasNoPath() {
    Panel.Figure figure = path(70, 0);
    assertEquals(2, of(figure, Mark.Stroke.class).size());
    assertEquals(
        24,
        of(figure, Mark.Symbol.class).stream()
            .filter(s -> s.about().startsWith("21 June"))
            .count());
  }

  /**
   * A wall 10 m high along a line 10 m south: due south it hides up to 45°, towards the south-east
   * up to atan(10 / 14.14) = 35.3°, nothing north. Where true north lies to the right on the plan,
   * the wall below stands in the true east.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 180, 43, true",
    "0, 180, 47, false",
    "0, 135, 33, true",
    "0, 135, 38, false",
    "0, 0, 2, false",
    "90, 90, 43, true",
    "90, 180, 43, false"
  })
  void hiddenSky_isThatBehindTheWall(
      double northDeg, double bearing, double elevation, boolean hidden) {
    Panel.Figure figure = path(40, northDeg, Scenes.box(-2000, -10.5, 2000, -10, 10));
    Shape sky = regions(figure, "sky hidden by obstacles").get(0).shape();
    double far = 10 * (90 - elevation) / 90;
    double turn = Math.toRadians(bearing);
    assertEquals(hidden, sky.contains(Point.metres(far * Math.sin(turn), far * Math.cos(turn))));
    assertTrue(regions(path(40, 0), "sky hidden by obstacles").isEmpty());
  }

  private static Draft lot(double wideM, double deepM, double latitude) {
    Draft draft = TestYards.at(latitude, -105);
    Shape lot = TestYards.rectangle(0, 0, wideM, deepM);
    draft.lot(new Lot(SourceRef.NONE, lot, List.of()));
    return draft;
  }

  private static Panel.Figure shadows(Draft draft, Obstacle... obstacles) {
    Plan plan = draft.freeze();
    return new ShadowFigure(plan, plan.site().orElseThrow(), new Ground(0, 0), List.of(obstacles))
        .make();
  }

  private static void assertBox(double x, double y, double toX, double toY, Shape shape) {
    Envelope box = shape.bounds();
    assertEquals(x, box.getMinX(), 2e-3);
    assertEquals(y, box.getMinY(), 2e-3);
    assertEquals(toX, box.getMaxX(), 2e-3);
    assertEquals(toY, box.getMaxY(), 2e-3);
  }

  /**
   * A lot of 20 by 10 m in three columns of a figure of 95 mm: 95 - 8 - 10 = 77 mm for 60 m, 1.2833
   * mm a metre. Tiles lie 20 + 5 / 1.2833 = 23.896 m apart, rows 10 + 10 / 1.2833 = 17.792 m;
   * captions 5 / 1.2833 = 3.896 m over the middle of the top. A post of 2 m casts 2 / tan 50° =
   * 1.678 m north at noon of the equinox, and 2 / tan 73.44° = 0.594 m in June.
   */
  @Test
  void tilesOfShade_standInRows_andShadeFallsNorth() {
    Panel.Figure figure = shadows(lot(20, 10, 40), Scenes.box(9, 4, 11, 6, 2));
    List<Mark.Region> noon = regions(figure, "shade, noon");
    assertEquals(3, noon.size());
    assertBox(9 + 23.896, 4, 11 + 23.896, 7.678, noon.get(0).shape());
    assertBox(9 + 23.896, 4 - 17.792, 11 + 23.896, 6.594 - 17.792, noon.get(1).shape());
    Mark.Label caption = labels(figure, "21 June, +3 h").get(0);
    assertAt(10 + 2 * 23.896, 10 - 17.792 + 3.896, caption.at());
    List<Mark.Region> lots = regions(figure, "lot");
    assertEquals(9, lots.size());
    assertBox(2 * 23.896, -2 * 17.792, 20 + 2 * 23.896, 10 - 2 * 17.792, lots.get(8).shape());
    // Three hours before noon the sun is in the south-east: shade falls to the north-west.
    Envelope morning = regions(figure, "shade, −3 h").get(0).shape().bounds();
    assertTrue(morning.getMinX() < 8 && morning.getMaxX() < 11.01, morning.toString());
    assertEquals(95, figure.minWidthMm());
  }

  /** A deep lot has all nine tiles in a row of 250 mm: (250 - 8 - 40) / 90 = 2.2444 mm a metre. */
  @Test
  void tallLot_hasItsTilesInOneRow_andPolarNightIsSaid() {
    Panel.Figure figure = shadows(lot(10, 20, 70), Scenes.box(4, 9, 6, 11, 2));
    assertEquals(250, figure.minWidthMm());
    List<Mark.Region> lots = regions(figure, "lot");
    double apart = 10 + 5 / 2.24444;
    assertBox(8 * apart, 0, 10 + 8 * apart, 20, lots.get(8).shape());
    assertEquals(1, labels(figure, "21 Dec, noon: sun down").size());
    assertEquals(1, labels(figure, "21 March, noon").size());
  }

  private static Field field(DoubleUnaryOperator byX) {
    return Field.of(
        Point.metres(0, 0),
        Length.metres(0.5),
        40,
        20,
        i -> byX.applyAsDouble((i % 40 + 0.5) * 0.5));
  }

  private static SunField sun(DoubleUnaryOperator byX) {
    Field field = field(byX);
    return new SunField(Collections.nCopies(12, field), field, field, "1 April to 30 September");
  }

  /**
   * Hours that rise from 0 at the left to 10 at 20 m, half an hour a metre: bands of two hours,
   * each 4 m wide, borders at 4, 8, 12 and 16 m.
   */
  @Test
  void bandsOfHours_lieBetweenTheirLimits() {
    Panel.Figure figure =
        SunFigures.season(lot(20, 10, 40).freeze(), sun(x -> x / 2), Optional.empty());
    for (int band = 0; band < 5; band++) {
      String about = "direct sun: " + 2 * band + " to " + (2 * band + 2) + " h";
      assertBox(4 * band, 0, 4 * band + 4, 10, regions(figure, about).get(0).shape());
    }
    assertTrue(regions(figure, "direct sun: 10 h and more").isEmpty());
    assertEquals(6, figure.legend().size());
    // A label of each border stands on it, furthest from the edges of the lot.
    Point four = labels(figure, "4 h").get(0).at();
    assertEquals(8, four.x().metres(), 1e-3);
    assertEquals(5, four.y().metres(), 0.5);
    assertEquals(1, labels(figure, "Mean day of 1 April to 30 September").size());
    assertEquals("Direct sun in the season", figure.title());
  }

  /**
   * The bar is 5 m of a metric plan, 5 mm below the lot, where 110 - 8 = 102 mm are 20 m, 5.1 mm a
   * metre; its text 4 mm below it; the arrow as far from the right edge.
   */
  @Test
  void barAndNorth_standBelowTheLot() {
    Panel.Figure figure =
        SunFigures.season(lot(20, 10, 40).freeze(), sun(x -> 5), Optional.empty());
    Mark.Stroke bar = of(figure, Mark.Stroke.class).get(0);
    assertAt(0, -5 / 5.1, bar.line().start());
    assertAt(5, -5 / 5.1, bar.line().end());
    assertAt(2.5, -9 / 5.1, labels(figure, "5 m").get(0).at());
    Mark.Symbol north = of(figure, Mark.Symbol.class).get(0);
    assertAt(20 - 5 / 5.1, -5 / 5.1, north.at());
    assertAt(20 - 1 / 5.1, -5 / 5.1, labels(figure, "N").get(0).at());
    assertEquals(110, figure.minWidthMm());
  }

  /** Buildings and structures are cut to the lot and no room for labels; beds and crowns show. */
  @Test
  void whatStandsOnTheLot_isOutlined() {
    Draft draft = lot(20, 10, 40);
    draft.add(
        new ElementId(ElementKind.STRUCTURE, "shed"),
        SourceRef.NONE,
        c -> new Element.Structure(c, TestYards.rectangle(16, 2, 24, 8), Length.metres(3)));
    TestYards.bed(draft, new ElementId(ElementKind.BED, "b"), TestYards.rectangle(1, 1, 3, 2));
    Plan plan = draft.freeze();
    Panel.Figure figure = SunFigures.season(plan, sun(x -> 5), Optional.empty());
    String shed = new ElementId(ElementKind.STRUCTURE, "shed").toString();
    assertBox(16, 2, 20, 8, regions(figure, shed).get(0).shape());
    assertBox(
        1, 1, 3, 2, regions(figure, new ElementId(ElementKind.BED, "b").toString()).get(0).shape());
    assertEquals(200 - 24, YardOutline.roomOf(plan).area().squareMetres(), 1e-9);
  }

  @Test
  void placesFound_areNumberedByRank() {
    SunSpots.Found one =
        new SunSpots.Found(
            TestYards.rectangle(2, 2, 6, 4), 6, 7, LightSchemes.named("hot").classes().get(0));
    SunSpots.Found two =
        new SunSpots.Found(
            TestYards.rectangle(12, 2, 15, 4), 5, 6, LightSchemes.named("hot").classes().get(0));
    SunSpots.Search search =
        new SunSpots.Search("tomato", Area.squareMetres(6), 5, SourceRef.NONE, List.of(one, two));
    SunSpots.Search none =
        new SunSpots.Search("wheat", Area.squareMetres(600), 5, SourceRef.NONE, List.of());
    Panel.Figure figure =
        SunFigures.season(
            lot(20, 10, 40).freeze(),
            sun(x -> 5),
            Optional.of(new SunSpots(List.of(search, none), Shape.EMPTY)));
    assertBox(12, 2, 15, 4, regions(figure, "place 2 for tomato").get(0).shape());
    assertAt(13.5, 3, labels(figure, "2").get(0).at());
    assertAt(4, 3, labels(figure, "1").get(0).at());
    assertEquals(7, figure.legend().size());
  }

  /** Twelve tiles in rows of four: (250 - 8 - 15) / 4 / 20 = 2.8375 mm a metre. */
  @Test
  void months_standInThreeRowsOfFour() {
    Panel.Figure figure = SunFigures.months(lot(20, 10, 40).freeze(), sun(x -> x / 2));
    List<Mark.Region> lots = regions(figure, "lot");
    assertEquals(12, lots.size());
    double apart = 20 + 5 / 2.8375;
    double down = 10 + 10 / 2.8375;
    assertBox(apart, -down, 20 + apart, 10 - down, lots.get(5).shape());
    assertAt(10 + apart, 10 - down + 5 / 2.8375, labels(figure, "June").get(0).at());
    List<Mark.Region> band = regions(figure, "direct sun: 4 to 6 h");
    assertBox(8 + apart, -down, 12 + apart, 10 - down, band.get(5).shape());
  }
}
