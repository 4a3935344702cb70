package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.draw.TextMetrics;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/**
 * Where a lot of 20 m by 30 m and what goes with it stand on paper, by hand.
 *
 * <p>A3 lying has its frame from (20, 10) to (410, 287) and its content 4 mm inside: 382 mm by 269
 * mm from (24, 14), in four columns of (382 − 3 · 7) / 4 = 90.25 mm. Letters of the usual size are
 * 2 mm wide here, as in {@link TextBlocksTest}.
 */
class PlanPlacesTest {
  private static final double BODY = 2.4 / 0.714 * 1.32;
  private static final double HEAD = 2.5 / 0.714 * 1.32;
  private static final double TITLE = 3.5 / 0.714 * 1.32;
  private static final double NAME = 5 / 0.714 * 1.32;
  private static final TextMetrics METRICS =
      (text, em, bold) -> text.length() * em * 0.714 / 2.4 * 2 / 1.08;
  private static final Layer LOT = new Layer("t.lot", "Lot", Layer.Band.GROUND);
  private static final Layer BEDS = new Layer("t.beds", "Beds", Layer.Band.PLANTS);
  private static final PlanInfo INFO =
      new PlanInfo("p-1", "Plan", "Owner", "", "2026-03-01", "C", UnitSystem.METRIC, "€");

