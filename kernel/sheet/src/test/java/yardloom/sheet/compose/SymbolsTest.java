package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Style;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Xy;

/** Symbols about (10, 20) mm, bars and arrows, by hand in paper millimetres; down is positive. */
class SymbolsTest {
  private static final Xy AT = new Xy(10, 20);
  private final Style green = Style.filled("plant", "#dfe9d2").outlined("#3f6212", 0.35);

  private List<Ink> draw(SymbolForm form, double radius, double turn) {
    return Symbols.draw(form, AT, radius, turn, green);
  }

  /** One line for each track or circle. */
  private static List<String> shown(List<Ink> inks) {
    return inks.stream()
        .flatMap(
            ink ->
                ink instanceof Ink.Circle c
                    ? java.util.stream.Stream.of(at(c.centre()) + " r " + number(c.radiusMm()))
                    : ((Ink.Path) ink).tracks().stream().map(SymbolsTest::shown))
        .toList();
  }

  private static String shown(Ink.Track track) {
    return track.points().stream().map(SymbolsTest::at).collect(Collectors.joining(" "))
        + (track.closed() ? " closed" : "");
  }

  private static String at(Xy p) {
    return number(p.x()) + "," + number(p.y());
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", Math.round(value * 100) / 100.0 + 0.0);
  }

  /** A fixed symbol is 3 mm across, whatever the scale. */
  @Test
  void fixedSymbols_keepTheirSize() {
    assertEquals(List.of("10.00,20.00 r 0.75"), shown(draw(SymbolForm.DOT, 40, 0)));
    assertEquals(
        List.of("8.50,18.50 11.50,18.50 11.50,21.50 8.50,21.50 closed"),
        shown(draw(SymbolForm.SQUARE, 40, 0)));
    assertEquals(
        List.of("10.00,18.50 11.50,21.50 8.50,21.50 closed"),
        shown(draw(SymbolForm.TRIANGLE, 40, 0)));
    assertEquals(
        List.of("11.50,20.00 8.50,21.50 8.50,18.50 closed"),
        shown(draw(SymbolForm.TRIANGLE, 40, 90)),
        "a quarter turn clockwise points right");
    assertEquals(
        List.of("8.50,20.00 11.50,20.00", "10.00,18.50 10.00,21.50"),
        shown(draw(SymbolForm.CROSS, 40, 0)));
    assertEquals(
        List.of("10.00,20.00 r 1.50", "8.50,20.00 7.00,20.00", "7.00,19.30 7.00,20.70"),
        shown(draw(SymbolForm.TAP, 40, 0)));
    assertEquals(
        List.of("10.00,23.00 10.00,20.00", "10.00,18.50 10.75,20.45 9.25,20.45 closed"),
        shown(draw(SymbolForm.ARROW, 40, 0)));
    assertEquals(List.of("10.00,20.00 r 4.00"), shown(draw(SymbolForm.DISC, 4, 0)));
  }

  @Test
  void linesOfSymbols_haveTheOutlineOrElseTheFill() {
    Ink.Path cross = (Ink.Path) draw(SymbolForm.CROSS, 1, 0).get(0);
    assertEquals(Style.line("plant", "#3f6212", 0.35), cross.style());
    Style bare = Style.filled("plain", "#1d2722");
    Ink.Path plain = (Ink.Path) Symbols.draw(SymbolForm.CROSS, AT, 1, 0, bare).get(0);
    assertEquals(Style.line("plain", "#1d2722", 0.25), plain.style());
  }

