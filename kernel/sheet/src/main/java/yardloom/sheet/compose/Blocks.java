package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Palette;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;

/** Makes the blocks of text: notes, cautions, legends. */
final class Blocks {
  private static final double PARAGRAPH_GAP_MM = 1.4;
  private static final double SWATCH_WIDTH_MM = 9;
  private static final double SWATCH_HEIGHT_MM = 4.4;
  private static final double SWATCH_GAP_MM = 2.5;
  private static final double LEGEND_ROW_GAP_MM = 1.4;
  private static final double LEGEND_ITEM_MIN_MM = 38;
  private static final int LONG_LEGEND = 6;

  private final Type type;

  Blocks(Type type) {
    this.type = type;
  }

  Block notes(String name, String title, List<String> paragraphs) {
    return new Stack(
        name,
        title,
        0,
        false,
        type,
        width -> {
          List<Stack.Row> rows = new ArrayList<>();
          for (String paragraph : paragraphs) {
            addParagraph(rows, paragraph, width, Palette.INK);
          }
          return new Stack.Content(List.of(), rows);
        },
        0);
  }

  Block cautions(List<Caution> cautions) {
    return new Stack(
        "cautions",
        "Cautions",
        0,
        true,
        type,
        width -> {
          List<Stack.Row> rows = new ArrayList<>();
          for (Caution caution : cautions) {
            addParagraph(rows, caution.text(), width, Palette.INK);
          }
          return new Stack.Content(List.of(), rows);
        },
        0);
  }

  private void addParagraph(List<Stack.Row> rows, String paragraph, double width, String colour) {
    for (String line : type.wrap(paragraph, type.body(), false, width)) {
      rows.add(
          new Stack.Row(
              Type.pitch(type.body()),
              (x, y) ->
                  List.of(Type.line(line, x, y, type.body(), false, Ink.Align.START, colour))));
    }
    rows.add(gap(PARAGRAPH_GAP_MM));
  }

  static Stack.Row gap(double heightMm) {
    return new Stack.Row(heightMm, (x, y) -> List.of());
  }

  Block legend(List<LegendEntry> entries) {
    return new Stack(
        "legend",
        "Legend",
        0,
        false,
        type,
        width -> new Stack.Content(List.of(), legendRows(tidy(entries), width)),
        0);
  }

  /** Texts begin with a capital; of entries that read and look alike the first stays. */
  static List<LegendEntry> tidy(List<LegendEntry> entries) {
    return entries.stream().map(e -> e.called(capital(e.text()))).distinct().toList();
  }

  private static String capital(String text) {
    int end = text.isEmpty() ? 0 : text.offsetByCodePoints(0, 1);
    return text.substring(0, end).toUpperCase(Locale.ROOT) + text.substring(end);
  }

  /** Legend rows, two or more entries side by side where their texts allow it. */
  List<Stack.Row> legendRows(List<LegendEntry> entries, double width) {
    double longest = LEGEND_ITEM_MIN_MM;
    for (LegendEntry entry : entries) {
      longest =
          Math.max(
              longest,
              SWATCH_WIDTH_MM + 2 * SWATCH_GAP_MM + type.width(entry.text(), type.body(), false));
    }
    // Long legends stand in two columns even where some texts then wrap.
    int least = entries.size() > LONG_LEGEND && width >= 2 * LEGEND_ITEM_MIN_MM ? 2 : 1;
    int columns = (int) Math.max(least, Math.min(entries.size(), Math.floor(width / longest)));
    double itemWidth = width / columns;
    int lines = (entries.size() + columns - 1) / columns;
    List<Stack.Row> rows = new ArrayList<>();
    for (int line = 0; line < lines; line++) {
      List<LegendEntry> side = new ArrayList<>();
      for (int c = 0; c < columns && c * lines + line < entries.size(); c++) {
        side.add(entries.get(c * lines + line));
      }
      rows.add(legendRow(side, itemWidth));
    }
    return rows;
  }

  private Stack.Row legendRow(List<LegendEntry> side, double itemWidth) {
    double textLeft = SWATCH_WIDTH_MM + SWATCH_GAP_MM;
    List<List<String>> texts = new ArrayList<>();
    int most = 1;
    for (LegendEntry entry : side) {
      List<String> lines = type.wrap(entry.text(), type.body(), false, itemWidth - textLeft - 1);
      texts.add(lines);
      most = Math.max(most, lines.size());
    }
    double height = Math.max(SWATCH_HEIGHT_MM, most * Type.pitch(type.body())) + LEGEND_ROW_GAP_MM;
    return new Stack.Row(
        height,
        (x, y) -> {
          List<Ink> inks = new ArrayList<>();
          for (int i = 0; i < side.size(); i++) {
            double left = x + i * itemWidth;
            Box swatch = new Box(left, y, SWATCH_WIDTH_MM, SWATCH_HEIGHT_MM);
            inks.addAll(Symbols.swatch(side.get(i), swatch));
            double textTop = y + (SWATCH_HEIGHT_MM - Type.pitch(type.body())) / 2;
            inks.addAll(
                Type.lines(
                    texts.get(i), left + textLeft, textTop, type.body(), false, Palette.INK));
          }
          return inks;
        });
  }
}
