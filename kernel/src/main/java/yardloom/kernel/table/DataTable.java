package yardloom.kernel.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/**
 * A CSV with a header line, in which every row names its source.
 *
 * @param name the file as messages call it
 */
public record DataTable(String name, List<DataRow> rows) {
  public DataTable {
    rows = List.copyOf(rows);
  }

  /**
   * A table that is shipped beside a class, such as {@code bulk-density.csv}.
   *
   * @throws IllegalStateException if there is none of that name
   */
  public static DataTable shipped(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(beside.getName() + " lacks its table " + name);
      }
      return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A table from text, such as a user's price book, with the place of every cell.
   *
   * @throws PlanException (SYNTAX) if a quote never closes or a row has more cells than the header
   */
  public static DataTable parse(String name, String text) {
    List<CsvReader.Row> lines;
    try {
      lines = CsvReader.read(text, "the table");
    } catch (PlanException e) {
      throw e.at(new SourceRef(name, 0, 0));
    }
    List<String> header = lines.isEmpty() ? List.of() : lines.get(0).texts();
    List<DataRow> rows = new ArrayList<>();
    for (CsvReader.Row line : lines.subList(Math.min(1, lines.size()), lines.size())) {
      if (line.fields().size() > header.size()) {
        CsvReader.Field extra = line.fields().get(header.size());
        throw new PlanException(
            ProblemCode.SYNTAX,
            new SourceRef(name, extra.line(), extra.column()),
            "the row has "
                + line.fields().size()
                + " cells, the header "
                + header.size()
                + "; a text with a comma stands in double quotes");
      }
      rows.add(row(name, header, line));
    }
    return new DataTable(name, rows);
  }

  private static DataRow row(String name, List<String> header, CsvReader.Row line) {
    Map<String, String> cells = new HashMap<>();
    Map<String, SourceRef> places = new HashMap<>();
    for (int i = 0; i < line.fields().size(); i++) {
      CsvReader.Field field = line.fields().get(i);
      cells.put(header.get(i), field.text());
      places.put(header.get(i), new SourceRef(name, field.line(), field.column()));
    }
    return new DataRow(cells, new SourceRef(name, line.line(), 0), places);
  }

  /**
   * The first row whose {@code column} reads {@code value}.
   *
   * @throws PlanException (UNKNOWN_WORD) if there is none, with the nearest value
   */
  public DataRow row(String column, String value) {
    return rows.stream()
        .filter(r -> r.text(column).equals(value))
        .findFirst()
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.UNKNOWN_WORD,
                    "'"
                        + value
                        + "' is not in the table "
                        + name
                        + "."
                        + Nearest.hint(value, rows.stream().map(r -> r.text(column)).toList())));
  }
}
