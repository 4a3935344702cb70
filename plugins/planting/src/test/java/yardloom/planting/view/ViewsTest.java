package yardloom.planting.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.PlantYard;
import yardloom.planting.list.PlantKeys;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.PlantingWords;

/**
 * The section through a guild and the first year's plan, mark by mark; in feet, drawn in metres.
 */
class ViewsTest {
  private static final double FT = 0.3048;
  private PlantYard yard = PlantYard.us("");

  private PlantPlaces places() {
    return yard.outcome().results().find(PlantPlaces.KEY).orElseThrow();
  }

  private Panel.Figure section(UnitSystem units) {
    PlantPlaces places = places();
    return GuildSection.of(places, PlantKeys.of(places), units).orElseThrow();
  }

  private static List<Mark.Region> regions(Panel.Figure figure, String about) {
    return figure.marks().stream()
        .filter(m -> m instanceof Mark.Region r && r.about().equals(about))
        .map(m -> (Mark.Region) m)
        .toList();
  }

  private static List<Mark.Label> labels(Panel.Figure figure) {
    return figure.marks().stream()
        .filter(m -> m instanceof Mark.Label)
        .map(m -> (Mark.Label) m)
        .toList();
  }

  private static List<Mark.Stroke> strokes(Panel.Figure figure) {
    return figure.marks().stream()
        .filter(m -> m instanceof Mark.Stroke)
        .map(m -> (Mark.Stroke) m)
        .toList();
  }

  private static void assertBoxFt(double x, double y, double toX, double toY, Mark.Region region) {
    Envelope box = region.shape().bounds();
    assertEquals(x * FT, box.getMinX(), 1e-6);
    assertEquals(y * FT, box.getMinY(), 1e-6);
    assertEquals(toX * FT, box.getMaxX(), 1e-6);
    assertEquals(toY * FT, box.getMaxY(), 1e-6);
  }

  /**
   * A bed of 20 by 4 ft along x (or y) with rhubarb 4 ft apart at 2, 6 … 18 ft along it and an
   * apple at 8 ft. Apple: 144 to 180 in high, so 13.5 ft, crown 12 ft as drawn, from 30 % of its
   * height, 4.05 ft; first year 30 % of all that. Rhubarb: 24 to 36 in high, 2.5 ft, 36 to 48 in
   * wide, 3.5 ft; half of it in the first year.
   */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void section_showsHeightsAndSpreads_grownAndInTheFirstYear(boolean alongX) {
    yard.planted(yard.bed("b", 0, 0, alongX ? 20 : 4, alongX ? 4 : 20), "rhubarb", 4);
    yard.tree("apple", "apple (semi-dwarf)", alongX ? 8 : 2, alongX ? 2 : 8, 1);
    Panel.Figure figure = section(UnitSystem.US);
    assertEquals("Section along b", figure.title());
    Mark.Region crown = regions(figure, "apple (semi-dwarf)").get(0);
    double middle = (crown.shape().bounds().getMinX() / FT + 6);
    assertEquals(8, middle, 1e-6);
    assertBoxFt(middle - 6, 4.05, middle + 6, 13.5, crown);
    assertEquals("section-grown", crown.style().name());
    Mark.Region first = regions(figure, "apple (semi-dwarf) in the first year").get(0);
    assertBoxFt(middle - 1.8, 0.3 * 4.05, middle + 1.8, 4.05, first);
    assertEquals("section-year-1", first.style().name());
    Mark.Region stem = regions(figure, "stem").get(0);
    double half = 0.075 / FT;
    assertBoxFt(middle - half, 0, middle + half, 4.05 * 1.3, stem);
    List<Mark.Region> rhubarb = regions(figure, "rhubarb");
    assertEquals(5, rhubarb.size());
    assertBoxFt(0.25, 0, 3.75, 2.5, rhubarb.get(0));
    assertBoxFt(16.25, 0, 19.75, 2.5, rhubarb.get(4));
    Mark.Region young = regions(figure, "rhubarb in the first year").get(1);
    assertBoxFt(6 - 0.875, 0, 6 + 0.875, 1.25, young);
    // Crowns are whole: an ellipse of 24 sides has the area of 12 × sin 15° × its half axes.
    double ellipse = 12 * Math.sin(Math.toRadians(15)) * 6 * (13.5 - 4.05) / 2;
    assertEquals(ellipse, crown.shape().area().squareFeet(), 1e-6);
    assertEquals(
        6 * Math.sin(Math.toRadians(15)) * 1.75 * 2.5,
        rhubarb.get(0).shape().area().squareFeet(),
        1e-6);
  }

