package yardloom.materials.data;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
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
  private static final ObjectReader CSV =
      new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader());

  public DataTable {
    rows = List.copyOf(rows);
  }

  /** One of the plugin's own tables, such as {@code bulk-density.csv}. */
  public static DataTable shipped(String name) {
    try (InputStream in = DataTable.class.getResourceAsStream("/yardloom/materials/data/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the plugin lacks its table " + name);
      }
      return read(name, new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A table from text, such as a user's price book.
   *
   * @throws PlanException (SYNTAX) if it is no CSV with a header
   */
  public static DataTable parse(String name, String text) {
    try {
      return placed(name, text, read(name, new StringReader(text)));
    } catch (IOException e) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          new SourceRef(name, 0, 0),
          "this is not a comma-separated table with a header line: " + e.getMessage());
    }
  }

  /** The table with the place of every cell, for messages about a user's own file. */
  private static DataTable placed(String name, String text, DataTable table) {
    List<String> lines = text.lines().toList();
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        numbers.add(i + 1);
      }
    }
    if (numbers.size() != table.rows().size() + 1) {
      // A cell goes over several lines; rows keep the reader's own count.
      return table;
    }
    List<String> header = CellPlaces.cells(lines.get(numbers.get(0) - 1));
    List<DataRow> rows = new ArrayList<>();
    for (int r = 0; r < table.rows().size(); r++) {
      int line = numbers.get(r + 1);
      List<Integer> starts = CellPlaces.starts(lines.get(line - 1));
      Map<String, SourceRef> places = new HashMap<>();
      for (int i = 0; i < Math.min(header.size(), starts.size()); i++) {
        places.put(header.get(i), new SourceRef(name, line, starts.get(i)));
      }
      rows.add(new DataRow(table.rows().get(r).cells(), new SourceRef(name, line, 0), places));
    }
    return new DataTable(name, rows);
  }

  private static DataTable read(String name, Reader text) throws IOException {
    List<DataRow> rows = new ArrayList<>();
    try (MappingIterator<Map<String, String>> lines = CSV.readValues(text)) {
      while (lines.hasNextValue()) {
        Map<String, String> cells = lines.nextValue();
        rows.add(
            new DataRow(
                cells,
                new SourceRef(name, lines.getCurrentLocation().getLineNr() - 1, 0),
                Map.of()));
      }
    }
    return new DataTable(name, rows);
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
