package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Signs;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

class SheetPartsTest {
  private static final FontWidths WIDTHS = FontWidths.shipped();
  private static final PlanInfo INFO =
      new PlanInfo("p-1", "Plan", "Owner", "Maker", "2026-03-01", "C", UnitSystem.METRIC, "€");

  private static List<ComposedSheet> compose(Paper paper, List<Panel> panels) {
    SheetPlan plan = new SheetPlan(1, "s", "Sun by month", panels);
    return new SheetComposer(WIDTHS).compose(SheetRequest.of(plan, paper, INFO));
  }

  /**
   * D-23, D-24: owner, number, date, sheet, title, approval, creator, kind of drawing, revision.
   */
  @Test
  void titleBlock_fields_areThoseOfIso7200() {
    ComposedSheet sheet =
        compose(Paper.named("A3"), List.of(new Panel.Notes("N", List.of("text")))).get(0);
    List<String> texts = InkAudit.texts(sheet).stream().map(Ink.Text::content).toList();
    for (String wanted :
        List.of("Owner", "p-1", "1 Mar 2026", "1 of 1", "Plan", "Approved", "Maker", "C")) {
      assertTrue(texts.contains(wanted), wanted + " in " + texts);
    }
  }

  /** D-01, D-05: the block ends in the lower right corner of the frame. */
  @Test
  void titleBlock_corner_isThatOfTheFrame() {
    ComposedSheet sheet =
        compose(Paper.named("A3"), List.of(new Panel.Notes("N", List.of("text")))).get(0);
    Ink.Group block =
        (Ink.Group)
            sheet.inks().stream()
                .filter(i -> i instanceof Ink.Group g && g.name().equals("title-block"))
                .findFirst()
                .orElseThrow();
    Ink.Path edge = (Ink.Path) block.inks().get(0);
    assertTrue(edge.tracks().get(0).points().contains(new Xy(410, 287)), edge.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "A3", "ARCH C", "A1"})
  void figures_twelveAlike_standInRowsOfEqualSize(String paper) {
    Shape lot = Shape.rectangle(Point.metres(0, 0), Length.metres(18), Length.metres(36));
    List<Panel> panels = new ArrayList<>();
    for (int month = 1; month <= 12; month++) {
      List<Mark> marks =
          List.of(
              new Mark.Region(lot, Palette.LOT, "lot"),
              new Mark.Label(Point.metres(9, 18), "5 h", 2.5, false, 1, Mark.Anchor.CENTRE));
      panels.add(new Panel.Figure("Month " + month, marks, List.of(), 45, 0));
    }
    List<ComposedSheet> sheets = compose(Paper.named(paper), panels);
    int found = 0;
    for (ComposedSheet sheet : sheets) {
      assertEquals(List.of(), InkAudit.problems(sheet, WIDTHS));
      found += (int) InkAudit.texts(sheet).stream().filter(t -> t.content().equals("5 h")).count();
    }
    assertEquals(12, found);
    if (!paper.equals("A4")) {
      assertEquals(1, sheets.size());
    }
  }

  /**
   * A square of 10 m that asks for 60 mm: drawn at 135 of 300 mm, in less room down to its least.
   */
  @Test
  void figureWithoutScale_isDrawnLowerWhereThereIsLessRoom_downToItsLeastWidth() {
    Shape square = Shape.rectangle(Point.metres(0, 0), Length.metres(10), Length.metres(10));
    Panel.Figure figure =
        new Panel.Figure(
            "Square", List.of(new Mark.Region(square, Palette.LOT, "lot")), List.of(), 60, 0);
    FigureBlock block = new FigureBlock(figure, new Type(WIDTHS), UnitSystem.METRIC, 300, 300);
    double around = block.aroundMm(300);
    assertEquals(around + 135, height(block, 300), 1e-6);
    assertEquals(100, height(block, 100), 1e-6);
    assertEquals(around + 60, height(block, around + 60.001), 0.01);
    assertTrue(block.place(new Box(0, 0, 300, around + 59.9), false).isEmpty());
  }

  private static double height(FigureBlock block, double roomMm) {
    return block.place(new Box(0, 0, 300, roomMm), false).orElseThrow().heightMm();
  }

  @Property(seed = "20261125")
  void crowns_anySize_touchTheirCircleFromInside(
      @ForAll @DoubleRange(min = 0.5, max = 80) double radius) {
    Xy stem = new Xy(100, 100);
    List<Ink> shed = Symbols.draw(SymbolForm.CROWN_DECIDUOUS, stem, radius, 0, Palette.TREE);
    List<Ink> evergreen = Symbols.draw(SymbolForm.CROWN_EVERGREEN, stem, radius, 0, Palette.TREE);
    for (List<Ink> crown : List.of(shed, evergreen)) {
      List<Xy> edge = ((Ink.Path) crown.get(0)).tracks().get(0).points();
      double widest = edge.stream().mapToDouble(stem::distance).max().orElseThrow();
      assertEquals(radius, widest, 1e-9);
    }
    assertNotEquals(shed, evergreen);
  }

  @Test
  void signs_notInTheFont_areWritten() {
    assertEquals("reach <= 2 ft", Signs.shown("reach \u2264 2 ft"));
    assertEquals("a b", Signs.shown("a\tb"));
    assertEquals("1\u00bd × 4′", Signs.shown("1\u00bd × 4′"));
  }

  @Test
  void wrap_anyWidth_keepsAllLetters() {
    Type type = new Type(WIDTHS);
    String text = "wood chips over cardboard, Donaudampfschifffahrt 12";
    for (double width = 3; width < 90; width += 7) {
      List<String> lines = type.wrap(text, 2, false, width);
      assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
      for (String line : lines) {
        assertTrue(line.length() == 1 || type.width(line, 2, false) <= width, line);
      }
    }
  }

  /** A list of any length: each part has its head, and no heading is left behind. */
  @Property(tries = 40, seed = "20261125")
  void tableWithHeadings_anyLength_keepsThemWithTheirRows(
      @ForAll @IntRange(min = 1, max = 90) int n) {
    Table.Builder list =
        Table.titled("list", "List")
            .column(Column.text("point", "Point"))
            .column(Column.text("reading", "Reading"));
    for (int i = 1; i <= n; i++) {
      list.heading("bed with a rather long name, number " + i);
      for (int k = 0; k <= i % 4; k++) {
        list.row(Cell.text("p" + k), Cell.text("r"));
      }
    }
    List<ComposedSheet> sheets =
        compose(Paper.named("A4").portrait(), List.of(new Panel.TableBlock(list.build())));
    int headings = 0;
    for (ComposedSheet sheet : sheets) {
      List<Ink.Text> texts = InkAudit.texts(sheet);
      long heads = texts.stream().filter(t -> t.content().equals("Reading")).count();
      long titles =
          texts.stream().filter(t -> t.content().matches("List( \\(continued\\))?")).count();
      assertTrue(heads >= 1 && heads == titles, "every part has its head");
      for (Ink.Text t : texts) {
        if (t.content().startsWith("Bed with")) {
          headings++;
          assertTrue(
              texts.stream()
                  .anyMatch(
                      o ->
                          o.content().equals("P0")
                              && Math.abs(o.at().x() - t.at().x()) < 0.01
                              && o.at().y() > t.at().y()
                              && o.at().y() - t.at().y() < 6),
              () -> t.content() + " stands alone");
        }
      }
    }
    assertEquals(n, headings);
  }
}