  private static Shape box(double x, double y, double width, double depth) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(width), Length.metres(depth));
  }

  private static final Shape GROUND = box(0, 0, 20, 30);
  private static final Mark LOT_MARK = new Mark.Region(GROUND, Palette.LOT, "lot");

  private static SheetRequest request(Paper paper, SheetPlan.Format format, Panel... panels) {
    SheetPlan sheet = new SheetPlan(3, "layout", "Layout", format, List.of(panels));
    return SheetRequest.of(sheet, paper, INFO)
        .withDrawing(Map.of(LOT, List.of(LOT_MARK)), List.of())
        .withSite(Optional.of(GROUND), Angle.ZERO);
  }

  private static SheetRequest onA3(Panel... panels) {
    return request(Paper.named("A3"), SheetPlan.Format.SHEET, panels);
  }

  private static ComposedSheet compose(SheetRequest request) {
    List<ComposedSheet> sheets = new SheetComposer(METRICS).compose(request);
    assertEquals(1, sheets.size());
    return sheets.get(0);
  }

  private static List<Ink> flat(List<Ink> inks) {
    List<Ink> all = new ArrayList<>();
    for (Ink ink : inks) {
      if (ink instanceof Ink.Group group) {
        all.addAll(flat(group.inks()));
      } else {
        all.add(ink);
      }
    }
    return all;
  }

  /** The rectangles about all paths of a style: left, top, right, bottom. */
  private static List<String> of(ComposedSheet sheet, String style) {
    return flat(sheet.inks()).stream()
        .filter(i -> i instanceof Ink.Path p && p.style().name().equals(style))
        .map(i -> around(((Ink.Path) i).tracks().get(0).points()))
        .toList();
  }

  private static String around(List<Xy> points) {
    return String.format(
        Locale.ROOT,
        "%.2f %.2f %.2f %.2f",
        points.stream().mapToDouble(Xy::x).min().orElseThrow(),
        points.stream().mapToDouble(Xy::y).min().orElseThrow(),
        points.stream().mapToDouble(Xy::x).max().orElseThrow(),
        points.stream().mapToDouble(Xy::y).max().orElseThrow());
  }

  private static String at(ComposedSheet sheet, String text) {
    Ink.Text found =
        flat(sheet.inks()).stream()
            .filter(i -> i instanceof Ink.Text t && t.content().equals(text))
            .map(i -> (Ink.Text) i)
            .findFirst()
            .orElseThrow(() -> new AssertionError(text));
    return place(found.at().x(), found.at().y());
  }

  private static String place(double x, double y) {
    return String.format(Locale.ROOT, "%.2f %.2f", x, y);
  }

  /** 1:200 draws 100 by 150 mm, in the middle of three columns (284.75 mm) and 269 − 18 mm. */
  @Test
  void plan_standsInTheMiddleOfAllColumnsButOne() {
    ComposedSheet sheet = compose(onA3(Panel.SitePlan.shown()));
    assertEquals(List.of("116.38 64.50 216.38 214.50"), of(sheet, "lot"));
    // Half a gutter left of the fourth column, which begins 3 · 97.25 further right.
    assertEquals(List.of("312.25 10.00 312.25 287.00"), of(sheet, "divider"));
    // The strip below begins at 14 + 251; the name 22 mm in, 3.2 mm down.
    assertEquals(place(46, 265 + 3.2 + 3.5 / 0.714), at(sheet, "Layout"));
    assertEquals(place(46, 265 + 3.2 + TITLE + 2.5 / 0.714), at(sheet, "Scale 1:200"));
    // The circle of the arrow is 9.5 mm in.
    assertEquals(place(33.5, 274 - 6.9 + 1.25), at(sheet, "N"));
    // "Scale 1:200" takes 11 · 2 · 2.5 / 2.4 = 22.9 mm; 12 mm further the bar: 5 m are 25 mm.
    assertEquals(place(46 + 11 * 2 * 2.5 / 2.4 + 12, 265 + 4.4 + 2.4 / 0.714), at(sheet, "0"));
    assertEquals(
        place(46 + 11 * 2 * 2.5 / 2.4 + 12 + 100, 265 + 4.4 + 2.4 / 0.714), at(sheet, "20 m"));
  }

  /**
   * A picture of the same lot fills its sheet, standing, over the title block: at 1:110 it is 20000
   * / 110 = 181.82 mm by 272.73 mm and 9 mm from the sides of its room, whose top is at 14 mm. A
   * page to carry keeps the usual 1:200.
   */
  @Test
  void picture_standsAtTheLargestRoundScale_notOnAPageToCarry() {
    Panel picture = Panel.SitePlan.only(Set.of("t.lot"));
    ComposedSheet sheet = compose(onA3(picture));
    at(sheet, "Scale 1:110");
    String[] box = of(sheet, "lot").get(0).split(" ");
    assertEquals(181.82, Double.parseDouble(box[2]) - Double.parseDouble(box[0]), 0.011);
    assertEquals(272.73, Double.parseDouble(box[3]) - Double.parseDouble(box[1]), 0.011);
    assertEquals(14 + 9, Double.parseDouble(box[1]), 0.011);
    at(compose(request(Paper.named("A4"), SheetPlan.Format.BOOKLET, picture)), "Scale 1:200");
  }

  @Test
  void plan_hasTheScaleThatIsAskedFor() {
    ComposedSheet sheet =
        compose(onA3(Panel.SitePlan.shown()).withScale(Optional.of(Scale.metric(250))));
    assertEquals(List.of("126.38 79.50 206.38 199.50"), of(sheet, "lot"), "80 by 120 mm");
    PlanException refused =
        assertThrows(
            PlanException.class,
            () -> compose(onA3(Panel.SitePlan.shown()).withScale(Optional.of(Scale.metric(100)))));
    // 200 and 300 mm with 9 mm at each side; three columns by 269 − 18 mm.
    assertTrue(
        refused
            .getMessage()
            .contains(
                "the site plan at 1:100 needs 218 by 318 mm of paper, A3 has 285 by 251 mm beside"
                    + " its title block; use a larger sheet, or the scale 1:200"),
        refused.getMessage());
  }

  /** The legend in the column beside, the notes 7 mm under it. */
  @Test
  void blocks_standInTheColumnBeside() {
    SheetRequest request =
        onA3(Panel.SitePlan.shown(), new Panel.Notes("Notes", List.of("Dig deep")))
            .withDrawing(
                Map.of(LOT, List.of(LOT_MARK)), List.of(LegendEntry.area("lot", Palette.LOT)));
    ComposedSheet sheet = compose(request);
    double left = 24 + 3 * 97.25;
    double base = 2.5 / 0.714;
    assertEquals(place(left, 14.5 + base), at(sheet, "Legend"));
    double legend = 0.5 + HEAD + 1.2 + BODY + 1.4;
    assertEquals(place(left, 14 + legend + 7 + 0.5 + base), at(sheet, "Notes"));
    assertEquals(
        place(left, 14 + legend + 7 + 0.5 + HEAD + 1.2 + 2.4 / 0.714), at(sheet, "Dig deep"));
    assertEquals(2, of(sheet, "lot").size(), "the lot and its swatch");
  }

  /**
   * The block of 90.25 + 4 + 3.5 mm in the lower right corner: name, title and four rows of a
   * caption over a value, each 1.2 + 4.437 + 4.622 + 1.2 mm.
   */
  @Test
  void titleBlock_standsInTheCornerWithItsRows() {
    ComposedSheet sheet = compose(onA3(Panel.SitePlan.shown()));
    double row = BODY + HEAD + 2.4;
    double height = 2 + NAME + TITLE + 1.5 + 4 * row;
    double top = 287 - height;
    double left = 410 - 97.75;
    assertEquals(
        String.format(Locale.ROOT, "%.2f %.2f 410.00 287.00", left, top),
        of(sheet, "title-block").get(0));
    assertEquals(place(left + 3, top + 2 + 5 / 0.714), at(sheet, "Plan"));
    double first = 287 - 4 * row;
    double caption = 1.2 + 2.4 / 0.714;
    double value = 1.2 + BODY + 2.5 / 0.714;
    assertEquals(place(left + 3, first + caption), at(sheet, "Client"));
    assertEquals(place(left + 3, first + value), at(sheet, "Owner"));
    assertEquals(place(left + 97.75 / 2 + 2, first + caption), at(sheet, "Drawn by"));
    assertEquals(place(left + 97.75 / 2 + 2, first + value), at(sheet, "–"), "nobody");
    assertEquals(place(left + 3, first + row + value), at(sheet, "p-1"));
    assertEquals(place(left + 97.75 / 2 + 2, first + row + value), at(sheet, "A3"));
    assertEquals(place(left + 3, first + 2 * row + value), at(sheet, "1 Mar 2026"));
    assertEquals(place(left + 97.75 / 3 + 2, first + 2 * row + value), at(sheet, "C"));
    assertEquals(place(left + 2 * 97.75 / 3 + 2, first + 2 * row + value), at(sheet, "Metres"));
    assertEquals(place(left + 3, first + 3 * row + value), at(sheet, "1:200"));
    assertEquals(place(left + 2 * 97.75 / 3 + 2, first + 3 * row + caption), at(sheet, "Sheet"));
  }

  /**
   * A4 standing: content 172 mm wide from (24, 14), a strip of 2 lines of 2 mm letters at the foot.
   * At 1:200 the lot and 6.5 mm at its sides are 163 mm high and stand over both columns.
   */
  @Test
  void pocketPage_hasTheDrawingOverItsColumns_andAStripAtItsFoot() {
    ComposedSheet sheet =
        compose(
            request(Paper.named("A4").portrait(), SheetPlan.Format.PAGE, Panel.SitePlan.shown()));
    assertEquals(List.of("60.00 20.50 160.00 170.50"), of(sheet, "lot"));
    assertEquals(List.of(), of(sheet, "divider"));
    double pitch = 2 / 0.714 * 1.32;
    double top = 287 - 2 * pitch - 2.4;
    assertEquals(
        String.format(Locale.ROOT, "20.00 %.2f 200.00 287.00", top),
        of(sheet, "title-block").get(0));
    double base = 2 / 0.714;
    assertEquals(place(23, top + 1.2 + base), at(sheet, "Plan"));
    // Four fields of 16 % of 180 mm: 28.8 mm each, from 200 − 115.2.
    assertEquals(place(84.8 + 2, top + 1.2 + base), at(sheet, "Date"));
    assertEquals(place(84.8 + 2, top + 1.2 + pitch + base), at(sheet, "1 Mar 2026"));
    assertEquals(place(84.8 + 28.8 + 2, top + 1.2 + pitch + base), at(sheet, "A4"));
    assertEquals(place(84.8 + 2 * 28.8 + 2, top + 1.2 + pitch + base), at(sheet, "1:200"));
    assertEquals(place(84.8 + 3 * 28.8 + 2, top + 1.2 + base), at(sheet, "Sheet"));
  }

  /**
   * A bed of 4 m by 6 m from (2, 3) at 1:50 takes 80 by 120 mm, with 5.5 mm at each side two
   * columns; the plan has the other two (187.5 mm). On the plan 5.2 by 7.2 m are framed.
   */
  @Test
  void enlargedPart_standsBesideThePlan_andIsFramedOnIt() {
    Mark bed = new Mark.Region(box(2, 3, 4, 6), Palette.BED, "bed");
    Mark name = new Mark.Label(Point.metres(4, 6), "Kale", 2, false, 1, Mark.Anchor.CENTRE);
    Map<Layer, List<Mark>> layers = Map.of(LOT, List.of(LOT_MARK), BEDS, List.of(bed, name));
    SheetRequest request =
        onA3(Panel.SitePlan.shown(), new Panel.Enlarged("Kale bed", java.util.Set.of("t.beds")))
            .withDrawing(layers, List.of())
            .withPart(Map.of(BEDS, List.of(bed, name)));
    ComposedSheet sheet = compose(request);
    assertEquals(List.of("67.75 64.50 167.75 214.50"), of(sheet, "lot"));
    // On the plan 5 mm a metre: 10 to 30 mm right, 21 to 27 m up.
    assertEquals(
        List.of("77.75 169.50 97.75 199.50", "272.25 19.50 352.25 139.50"), of(sheet, "bed"));
    List<String> frame = of(sheet, "part-frame");
    assertEquals(
        List.of(
            "74.75 202.50 100.75 202.50",
            "100.75 166.50 100.75 202.50",
            "74.75 166.50 100.75 166.50",
            "74.75 166.50 74.75 202.50"),
        frame);
    assertEquals(
        1,
        flat(sheet.inks()).stream()
            .filter(i -> i instanceof Ink.Text t && t.content().equals("Kale"))
            .count(),
        "its name stands on the enlarged part alone");
    assertEquals(place(218.5 + 22, 145 + 3.2 + TITLE + 2.5 / 0.714), at(sheet, "Scale 1:50"));
  }

  /** What is nearly the whole lot, 80 % of its area, is not framed. */
  @Test
  void enlargedPart_ofNearlyAll_isNotFramed() {
    for (double depth : List.of(23.9, 24.1)) {
      SheetRequest request =
          onA3(
              Panel.SitePlan.shown(),
              new Panel.Enlarged("P", java.util.Set.of(), Optional.of(box(0, 0, 20, depth))));
      assertEquals(depth < 24, PartWindow.framed(request).isPresent(), "20 × 24 = 0.8 · 600");
    }
    SheetRequest nothing =
        onA3(Panel.SitePlan.shown(), new Panel.Enlarged("P", java.util.Set.of("t.none")));
    assertTrue(PartWindow.of(nothing).isEmpty(), "its layers show nothing");
    assertEquals(nothing.layers(), PartWindow.onPlan(nothing));
  }

  /**
   * In 90 mm no bar has room beside the words: it stands below them, 1 m to a part of 10 mm; the
   * words begin 1.2 mm below the top of the strip.
   */
  @Test
  void viewTitle_narrow_hasItsBarBelowTheWords() {
    Type type = new Type(METRICS);
    List<Ink> inks =
        ViewTitle.at(
            new Box(100, 50, 90, 18), "Site", Scale.metric(100), UnitSystem.METRIC, 0, type);
    double bar = 51.2 + TITLE + HEAD + 1 + 2.4 / 0.714;
    assertEquals(place(123, bar), at(inks, "0"));
    assertEquals(place(163, bar), at(inks, "4 m"));
    assertEquals(place(122, 51.2 + TITLE + 2.5 / 0.714), at(inks, "Scale 1:100"));
  }

  private static String at(List<Ink> inks, String text) {
    return flat(inks).stream()
        .filter(i -> i instanceof Ink.Text t && t.content().equals(text))
        .map(i -> ((Ink.Text) i).at())
        .map(p -> place(p.x(), p.y()))
        .findFirst()
        .orElseThrow(() -> new AssertionError(text));
  }

  private static double height(String title, double width) {
    Type type = new Type(METRICS);
    List<Ink> inks =
        ViewTitle.at(new Box(0, 0, width, 18), title, Scale.engineer(10), UnitSystem.US, 0, type);
    return flat(inks).stream()
        .filter(i -> i instanceof Ink.Text t && t.content().startsWith("aa"))
        .mapToDouble(i -> ((Ink.Text) i).heightMm())
        .findFirst()
        .orElseThrow();
  }

  /**
   * Of 240 mm a large title may take a third, 80 mm: 27 letters of 2.917 mm; one of 2.083 mm 132
   * mm: 63 letters; what is longer is set as small as the text.
   */
  @Test
  void viewTitle_long_isSetSmaller() {
    assertEquals(3.5, height("a".repeat(27), 240));
    assertEquals(2.5, height("a".repeat(28), 240));
    assertEquals(2.5, height("a".repeat(63), 240));
    assertEquals(2.4, height("a".repeat(64), 240));
    List<Ink> inks =
        ViewTitle.at(
            new Box(0, 0, 240, 18),
            "Site",
            Scale.engineer(10),
            UnitSystem.US,
            0,
            new Type(METRICS));
    assertTrue(!at(inks, "Scale 1\" = 10' (1:120)").isEmpty());
  }

  /** 24 mm of room are enough for a bar: 94 − 22 − 22.9 for the words − 2 · 12 = 25.1 mm. */
  @Test
  void viewTitle_withLittleRoom_hasItsBarBesideTheWords() {
    Type type = new Type(METRICS);
    double words = 11 * 2 * 2.5 / 2.4;
    for (double width : List.of(92.7, 94.0)) {
      List<Ink> inks =
          ViewTitle.at(
              new Box(100, 50, width, 18), "Site", Scale.metric(100), UnitSystem.METRIC, 0, type);
      String beside = place(122 + words + 12, 54.4 + 2.4 / 0.714);
      assertEquals(width > 93, at(inks, "0").equals(beside), width + " mm");
    }
  }

  /** What is read page by page has the drawing over all columns and goes on below it. */
  @Test
  void booklet_goesOnUnderTheDrawing() {
    ComposedSheet sheet =
        compose(
            request(
                Paper.named("A4").portrait(),
                SheetPlan.Format.BOOKLET,
                Panel.SitePlan.shown(),
                new Panel.Notes("Notes", List.of("Dig deep"))));
    assertEquals(List.of("60.00 20.50 160.00 170.50"), of(sheet, "lot"));
    // 163 mm of drawing, 18 of its title and a gap of 7 below 14: 202 mm.
    assertEquals(place(24, 202.5 + 2.5 / 0.714), at(sheet, "Notes"));
    assertEquals(place(24, 202.5 + HEAD + 1.2 + 2 / 0.714), at(sheet, "Dig deep"));
  }

  /**
   * Ten notes and a table of two columns' width do not all fit on A3 at 1:200. One column beside
   * the plan would hold more blocks, the notes; two hold the table, which covers more paper than
   * the notes that wait for the next sheet.
   */
  @Test
  void plan_whereAFurtherSheetIsNeeded_leavesRoomForTheLargestBlocks() {
    Table.Builder table = Table.titled("times", "Timetable");
    for (int c = 0; c < 7; c++) {
      table.column(Column.text("c" + c, "Heading"));
    }
    for (int r = 0; r < 26; r++) {
      int row = r;
      table.row(
          IntStream.range(0, 7).mapToObj(c -> Cell.text("r" + row + "c" + c)).toArray(Cell[]::new));
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.shown());
    panels.add(new Panel.TableBlock(table.build()));
    for (int n = 0; n < 10; n++) {
      panels.add(new Panel.Notes("Notes " + n, List.of("A", "B", "C", "D", "E", "F", "G", "H")));
    }
    SheetRequest request =
        onA3(panels.toArray(Panel[]::new)).withScale(Optional.of(Scale.metric(200)));
    List<ComposedSheet> sheets = new SheetComposer(METRICS).compose(request);
    assertEquals(2, sheets.size());
    assertTrue(texts(sheets.get(0)).contains("Timetable"));
    assertTrue(texts(sheets.get(1)).contains("Notes 9"));
  }

  private static List<String> texts(ComposedSheet sheet) {
    return flat(sheet.inks()).stream()
        .filter(Ink.Text.class::isInstance)
        .map(i -> ((Ink.Text) i).content())
        .toList();
  }
}