  /**
   * Lobes of 3 mm: 2 π 5 / 3 = 10, of six points; they bulge from 4.4 mm (12 % of the radius less)
   * to 5 mm. Small crowns have eight, large ones thirty-six and lobes 1.2 mm deep.
   */
  @ParameterizedTest
  @CsvSource({"5, 60, 4.4, 0.8", "1, 48, 0.88, 0.5", "30, 216, 28.8, 0.8"})
  void deciduousCrown_isScalloped(double radius, int points, double least, double cross) {
    List<Ink> inks = draw(SymbolForm.CROWN_DECIDUOUS, radius, 0);
    List<Xy> edge = ((Ink.Path) inks.get(0)).tracks().get(0).points();
    assertEquals(points, edge.size());
    assertEquals(least, edge.get(0).distance(AT), 1e-9);
    assertEquals(radius, edge.get(3).distance(AT), 1e-9);
    // It begins at the top and goes round clockwise.
    assertEquals(20 - least, edge.get(0).y(), 1e-9);
    assertEquals(true, edge.get(3).x() > 10);
    List<Ink.Track> inner = ((Ink.Path) inks.get(1)).tracks();
    assertEquals(2, inner.size(), "the stem");
    assertEquals(10 - cross, inner.get(0).points().get(0).x(), 1e-9);
    assertEquals(20 + cross, inner.get(1).points().get(1).y(), 1e-9);
  }

  /** 2 π 10 / 3 = 21 teeth between 8.8 and 10 mm; eight spokes from half to four fifths. */
  @Test
  void evergreenCrown_hasTeethAndSpokes() {
    List<Ink> inks = draw(SymbolForm.CROWN_EVERGREEN, 10, 0);
    List<Xy> edge = ((Ink.Path) inks.get(0)).tracks().get(0).points();
    assertEquals(42, edge.size());
    assertEquals(8.8, edge.get(0).distance(AT), 1e-9);
    assertEquals(10, edge.get(1).distance(AT), 1e-9);
    List<Ink.Track> inner = ((Ink.Path) inks.get(1)).tracks();
    assertEquals(2 + 8, inner.size());
    Ink.Track spoke = inner.get(2);
    assertEquals(5, spoke.points().get(0).distance(AT), 1e-9);
    assertEquals(8, spoke.points().get(1).distance(AT), 1e-9);
    // The first stands half of an eighth turn, 22.5°, right of the top.
    assertEquals(10 + 5 * Math.sin(Math.PI / 8), spoke.points().get(0).x(), 1e-9);
    Ink.Track next = inner.get(3);
    assertEquals(10 + 5 * Math.sin(3 * Math.PI / 8), next.points().get(0).x(), 1e-9);
    // On a crown of 4 mm the teeth are 16 % deep: 0.64 mm.
    List<Xy> small =
        ((Ink.Path) draw(SymbolForm.CROWN_EVERGREEN, 4, 0).get(0)).tracks().get(0).points();
    assertEquals(4 - 0.64, small.get(0).distance(AT), 1e-9);
  }

  private static List<String> sample(Style style) {
    return shown(Symbols.swatch(LegendEntry.line("l", style), new Box(2, 5, 9, 4)));
  }

  /** In 9 mm from 2 to 11: dashes of 3 with gaps of 1; a long dash begins within itself. */
  @Test
  void sampleOfALine_showsItsGaps() {
    Style line = Style.line("edge", "#1d2722", 0.35);
    assertEquals(List.of("2.00,7.00 11.00,7.00"), sample(line));
    assertEquals(
        List.of("2.00,7.00 5.00,7.00", "6.00,7.00 9.00,7.00", "10.00,7.00 11.00,7.00"),
        sample(line.dashed("3 1")));
    // 12 and 8.5 more are longer than 9: half of what is left of 9 − 8.5 stands before them.
    assertEquals(
        List.of(
            "2.00,7.00 2.25,7.00",
            "3.75,7.00 5.75,7.00",
            "7.25,7.00 9.25,7.00",
            "10.75,7.00 11.00,7.00"),
        sample(line.dashed("12 1.5 2 1.5 2 1.5")));
    Ink.Path dashed =
        (Ink.Path)
            Symbols.swatch(LegendEntry.line("l", line.dashed("3 1")), new Box(2, 5, 9, 4)).get(0);
    assertEquals(Style.line("edge-sample", "#1d2722", 0.35), dashed.style());
  }

  @Test
  void swatch_isABoxASymbolOrASymbolInARing() {
    Box box = new Box(2, 5, 9, 4);
    assertEquals(
        List.of("2.00,5.00 11.00,5.00 11.00,9.00 2.00,9.00 closed"),
        shown(Symbols.swatch(LegendEntry.area("a", green), box)));
    assertEquals(
        List.of("6.50,7.00 r 1.80"),
        shown(Symbols.swatch(LegendEntry.symbol("s", SymbolForm.DISC, green), box)));
    assertEquals(
        List.of("6.50,7.00 r 1.80", "6.50,7.00 r 0.75"),
        shown(Symbols.swatch(LegendEntry.ringed("s", SymbolForm.DOT, green, green), box)));
  }

