package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.ColumnGrid;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/**
 * How columns of a sheet are filled, by hand on A3: four columns of 90.25 mm from (24, 14), 97.25
 * mm apart, to 283 mm; the last ends 7 mm above the title block. Letters are 2 mm wide, as in
 * {@link TextBlocksTest}.
 */
class FillingTest {
  private static final double HEAD = 2.5 / 0.714 * 1.32;
  private static final Type TYPE =
      new Type((text, em, bold) -> text.length() * em * 0.714 / 2.4 * 2 / 1.08);
  private static final ColumnGrid GRID = ColumnGrid.of(Paper.named("A3"));

  /** A block that is a dot in the upper left corner of its room, as large as the room is wide. */
  private record Dot(double minWidthMm, double heightMm, boolean floats) implements Block {
    @Override
    public Optional<Placed> place(Box room, boolean partly) {
      List<Ink> dot =
          List.of(new Ink.Circle(new Xy(room.x(), room.y()), room.width(), Palette.BED));
      if (heightMm <= room.height()) {
        return Optional.of(new Placed(dot, heightMm, Optional.empty()));
      }
      return partly
          ? Optional.of(
              new Placed(
                  dot,
                  room.height(),
                  Optional.of(new Dot(minWidthMm, heightMm - room.height(), floats))))
          : Optional.empty();
    }
  }

  private static Dot dot(double width, double height) {
    return new Dot(width, height, false);
  }

  private static List<String> shown(List<Ink> inks) {
    return inks.stream()
        .map(i -> (Ink.Circle) i)
        .map(
            c ->
                String.format(
                    Locale.ROOT, "%.2f %.2f %.2f", c.centre().x(), c.centre().y(), c.radiusMm()))
        .toList();
  }

  @Test
  void blocks_goWhereTheyStandHighest_leftmostOfEquals() {
    Page page = new Page(GRID, 60);
    page.reserve(1, 100);
    assertTrue(page.place(dot(80, 50)));
    assertTrue(page.place(dot(90.25, 30)));
    assertTrue(page.place(dot(80, 20)));
    // Two columns: the second and third are free from 71 mm, the third and fourth from 51 mm.
    assertTrue(page.place(dot(90.3, 40)));
    assertTrue(page.place(dot(20, 10)));
    assertEquals(
        List.of(
            "121.25 14.00 90.25",
            "218.50 14.00 90.25",
            "315.75 14.00 90.25",
            "218.50 51.00 187.50",
            "121.25 71.00 90.25"),
        shown(page.inks()));
    assertTrue(!page.place(dot(80, 270)), "no column is as high");
  }

  /** The last column ends at 287 − 60 − 7 = 220 mm, the others at 283 mm. */
  @Test
  void room_isThatOfTheTallestPlace() {
    Page page = new Page(GRID, 60);
    assertEquals(269, page.room(80), 1e-9);
    assertEquals(206, page.room(382), 1e-9);
    page.reserve(3, 83);
    assertEquals(206, page.room(80), 1e-9, "in the fourth column");
    assertEquals(283 - 83, page.room(100), 1e-9, "two of the first three reach lower");
  }

  @Test
  void part_ofABlock_takesTheTallestPlace() {
    Page page = new Page(GRID, 60);
    page.reserve(3, 100);
    Block.Placed placed = page.placePart(dot(80, 300)).orElseThrow();
    assertEquals(List.of("315.75 14.00 90.25"), shown(page.inks()));
    assertEquals(206, placed.heightMm(), 1e-9);
    assertEquals(94, ((Dot) placed.rest().orElseThrow()).heightMm(), 1e-9);
    assertEquals(183, page.placePart(dot(80, 300)).orElseThrow().heightMm(), 1e-9, "283 − 100");
    assertEquals("24.00 100.00 90.25", shown(page.inks()).get(1), "the leftmost of equals");
    // Over two columns the first pair is taken up now; the second and third are free.
    assertEquals(183, page.placePart(dot(150, 300)).orElseThrow().heightMm(), 1e-9);
    assertEquals("121.25 100.00 187.50", shown(page.inks()).get(2));
  }

  @Test
  void flow_goesDownTheColumns_breaksAndFloats() {
    Page page = new Page(GRID, 60);
    Dot floating = new Dot(80, 250, true);
    List<Block> left =
        page.flow(
            List.of(dot(80, 200), floating, dot(80, 100), dot(80, 60), dot(80, 230), dot(80, 400)));
    // 200, then 62 mm of the 100 (14 + 207 = 221 to 283), 38 in the second column with the 60 (to
    // 14 + 45 + 67 = 126), then 157 of the 230, 73 in the third, 189 of the 400 under it, 206
    // beside.
    assertEquals(
        List.of(
            "24.00 14.00 90.25",
            "24.00 221.00 90.25",
            "121.25 14.00 90.25",
            "121.25 59.00 90.25",
            "121.25 126.00 90.25",
            "218.50 14.00 90.25",
            "218.50 94.00 90.25",
            "315.75 14.00 90.25"),
        shown(page.inks()));
    assertEquals(2, left.size());
    assertEquals(floating, left.get(0), "it waits for the next page");
    // 400 − (283 − 94) − 206 = 5.
    assertEquals(5, ((Dot) left.get(1)).heightMm(), 1e-9);
  }