  /**
   * Rulers each 5 ft up to the first above 13.5 ft: 5, 10 and 15 ft; labels a 25th of 20 ft before
   * the bed. Keys stand at 65 % of the apple's 13.5 ft, and 0.25 m above rhubarb, which is lower
   * than a metre. The ground comes last.
   */
  @Test
  void section_hasRulersKeysAndGround() {
    yard.planted(yard.bed("b", 0, 0, 20, 4), "rhubarb", 4);
    yard.tree("apple", "apple (semi-dwarf)", 8, 2, 1);
    Panel.Figure figure = section(UnitSystem.US);
    List<Mark.Stroke> lines = strokes(figure);
    assertEquals(4, lines.size());
    assertEquals(10 * FT, lines.get(1).line().start().y().metres(), 1e-9);
    assertEquals(0, lines.get(1).line().start().x().metres(), 1e-9);
    assertEquals(20 * FT, lines.get(1).line().end().x().metres(), 1e-9);
    assertEquals("section-ground", lines.get(3).style().name());
    assertEquals(0, lines.get(3).line().end().y().metres(), 1e-9);
    List<Mark.Label> labels = labels(figure);
    assertEquals(3 + 6, labels.size());
    assertEquals("15 ft", labels.get(2).text().replace('\u00a0', ' '));
    assertEquals(-0.8 * FT, labels.get(2).at().x().metres(), 1e-9);
    assertEquals(15 * FT, labels.get(2).at().y().metres(), 1e-9);
    assertEquals("RH", labels.get(3).text());
    assertEquals(2.5 * FT + 0.25, labels.get(3).at().y().metres(), 1e-9);
    Mark.Label apple = labels.stream().filter(l -> l.text().equals("MD")).findFirst().orElseThrow();
    assertEquals(13.5 * 0.65 * FT, apple.at().y().metres(), 1e-9);
    assertEquals(8 * FT, apple.at().x().metres(), 1e-9);
    // In metres, rulers are 2 m apart: 2, 4 and 6 m, past 4.11 m.
    List<Mark.Label> metric = labels(section(UnitSystem.METRIC));
    assertEquals(3 + 6, metric.size());
    assertEquals("6 m", metric.get(2).text().replace('\u00a0', ' '));
  }

  /** Neighbours of a kind within 1.2 m: at 3.9 ft, 1.19 m, only the first of a row has its key. */
  @Test
  void keys_ofCloseNeighbours_areLeftOut() {
    yard.planted(yard.bed("b", 0, 0, 20, 4), "rhubarb", 3.9);
    yard.tree("apple", "apple (semi-dwarf)", 0.1, 2, 1);
    assertEquals(
        1, labels(section(UnitSystem.US)).stream().filter(l -> l.text().equals("RH")).count());
  }

  /**
   * Two rows 4 ft apart, at 2 and 6 ft across, and a tree at 4 ft: both are 2 ft away, half of what
   * parts them, and one is shown. With the tree at 3.74 ft the nearer row is, the other not.
   */
  @Test
  void ofRowsBesideTheCut_theNearestIsShown() {
    yard.planted(yard.bed("b", 0, 0, 20, 8), "rhubarb", 4);
    yard.tree("apple", "apple (semi-dwarf)", 7, 4, 1);
    assertEquals(5, regions(section(UnitSystem.US), "rhubarb").size());
    yard = PlantYard.us("");
    yard.planted(yard.bed("b", 0, 0, 20, 8), "rhubarb", 4);
    yard.planted(yard.bed("far", 40, 0, 20, 8), "rhubarb", 4);
    yard.tree("apple", "apple (semi-dwarf)", 7, 3.74, 1);
    assertEquals(5, regions(section(UnitSystem.US), "rhubarb").size());
  }

  @Test
  void withoutATreeInABed_thereIsNoSection() {
    yard.planted(yard.bed("b", 0, 0, 20, 4), "rhubarb", 4);
    yard.tree("apple", "apple (semi-dwarf)", 7, 9, 1);
    PlantPlaces places = places();
    assertTrue(GuildSection.of(places, PlantKeys.of(places), UnitSystem.US).isEmpty());
  }

  /** Thyme keeps its leaves: the hatch says so. Annuals have no first year apart. */
  @Test
  void evergreens_areHatched_annualsAreGrownAtOnce() {
    var bed = yard.bed("b", 0, 0, 20, 4);
    PlantingWords.plant(bed, "thyme", Length.feet(4), Length.feet(4), null, 0.5, null, null);
    PlantingWords.plant(bed, "tomato", Length.feet(4), Length.feet(4), null, 0.5, null, null);
    yard.tree("apple", "apple (semi-dwarf)", 8, 2, 1);
    Panel.Figure figure = section(UnitSystem.US);
    assertEquals("section-evergreen", regions(figure, "thyme").get(0).style().name());
    assertEquals("section-grown", regions(figure, "tomato").get(0).style().name());
    assertTrue(regions(figure, "tomato in the first year").isEmpty());
  }