  /**
   * Parts of at most 26 mm and a quarter of the room: at 1:100 a metre is 10 mm, so 2 m in 100 mm;
   * at 1 in = 10 ft ten feet are 25.4 mm, five 12.7 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "100, METRIC, 200, 2, 20",
    "100, METRIC, 79, 1, 10",
    "250, METRIC, 200, 5, 20",
    "120, US, 200, 10, 25.4",
    "120, US, 100, 5, 12.7",
    "48, US, 60, 2, 12.7",
    "20, METRIC, 30, 0.2, 10"
  })
  void scaleBar_hasPartsOfARoundLength(
      double denominator, UnitSystem units, double room, double step, double partMm) {
    ScaleBar bar = new ScaleBar(Scale.of(denominator, units), units, room);
    assertEquals(step, bar.step());
    assertEquals(partMm, bar.partMm(), 1e-9);
    assertEquals(4 * partMm, bar.widthMm(), 1e-9);
  }

  private static List<String> figures(ScaleBar bar) {
    return ((Ink.Group) bar.at(3, 8).get(0))
        .inks().stream()
            .filter(i -> i instanceof Ink.Text)
            .map(i -> (Ink.Text) i)
            .map(t -> t.content() + " at " + number(t.at().x()))
            .toList();
  }

  @Test
  void scaleBar_isNumberedAtItsEndsAndMiddle_whereThereIsRoom() {
    ScaleBar bar = new ScaleBar(Scale.metric(100), UnitSystem.METRIC, 200);
    assertEquals(List.of("0 at 3.00", "4 at 43.00", "8 m at 83.00"), figures(bar));
    List<Ink> inks = ((Ink.Group) bar.at(3, 8).get(0)).inks();
    List<Ink.Path> parts =
        inks.stream().filter(i -> i instanceof Ink.Path).map(i -> (Ink.Path) i).toList();
    assertEquals(
        List.of("bar-dark", "bar-light", "bar-dark", "bar-light"),
        parts.stream().map(p -> p.style().name()).toList());
    assertEquals(23, parts.get(1).tracks().get(0).points().get(0).x(), 1e-9, "3 + 20");
    assertEquals(
        1.8,
        parts.get(0).tracks().get(0).points().get(2).y()
            - parts.get(0).tracks().get(0).points().get(0).y(),
        1e-9);
    // Two parts of 4 mm hold no figure: 0.2 m at 1:50.
    ScaleBar small = new ScaleBar(Scale.metric(50), UnitSystem.METRIC, 19);
    assertEquals(List.of("0 at 3.00", "0.8 m at 19.00"), figures(small));
  }

  /** Radius 4.6 mm: the tip there, the tail at 0.55 of it, the feet at 0.8 and 0.45 aside. */
  @Test
  void northArrow_pointsNorth() {
    List<Ink> up = ((Ink.Group) ViewTitle.north(AT, 0)).inks();
    assertEquals(
        List.of(
            "10.00,20.00 r 4.60",
            "10.00,15.40 7.93,23.68 10.00,22.53 closed",
            "10.00,15.40 12.07,23.68 10.00,22.53 closed"),
        shown(up.subList(0, 3)));
    Ink.Text letter = (Ink.Text) up.get(3);
    assertEquals("10.00,14.35", at(letter.at()), "6.9 mm up, half a letter of 2.5 mm down");
    // East: a quarter turn clockwise.
    List<Ink> right = ((Ink.Group) ViewTitle.north(AT, 90)).inks();
    assertEquals(
        List.of(
            "14.60,20.00 6.32,17.93 7.47,20.00 closed", "14.60,20.00 6.32,22.07 7.47,20.00 closed"),
        shown(right.subList(1, 3)));
    assertEquals("16.90,21.25", at(((Ink.Text) right.get(3)).at()));
  }
}