  @Test
  void flow_leavesRoomOfLessThanSixteenMillimetres() {
    Page page = new Page(GRID, 60);
    // 283 − 14 − 247 − 7 = 15 mm are left of the first column, 17 mm of the second.
    page.flow(List.of(dot(80, 247), dot(80, 245), dot(80, 100)));
    assertEquals(
        List.of(
            "24.00 14.00 90.25", "121.25 14.00 90.25", "121.25 266.00 90.25", "218.50 14.00 90.25"),
        shown(page.inks()));
  }

  private static FigureBlock figure(String title, double minWidthMm) {
    Mark mark =
        new Mark.Region(
            Shape.rectangle(Point.metres(0, 0), Length.metres(10), Length.metres(10)),
            Palette.BED,
            "square");
    Panel.Figure figure = new Panel.Figure(title, List.of(mark), List.of(), minWidthMm, 0);
    return new FigureBlock(figure, TYPE, UnitSystem.METRIC, 382, 269);
  }

  private static List<FigureBlock> figures(int count) {
    List<FigureBlock> figures = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      figures.add(figure("F" + i, 60));
    }
    return figures;
  }

  /**
   * A square of 10 m under its title (0.5 + 4.622 + 1.5 mm), 4 mm clear of its cell: 72 % of 269 mm
   * are 193.68 mm. Four in a row are 90.25 mm wide and so 8.225 mm a metre; two rows of two could
   * be (193.68 − 7) / 2 − 6.622 − 8 = 78.7 mm high only.
   */
  @Test
  void figures_fourAlike_standInOneRow() {
    FigureRows rows = FigureRows.of(figures(4), 60, 382, 269);
    assertEquals(4, rows.across());
    assertEquals(90.25, rows.widthMm(), 1e-9);
    assertEquals(382, rows.minWidthMm(), 1e-9);
    Block.Placed placed = rows.place(new Box(24, 14, 382, 269), false).orElseThrow();
    assertEquals(2 + HEAD + 90.25, placed.heightMm(), 1e-9);
    assertEquals(List.of("24.00", "121.25", "218.50", "315.75"), lefts(placed));
  }

  private static List<String> lefts(Block.Placed placed) {
    return placed.inks().stream()
        .map(i -> ((Ink.Group) i).inks())
        .flatMap(List::stream)
        .filter(i -> i instanceof Ink.Text)
        .map(i -> String.format(Locale.ROOT, "%.2f", ((Ink.Text) i).at().x()))
        .toList();
  }

  /** Six: two rows of three or four are as large; five in a row would be 6.3 mm a metre. */
  @Test
  void figures_sixAlike_areBrokenBetweenTheirRows() {
    FigureRows rows = FigureRows.of(figures(6), 60, 382, 269);
    assertEquals(4, rows.across());
    double row = (0.72 * 269 - 7) / 2;
    Block.Placed whole = rows.place(new Box(24, 14, 382, 269), false).orElseThrow();
    assertEquals(2 * row + 7, whole.heightMm(), 1e-9);
    assertEquals(List.of("24.00", "121.25", "218.50", "315.75", "24.00", "121.25"), lefts(whole));
    // 70 mm are enough for the second row, drawn lower; 60 mm are not: 5.2 mm a metre is the least.
    Box less = new Box(24, 14, 382, row + 7 + 70);
    assertEquals(row + 7 + 70, rows.place(less, false).orElseThrow().heightMm(), 1e-9);
    Box short60 = new Box(24, 14, 382, row + 7 + 60);
    assertTrue(rows.place(short60, false).isEmpty());
    Block.Placed part = rows.place(short60, true).orElseThrow();
    assertEquals(4, part.inks().size());
    assertEquals(row, part.heightMm(), 1e-9);
    Block.Placed rest = part.rest().orElseThrow().place(less, false).orElseThrow();
    assertEquals(List.of("24.00", "121.25"), lefts(rest));
    assertTrue(rows.place(new Box(24, 14, 382, 50), true).isEmpty(), "not even one row");
  }

  @Test
  void figure_ofAScale_saysIt_orThatItHasNone() {
    Mark mark =
        new Mark.Region(
            Shape.rectangle(Point.metres(0, 0), Length.metres(10), Length.metres(5)),
            Palette.BED,
            "b");
    Panel.Figure panel = new Panel.Figure("Bed", List.of(mark), List.of(), 60, 100);
    FigureBlock block = new FigureBlock(panel, TYPE, UnitSystem.METRIC, 382, 269);
    assertEquals(108, block.minWidthMm(), 1e-9, "10 m at 1:100 and 4 mm at each side");
    Block.Placed placed = block.place(new Box(0, 0, 187.5, 200), false).orElseThrow();
    double body = 2.4 / 0.714 * 1.32;
    assertEquals(2 + HEAD + body + 58, placed.heightMm(), 1e-9);
    List<Ink> inks = ((Ink.Group) placed.inks().get(0)).inks();
    Ink.Text scale = (Ink.Text) inks.get(2);
    assertEquals("Scale 1:100", scale.content());
    assertEquals(2 + HEAD + 2.4 / 0.714, scale.at().y(), 1e-9);
    Panel.Figure large = new Panel.Figure("Bed", List.of(mark), List.of(), 60, 20);
    Block.Placed not =
        new FigureBlock(large, TYPE, UnitSystem.METRIC, 382, 269)
            .place(new Box(0, 0, 382, 269), false)
            .orElseThrow();
    assertEquals(
        "Not to scale", ((Ink.Text) ((Ink.Group) not.inks().get(0)).inks().get(2)).content());
  }

  private static List<Ink.Text> title(String name, String sheet, String client, String date) {
    PlanInfo info = new PlanInfo("p", name, client, "", date, "", UnitSystem.US, "$");
    SheetRequest request =
        SheetRequest.of(new SheetPlan(1, "s", sheet, List.of()), Paper.named("A3"), info);
    TitleBlock block = new TitleBlock(request, sheet, "", TYPE);
    return flat(block.inks(90, new Box(0, 0, 300, 200), "1 of 1"));
  }

  private static List<Ink.Text> flat(List<Ink> inks) {
    List<Ink.Text> all = new ArrayList<>();
    for (Ink ink : inks) {
      if (ink instanceof Ink.Group group) {
        all.addAll(flat(group.inks()));
      } else if (ink instanceof Ink.Text text) {
        all.add(text);
      }
    }
    return all;
  }

  private static List<String> texts(List<Ink.Text> texts) {
    return texts.stream().map(t -> t.content() + " " + t.heightMm()).toList();
  }

  /** 84 mm hold 20 letters of 5 mm (4.17 mm wide), 28 of 3.5 mm; a cell 45 − 3 − 1 = 41 mm. */
  @Test
  void titleBlock_longNames_areSetSmallerAndCut() {
    assertEquals("a".repeat(20) + " 5.0", texts(title("a".repeat(20), "S", "C", "")).get(0));
    List<String> two = texts(title("a".repeat(21), "S", "C", "2026-04-05"));
    assertEquals("a".repeat(21) + " 3.5", two.get(0));
    assertTrue(two.contains("5 Apr 2026 2.5"), two.toString());
    List<String> cut =
        texts(title("a".repeat(28 * 3 + 1), "b".repeat(28 * 2 + 1), "c".repeat(40), "spring"));
    assertEquals(
        List.of(
            "a".repeat(28) + " 3.5",
            "a".repeat(28) + " 3.5",
            "a".repeat(26) + "… 3.5",
            "b".repeat(28) + " 3.5",
            "b".repeat(26) + "… 3.5"),
        cut.subList(0, 5));
    // 41 mm hold 19 letters of 2.083 mm.
    assertEquals(
        List.of("Client 2.4", "c".repeat(19) + " 2.5", "c".repeat(17) + "… 2.5"),
        cut.subList(5, 8));
    assertTrue(cut.contains("spring 2.5"), "no date is kept as it is");
    assertTrue(cut.contains("Feet, inches 2.5"));
    assertEquals("– 5.0", texts(title("", "S", "C", "")).get(0));
  }

  @Test
  void titleBlock_isAsHighAsItsLines() {
    double body = 2.4 / 0.714 * 1.32;
    double row = body + HEAD + 2.4;
    double usual = 2 + 5 / 0.714 * 1.32 + 3.5 / 0.714 * 1.32 + 1.5 + 4 * row;
    assertEquals(usual, height("Plan", "C"), 1e-9);
    assertEquals(usual + HEAD, height("Plan", "c".repeat(20)), 1e-9, "a second line");
    double small = 3.5 / 0.714 * 1.32;
    assertEquals(
        usual - 5 / 0.714 * 1.32 + 2 * small, height("a".repeat(29), "C"), 1e-9, "two smaller");
  }

  private static double height(String name, String client) {
    PlanInfo info = new PlanInfo("p", name, client, "", "", "", UnitSystem.US, "$");
    SheetRequest request =
        SheetRequest.of(new SheetPlan(1, "s", "S", List.of()), Paper.named("A3"), info);
    return new TitleBlock(request, "S", "", TYPE).height(90);
  }
}