  /**
   * Half of rhubarb's 3.5 ft, 30 % of a new crown of 12 ft, the whole of one that stands; a bed
   * that stands is grown too.
   */
  @Test
  void firstYear_showsWhatIsPlantedSmall_andWhatStandsGrown() {
    yard.planted(yard.bed("b", 0, 0, 20, 4), "rhubarb", 4);
    PlantingWords.plant(
        yard.bed("old", 0, 10, 20, 5),
        "rhubarb",
        Length.feet(5),
        Length.feet(5),
        null,
        null,
        true,
        null);
    yard.tree("apple", "apple (semi-dwarf)", 7, 20, 1);
    yard.tree("big", "European pear", 40, 20, 9);
    Panel.Figure figure = YoungView.of(yard.draft.freeze(), places());
    assertEquals(
        List.of("b", "old"),
        List.of(
            ((Mark.Region) figure.marks().get(0)).about(),
            ((Mark.Region) figure.marks().get(1)).about()));
    List<Double> sizes =
        figure.marks().stream()
            .filter(m -> m instanceof Mark.Symbol && m.toString().contains("year-1-plant"))
            .map(m -> Math.round(((Mark.Symbol) m).size().feet() * 1000) / 1000.0)
            .distinct()
            .toList();
    assertEquals(List.of(1.75, 3.5, 3.6, 12.0), sizes);
    assertEquals(
        5 + 4 + 2,
        figure.marks().stream()
            .filter(m -> m instanceof Mark.Symbol && m.toString().contains("year-1-plant"))
            .count());
    assertEquals("In the first and the fifth year", figure.title());
  }

  /**
   * Nothing is planted within a foot of a stem, nor within half its own spread: of chives, a foot
   * wide, at 2, 6 … 18 ft the one at 6 ft goes where a tree stands at 6.9 ft, of rhubarb, 3.5 ft
   * wide, also where it stands at 7.7 ft.
   */
  @ParameterizedTest
  @CsvSource({
    "chives, 6.9, 4",
    "chives, 7.1, 5",
    "chives, 7.4, 5",
    "rhubarb, 7.7, 4",
    "rhubarb, 7.8, 5"
  })
  void plants_keepOffStems(String kind, double treeFt, int expected) {
    yard.planted(yard.bed("b", 0, 0, 20, 4), kind, 4);
    yard.tree("apple", "apple (semi-dwarf)", treeFt, 2, 1);
    assertEquals(expected, places().plantings().get(0).at().size());
  }

  /** Two trees in beds: the second has a kind below it, the third as many, so the second is cut. */
  @Test
  void section_goesThroughTheBedThatShowsMost() {
    yard.planted(yard.bed("bare", 0, 0, 20, 4), "rhubarb", 4);
    yard.tree("A", "quince", 8, 20, 1);
    yard.planted(yard.bed("under one", 0, 18, 9, 4), "chives", 40);
    yard.tree("B", "quince", 8, 42, 1);
    yard.planted(yard.bed("under two", 0, 40, 20, 4), "rhubarb", 4);
    yard.tree("C", "quince", 8, 62, 1);
    yard.planted(yard.bed("under three", 0, 60, 20, 4), "rhubarb", 4);
    assertEquals("Section along under two", section(UnitSystem.US).title());
  }

  /** Peas a foot apart in 4 by 4 ft: four rows of four, each a line of 3 ft, and no disc. */
  @Test
  void whatIsSown_isDrawnAsItsRows_inTheFirstYear() {
    yard.planted(yard.bed("p", 0, 0, 4, 4), "pea", 1);
    Panel.Figure figure =
        YoungView.of(yard.draft.freeze(), yard.outcome().results().get(PlantPlaces.KEY));
    assertEquals(4, strokes(figure).size());
    for (Mark.Stroke row : strokes(figure)) {
      assertEquals(3, row.line().length().feet(), 1e-6);
      assertEquals("sown-row", row.style().name());
    }
    assertTrue(figure.marks().stream().noneMatch(m -> m instanceof Mark.Symbol));
    assertEquals("row to sow", figure.legend().get(2).text());
  }

  /** Two apples in one bed: both are cut, each with its stem; a third outside is not. */
  @Test
  void allTreesOfTheBed_areInItsSection() {
    yard.planted(yard.bed("b", 0, 0, 40, 4), "rhubarb", 4);
    yard.tree("one", "apple (semi-dwarf)", 10, 2, 1);
    yard.tree("two", "apple (semi-dwarf)", 30, 2, 1);
    yard.tree("out", "apple (semi-dwarf)", 20, 8, 1);
    Panel.Figure figure = section(UnitSystem.US);
    assertEquals(2, regions(figure, "apple (semi-dwarf)").size());
    assertEquals(2, regions(figure, "stem").size());
    assertEquals(
        20 * FT,
        regions(figure, "stem").get(1).shape().bounds().getMinX()
            - regions(figure, "stem").get(0).shape().bounds().getMinX(),
        1e-6);
  }
}
