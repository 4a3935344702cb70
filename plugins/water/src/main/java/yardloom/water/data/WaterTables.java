package yardloom.water.data;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import yardloom.kernel.source.Source;

/** The plugin's CSV tables, rows by column name. */
public final class WaterTables {
  private WaterTables() {}

  public static List<Map<String, String>> rows(String table) {
    URL file = Objects.requireNonNull(WaterTables.class.getResource(table), table);
    CsvSchema named = CsvSchema.emptySchema().withHeader();
    try {
      return new CsvMapper()
          .readerForMapOf(String.class)
          .with(named)
          .<Map<String, String>>readValues(file)
          .readAll();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sources by the code that other tables use. */
  public static Map<String, Source> sources() {
    return rows("sources.csv").stream()
        .collect(Collectors.toUnmodifiableMap(r -> r.get("code"), WaterTables::source));
  }

  private static Source source(Map<String, String> row) {
    return new Source(
        row.get("title"),
        row.get("publisher"),
        Integer.parseInt(row.get("year")),
        row.get("locator"),
        Source.Standing.valueOf(row.get("standing").toUpperCase(Locale.ROOT)));
  }
}
