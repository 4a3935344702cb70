package yardloom.planting.data;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Reads a table beside this class, by the names in its first line. */
public final class CsvRows {
  private static final CsvMapper MAPPER = new CsvMapper();

  private CsvRows() {}

  public static List<Map<String, String>> of(String name) {
    try (InputStream in = CsvRows.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the plugin lacks its table " + name);
      }
      MappingIterator<Map<String, String>> rows =
          MAPPER
              .readerForMapOf(String.class)
              .with(CsvSchema.emptySchema().withHeader())
              .readValues(in);
      return rows.readAll();
    } catch (IOException e) {
      throw new UncheckedIOException("table " + name + " cannot be read", e);
    }
  }
}
