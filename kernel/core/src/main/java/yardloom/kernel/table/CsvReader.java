package yardloom.kernel.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * Reads comma-separated values that users hand in, with the place of every field, so that messages
 * can point at it.
 *
 * <p>Fields with commas, quotes or line ends stand in double quotes, quotes inside doubled. Lines
 * end with LF or CR LF, blank ones are left out; a byte order mark before the first is, too.
 *
 * <p>References: [1] RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files,
 * IETF, 2005, section 2.
 */
public final class CsvReader {
  private static final char BYTE_ORDER_MARK = '\ufeff';

  /**
   * A field without its quotes, as it stands, and where it begins; lines and columns count from 1.
   */
  public record Field(String text, int line, int column) {}

  /** A row and the line that it starts on. */
  public record Row(int line, List<Field> fields) {
    public Row {
      fields = List.copyOf(fields);
    }

    /** The texts of the fields without blanks around them. */
    public List<String> texts() {
      return fields.stream().map(f -> f.text().strip()).toList();
    }
  }

  private final List<Row> rows = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private List<Field> fields = new ArrayList<>();
  private int line = 1;
  private int column = 1;
  private int rowLine = 1;
  private int fieldLine = 1;
  private int fieldColumn = 1;
  private boolean quoted;

  private CsvReader() {}

  /**
   * All rows of {@code csv}.
   *
   * @param what how messages call it, such as "the table of calls"
   * @throws PlanException (SYNTAX) without a place, if a quote never closes
   */
  public static List<Row> read(String csv, String what) {
    CsvReader reader = new CsvReader();
    int start = !csv.isEmpty() && csv.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
    for (int i = start; i < csv.length(); i++) {
      boolean twice = i + 1 < csv.length() && csv.charAt(i + 1) == '"';
      if (reader.take(csv.charAt(i), twice)) {
        i++;
      }
    }
    if (reader.quoted) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          "line "
              + reader.rowLine
              + " of "
              + what
              + " opens a quote that never closes; double quotes inside a field are written twice");
    }
    reader.endRow();
    return List.copyOf(reader.rows);
  }

  /**
   * The rows of a table that ships beside a class, each by the names in its first row.
   *
   * @param beside the class in whose package the file lies
   * @throws IllegalArgumentException naming the file, if it is not there or a row has another
   *     number of fields than its head
   */
  public static List<SortedMap<String, String>> shipped(Class<?> beside, String file) {
    List<Row> rows = read(text(beside, file), file);
    List<String> names = rows.get(0).texts();
    List<SortedMap<String, String>> named = new ArrayList<>();
    for (Row row : rows.subList(1, rows.size())) {
      if (row.fields().size() != names.size()) {
        throw new IllegalArgumentException(
            "line " + row.line() + " of " + file + " has not as many fields as the first line");
      }
      SortedMap<String, String> fields = new TreeMap<>();
      for (int i = 0; i < names.size(); i++) {
        fields.put(names.get(i), row.fields().get(i).text());
      }
      named.add(Collections.unmodifiableSortedMap(fields));
    }
    return List.copyOf(named);
  }

  private static String text(Class<?> beside, String file) {
    try (InputStream in = beside.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("there is no " + file + " beside " + beside.getName());
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Takes a character; true if the next one was taken with it. */
  private boolean take(char c, boolean quoteNext) {
    boolean both = quoted && c == '"' && quoteNext;
    column += both ? 2 : 1;
    if (c == '\n') {
      line++;
      column = 1;
    }
    if (quoted && c == '"') {
      quoted = quoteNext;
      text.append(quoteNext ? "\"" : "");
    } else if (quoted) {
      text.append(c);
    } else if (c == '"' && text.toString().isBlank()) {
      text.setLength(0);
      quoted = true;
    } else if (c == ',') {
      endField();
    } else if (c == '\n') {
      endRow();
    } else if (c != '\r') {
      text.append(c);
    }
    return both;
  }

  private void endField() {
    fields.add(new Field(text.toString(), fieldLine, fieldColumn));
    text.setLength(0);
    fieldLine = line;
    fieldColumn = column;
  }

  private void endRow() {
    endField();
    if (fields.size() > 1 || !fields.get(0).text().isBlank()) {
      rows.add(new Row(rowLine, fields));
    }
    fields = new ArrayList<>();
    rowLine = line;
  }
}
