package yardloom.kernel.table;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Writes a table as comma-separated values: one header line, lines ended by CR LF, fields quoted
 * where they hold a comma, quote or line break, quotes doubled. Text that begins like a formula of
 * a spreadsheet stands behind an apostrophe, so that no name in a plan is worked out.
 *
 * <p>References: [1] RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files,
 * IETF, 2005, section 2 (line ends from memory; quoting as in the csv-spectrum fixtures).
 */
public final class CsvWriter {
  /** Days of any year as ISO 8601 has them ({@code --05-09}); signed amounts before plain words. */
  private static final Pattern HARMLESS =
      Pattern.compile("--\\d\\d-\\d\\d|[+-]\\d[\\d.,]*(\\h[\\p{L}\\d\\h.,²³]*)?");

  private CsvWriter() {}

  public static void write(Table table, TableFormat format, Appendable out) throws IOException {
    line(table.columns(), format::csvHeader, out);
    for (List<Cell> row : table.rows()) {
      for (int i = 0; i < row.size(); i++) {
        Column column = table.columns().get(i);
        String text = format.plain(column, row.get(i));
        boolean number = column.measure().isNumber();
        out.append(i == 0 ? "" : ",").append(field(number ? text : inert(text)));
      }
      out.append("\r\n");
    }
  }

  private static void line(List<Column> columns, Function<Column, String> text, Appendable out)
      throws IOException {
    for (int i = 0; i < columns.size(); i++) {
      out.append(i == 0 ? "" : ",").append(field(text.apply(columns.get(i))));
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
