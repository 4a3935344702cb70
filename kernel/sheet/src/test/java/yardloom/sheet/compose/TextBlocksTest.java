package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;

/**
 * Blocks of text in a script whose letters all are 2 mm wide at the usual size (2.4 mm high), so
 * that places can be worked out by hand. A line of it takes 2.4 / 0.714 × 1.32 = 4.437 mm and has
 * its baseline at 3.361 mm; a line of a heading (2.5 mm) 4.622 and 3.501 mm.
 */
class TextBlocksTest {
  private static final double LINE = 2.4 / 0.714 * 1.32;
  private static final double HEAD = 2.5 / 0.714 * 1.32;
  private static final double BASE = 2.4 / 0.714;

  /** {@link Type} adds 8 % to what is measured. */
  private static final Type TYPE =
      new Type((text, em, bold) -> text.length() * em * 0.714 / 2.4 * 2 / 1.08);

  private static final TableFormat FORMAT = new TableFormat(UnitSystem.US, "$");

  private static List<Ink> inks(Block.Placed placed) {
    List<Ink> all = new ArrayList<>();
    placed.inks().forEach(i -> add(i, all));
    return all;
  }

  private static void add(Ink ink, List<Ink> all) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> add(i, all));
    } else {
      all.add(ink);
    }
  }

  /** What is written: the text, its end by which it stands, and the place of that end. */
  private static List<String> written(Block.Placed placed) {
    return inks(placed).stream()
        .filter(i -> i instanceof Ink.Text)
        .map(i -> (Ink.Text) i)
        .map(t -> text(t.content(), t.at().x(), t.at().y()))
        .toList();
  }

  private static String text(String content, double x, double y) {
    return String.format(Locale.ROOT, "%s %.1f %.2f", content, x, y);
  }

  private static LegendEntry entry(String text) {
    return LegendEntry.area(text, Palette.BED);
  }

  /** Two columns of 40 mm, read downwards; a row is a line and 1.4 mm. */
  @Test
  void legend_standsInColumnsWhereItsTextsAllowIt() {
    Block legend = new Blocks(TYPE).legend(List.of(entry("bed"), entry("path"), entry("lawn")));
    Block.Placed placed = legend.place(new Box(100, 50, 80, 60), false).orElseThrow();
    double top = 50.5 + HEAD + 1.2;
    double first = top + (4.4 - LINE) / 2 + BASE;
    assertEquals(
        List.of(
            text("Legend", 100, 50.5 + 2.5 / 0.714),
            text("Bed", 111.5, first),
            text("Lawn", 151.5, first),
            text("Path", 111.5, first + LINE + 1.4)),
        written(placed));
    assertEquals(0.5 + HEAD + 1.2 + 2 * (LINE + 1.4), placed.heightMm(), 1e-9);
    Ink.Path swatch = (Ink.Path) inks(placed).get(4);
    assertEquals(140, swatch.tracks().get(0).points().get(0).x(), 1e-9, "the second column's");
    assertEquals(149, swatch.tracks().get(0).points().get(1).x(), 1e-9, "9 mm wide");
    assertTrue(placed.rest().isEmpty());
  }

  /** 20 letters are 40 mm, with swatch and gaps 54: one column in 80 mm, two from 108 mm. */
  @Test
  void legend_withALongText_hasFewerColumns() {
    List<LegendEntry> two = List.of(entry("abcdefghij klmnopqrs"), entry("bed"));
    assertEquals(2, new Blocks(TYPE).legendRows(two, 80).size());
    assertEquals(2, new Blocks(TYPE).legendRows(two, 107.9).size());
    assertEquals(1, new Blocks(TYPE).legendRows(two, 108.1).size());
    // More than six stand in two columns all the same, from 76 mm; the long text then wraps.
    List<LegendEntry> seven = new ArrayList<>(two);
    List<LegendEntry> six = new ArrayList<>(two);
    for (int i = 0; i < 5; i++) {
      seven.add(entry("entry " + i));
    }
    six.addAll(seven.subList(2, 6));
    assertEquals(6, new Blocks(TYPE).legendRows(six, 80).size());
    List<Stack.Row> rows = new Blocks(TYPE).legendRows(seven, 80);
    assertEquals(4, rows.size());
    assertEquals(2 * LINE + 1.4, rows.get(0).heightMm(), 1e-9, "two lines of text");
    assertEquals(LINE + 1.4, rows.get(1).heightMm(), 1e-9);
    assertEquals(7, new Blocks(TYPE).legendRows(seven, 75.9).size());
  }

  @Test
  void legend_saysWhatIsAlikeOnce() {
    Block legend =
        new Blocks(TYPE)
            .legend(List.of(entry("bed"), entry("Bed"), LegendEntry.line("bed", Palette.EAVES)));
    assertEquals(3, written(legend.place(new Box(0, 0, 80, 60), false).orElseThrow()).size());
  }

  /** Lines of 24 mm hold twelve letters; a paragraph ends with 1.4 mm. */
  @Test
  void notes_areBrokenBetweenTheirLines_andGoOnUnderTheirTitle() {
    Block notes = new Blocks(TYPE).notes("n", "Note", List.of("one two", "three four five", "six"));
    Block.Placed whole = notes.place(new Box(10, 20, 24, 100), false).orElseThrow();
    double top = 20.5 + HEAD + 1.2;
    List<String> all =
        List.of(
            text("Note", 10, 20.5 + 2.5 / 0.714),
            text("one two", 10, top + BASE),
            text("three four", 10, top + LINE + 1.4 + BASE),
            text("five", 10, top + 2 * LINE + 1.4 + BASE),
            text("six", 10, top + 3 * LINE + 2.8 + BASE));
    assertEquals(all, written(whole));
    double height = 0.5 + HEAD + 1.2 + 4 * LINE + 3 * 1.4;
    assertEquals(height, whole.heightMm(), 1e-9);
    assertTrue(notes.place(new Box(10, 20, 24, height - 0.1), false).isEmpty(), "not whole");
    Block.Placed part =
        notes.place(new Box(10, 20, 24, 0.5 + HEAD + 1.2 + 2 * LINE + 1.5), true).orElseThrow();
    assertEquals(all.subList(0, 3), written(part));
    Block.Placed rest = part.rest().orElseThrow().place(new Box(0, 0, 24, 99), false).orElseThrow();
    double next = 0.5 + 2 * HEAD + 1.2;
    assertEquals(
        List.of(
            text("Note", 0, 0.5 + 2.5 / 0.714),
            text("(continued)", 0, 0.5 + HEAD + 2.5 / 0.714),
            text("five", 0, next + BASE),
            text("six", 0, next + LINE + 1.4 + BASE)),
        written(rest));
    assertTrue(notes.place(new Box(10, 20, 24, 0.5 + HEAD + 1.2 + LINE - 0.1), true).isEmpty());
  }

  @Test
  void cautions_standInABox() {
    Block cautions =
        new Blocks(TYPE)
            .cautions(List.of(new Caution("lift in pairs", Source.commonPractice("x"))));
    Block.Placed placed = cautions.place(new Box(10, 20, 40, 60), false).orElseThrow();
    // 2.5 mm of padding: 35 mm hold 17 letters.
    assertEquals(
        List.of(
            text("Cautions", 12.5, 22.5 + 2.5 / 0.714),
            text("lift in pairs", 12.5, 22.5 + HEAD + 1.2 + BASE)),
        written(placed));
    assertEquals(2.5 + HEAD + 1.2 + LINE + 1.4 + 2.5, placed.heightMm(), 1e-9);
    Ink.Path box = (Ink.Path) inks(placed).get(0);
    assertEquals(20 + placed.heightMm(), box.tracks().get(0).points().get(2).y(), 1e-9);
    assertEquals("caution-box", box.style().name());
    assertEquals(Palette.ALERT, ((Ink.Text) inks(placed).get(1)).colour());
    assertTrue(cautions.place(new Box(10, 20, 40, placed.heightMm() - 0.1), false).isEmpty());
  }

  private static final List<String> NAMES = List.of("Kale", "Roses", "all");

  private static Table plants(int totals) {
    Table.Builder table =
        Table.titled("plants", "Plants")
            .column(Column.text("bed", "bed"))
            .column(Column.of("n", "number", Measure.COUNT))
            .column(Column.text("note", "to do"));
    for (int i = 0; i < NAMES.size(); i++) {
      Cell[] row = {
        Cell.text(NAMES.get(i)), Cell.number(1000 * (i + 1)), Cell.text(i == 1 ? "prune" : "")
      };
      if (i >= NAMES.size() - totals) {
        table.total(row);
      } else {
        table.row(row);
      }
    }
    return table.note("as counted").build();
  }

  /**
   * Columns by their longest word with 1.6 mm at each side: "Roses" 10 + 3.2; "Number" 12 + 3.2;
   * "prune" 10 + 3.2 and 2 mm more after numbers. Together 43.6 mm, which the table asks for.
   */
  @Test
  void table_standsByItsColumns_numbersEndRight() {
    List<Block> blocks = TableBlock.of(plants(1), FORMAT, TYPE, 200);
    assertEquals(1, blocks.size());
    assertEquals(13.2 + 15.2 + 15.2, blocks.get(0).minWidthMm(), 1e-9);
    Block.Placed placed = blocks.get(0).place(new Box(100, 50, 43.6, 100), false).orElseThrow();
    double row = LINE + 2 * 0.19 * 2.4;
    double head = 50.5 + HEAD + 1.2 + 0.19 * 2.4 + BASE;
    List<String> written = written(placed);
    assertEquals(
        List.of(
            text("Plants", 100, 50.5 + 2.5 / 0.714),
            text("Bed", 101.6, head),
            text("Number", 113.2 + 15.2 - 1.6, head),
            text("To do", 128.4 + 3.6, head),
            text("Kale", 101.6, head + row),
            text("1,000", 126.8, head + row),
            text("Roses", 101.6, head + 2 * row),
            text("2,000", 126.8, head + 2 * row),
            text("prune", 132.0, head + 2 * row),
            text("all", 101.6, head + 3 * row),
            text("3,000", 126.8, head + 3 * row)),
        written.subList(0, 11));
    assertEquals(text("as counted", 100, head + 4 * row - 0.19 * 2.4 + 0.8), written.get(11));
    assertEquals(0.5 + HEAD + 1.2 + 4 * row + 0.8 + LINE, placed.heightMm(), 1e-9);
    // Rules: over and under the head, a hairline, one over the total, one under all.
    assertEquals(
        List.of(
            "block-rule", "table-rule", "table-rule", "table-hairline", "table-rule", "table-rule"),
        inks(placed).stream()
            .filter(i -> i instanceof Ink.Path)
            .map(i -> ((Ink.Path) i).style().name())
            .toList());
    List<Ink.Text> texts =
        inks(placed).stream().filter(i -> i instanceof Ink.Text).map(i -> (Ink.Text) i).toList();
    assertEquals(Ink.Align.END, texts.get(2).align());
    assertEquals(Ink.Align.START, texts.get(3).align());
    assertTrue(texts.get(1).bold() && texts.get(9).bold() && !texts.get(4).bold());
  }

  @Test
  void table_withTooManyColumns_isParted_eachPartWithTheFirstColumn() {
    Table.Builder table = Table.titled("m", "Months").column(Column.text("bed", "bed"));
    for (String month : List.of("january", "february", "march")) {
      table.column(Column.text(month, month));
    }
    table.row(Cell.text("Kale"), Cell.text("x"), Cell.text("y"), Cell.text("z")).note("once");
    // 4 + 7 + 8 + 5 letters: 11.2, 17.2, 19.2 and 13.2 mm; 48 mm hold the first three.
    List<Block> blocks = TableBlock.of(table.build(), FORMAT, TYPE, 48);
    assertEquals(2, blocks.size());
    List<String> first = written(blocks.get(0).place(new Box(0, 0, 48, 99), false).orElseThrow());
    List<String> second = written(blocks.get(1).place(new Box(0, 0, 48, 99), false).orElseThrow());
    assertEquals(List.of("Months", "Bed", "January", "February", "Kale", "x", "y"), words(first));
    assertEquals(List.of("Months", "Bed", "March", "Kale", "z", "once"), words(second));
    assertEquals(1, TableBlock.of(table.build(), FORMAT, TYPE, 60.9).size());
    assertEquals(2, TableBlock.of(table.build(), FORMAT, TYPE, 60.7).size());
  }

  private static List<String> words(List<String> written) {
    return written.stream().map(w -> w.split(" ")[0]).toList();
  }

  /** Four columns of one unit say it in the title; three say it each. */
  @Test
  void unit_ofManyColumns_isSaidOnceInTheTitle() {
    assertEquals(
        List.of("Water,", "Bed", "A", "B", "C", "D"),
        words(heads(Measure.LENGTH, 4, Measure.LENGTH)));
    assertEquals("Water, ft", heads(Measure.LENGTH, 4, Measure.LENGTH).get(0).substring(0, 9));
    assertEquals(
        List.of("Water", "Bed", "A,", "B,", "C,"), words(heads(Measure.LENGTH, 3, Measure.LENGTH)));
    assertEquals(
        List.of("Water", "Bed", "A,", "B,", "C,", "D,"),
        words(heads(Measure.LENGTH, 4, Measure.AREA)));
  }

  private static List<String> heads(Measure measure, int columns, Measure last) {
    Table.Builder table = Table.titled("w", "Water").column(Column.text("bed", "bed"));
    for (int i = 0; i < columns; i++) {
      String name = "abcd".substring(i, i + 1);
      table.column(Column.of(name, name, i == columns - 1 ? last : measure));
    }
    List<Cell> row = new ArrayList<>(List.of(Cell.text("x")));
    for (int i = 0; i < columns; i++) {
      row.add(Cell.number(1));
    }
    Block block = TableBlock.of(table.row(row).build(), FORMAT, TYPE, 400).get(0);
    return written(block.place(new Box(0, 0, 300, 99), false).orElseThrow())
        .subList(0, columns + 2);
  }

  @Test
  void columns_shareWhatIsLeft_thoseThatWantLeastFirst() {
    ColumnWidths two = new ColumnWidths(new double[] {10, 20}, new double[] {10, 60});
    assertArrayEquals(new double[] {10, 40}, two.of(50), 1e-9);
    // 30 mm for three: 5 is all that the second wants, the others get 12.5 each.
    ColumnWidths three = new ColumnWidths(new double[] {10, 20, 10}, new double[] {40, 25, 100});
    assertArrayEquals(new double[] {22.5, 25, 22.5}, three.of(70), 1e-9);
    // All have what they want in 45 mm; 90 mm are twice of it.
    ColumnWidths wide = new ColumnWidths(new double[] {10, 20}, new double[] {15, 30});
    assertArrayEquals(new double[] {30, 60}, wide.of(90), 1e-9);
    // Half of what is needed: each has half.
    assertArrayEquals(
        new double[] {5, 15},
        new ColumnWidths(new double[] {10, 30}, new double[] {10, 30}).of(20),
        1e-9);
  }

  /** 12.5 letters' heights, or a width for 3.5 lines (6 on a page) up to 60 mm. */
  @Test
  void columns_areComfortableWhereTextsHaveFewLines() {
    ColumnWidths widths = new ColumnWidths(new double[] {10, 10}, new double[] {25, 400});
    assertEquals(25 + 60, widths.comfortable(2.4), 1e-9);
    ColumnWidths text = new ColumnWidths(new double[] {10}, new double[] {120});
    assertEquals(120 / 3.5, text.comfortable(2.4), 1e-9);
    assertEquals(12.5 * 2, text.comfortable(2.0), 1e-9, "120 / 6 = 20 is less");
    assertEquals(30, new ColumnWidths(new double[] {10}, new double[] {70}).comfortable(2.4), 1e-9);
    assertEquals(40, new ColumnWidths(new double[] {40}, new double[] {70}).comfortable(2.4), 1e-9);
    assertEquals(30, new ColumnWidths(new double[] {10, 20}, new double[] {9, 9}).sumOfLeast());
  }
}
