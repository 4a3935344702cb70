package yardloom.kernel.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

/**
 * Writes a table as comma-separated values: one header line, lines ended by CR LF, fields quoted
 * where they hold a comma, quote or line break, quotes doubled. Text that begins like a formula of
 * a spreadsheet stands behind an apostrophe, so that no name in a plan is worked out.
 *
 * <p>A column has one unit, named in its head. Where a table has amounts of several units in one
 * column, the file has their numbers there and the units in a column beside. Rows that only name
 * those that follow become a first column, {@code group}, so that all rows are data. Areas and
 * shares keep digits enough to be added up, see {@link TableFormat#data}.
 *
 * <p>References: [1] RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files,
 * IETF, 2005, section 2 (line ends from memory; quoting as in the csv-spectrum fixtures).
 */
public final class CsvWriter {
  /** Days of any year as ISO 8601 has them ({@code --05-09}); signed amounts before plain words. */
  private static final Pattern HARMLESS =
      Pattern.compile("--\\d\\d-\\d\\d|[+-]\\d[\\d.,]*(\\h[\\p{L}\\d\\h.,²³]*)?");

  /** A number, grouped perhaps, and its unit. */
  private static final Pattern AMOUNT =
      Pattern.compile("([+-]?\\d[\\d,\\h]*(?:\\.\\d+)?)\\h?([^\\d\\h].*)?");

  private CsvWriter() {}

  public static void write(Table table, TableFormat format, Appendable out) throws IOException {
    List<Boolean> mixed = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      mixed.add(isMixed(table, i));
    }
    boolean grouped = isGrouped(table);
    List<String> head = new ArrayList<>();
    if (grouped) {
      head.add("group");
    }
    for (int i = 0; i < mixed.size(); i++) {
      Column column = table.columns().get(i);
      head.add(format.csvHeader(column));
      if (mixed.get(i)) {
        head.add(column.id() + "_unit");
      }
    }
    line(head, out);
    String group = "";
    for (int r = 0; r < table.rows().size(); r++) {
      List<Cell> row = table.rows().get(r);
      boolean total = r >= table.rows().size() - table.totals();
      if (grouped && !total && table.isHeading(r)) {
        group = inert(format.data(table.columns().get(0), row.get(0)));
        continue;
      }
      List<String> fields = new ArrayList<>();
      if (grouped) {
        fields.add(total ? "" : group);
      }
      for (int i = 0; i < row.size(); i++) {
        Column column = table.columns().get(i);
        String text = format.data(column, row.get(i));
        if (mixed.get(i)) {
          fields.addAll(parted(text));
        } else {
          fields.add(column.measure().isNumber() ? text : inert(text));
        }
      }
      line(fields, out);
    }
  }

  /** Whether its rows stand in groups, each under a row that only names it. */
  private static boolean isGrouped(Table table) {
    int rows = table.rows().size() - table.totals();
    return rows > 1
        && table.isHeading(0)
        && IntStream.range(1, rows).anyMatch(r -> !table.isHeading(r));
  }

  /** Whether the column holds amounts that each bring a unit of their own. */
  private static boolean isMixed(Table table, int column) {
    return table.columns().get(column).measure() == Measure.TEXT
        && table.rows().stream()
            .map(row -> row.get(column))
            .anyMatch(
                cell ->
                    cell.why().filter(w -> w.value() instanceof Quantity<?>).isPresent()
                        && cell.value().filter(String.class::isInstance).isPresent());
  }

  /** Number and unit word; what is no amount stays whole, with a blank unit. */
  private static List<String> parted(String text) {
    Matcher amount = AMOUNT.matcher(text);
    if (!amount.matches()) {
      return List.of(inert(text), "");
    }
    String number = amount.group(1).replaceAll("[,\\h]", "");
    String symbol = amount.group(2) == null ? "" : amount.group(2);
    String unit =
        Stream.of(Unit.values())
            .filter(u -> u.symbol().equals(symbol) && !symbol.isEmpty())
            .map(Unit::word)
            .findFirst()
            .orElse(symbol);
    return List.of(number, unit);
  }

  private static void line(List<String> fields, Appendable out) throws IOException {
    for (int i = 0; i < fields.size(); i++) {
      out.append(i == 0 ? "" : ",").append(field(fields.get(i)));
    }
    out.append("\r\n");
  }

  /**
   * Text that a spreadsheet would take for a formula, behind an apostrophe, which it leaves out.
   */
  private static String inert(String text) {
    boolean formula =
        !text.isEmpty()
            && "=+-@\t".indexOf(text.charAt(0)) >= 0
            && !HARMLESS.matcher(text).matches();
    return formula ? "'" + text : text;
  }

  static String field(String text) {
    boolean quoted =
        text.indexOf(',') >= 0
            || text.indexOf('"') >= 0
            || text.indexOf('\n') >= 0
            || text.indexOf('\r') >= 0;
    return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
  }
}
