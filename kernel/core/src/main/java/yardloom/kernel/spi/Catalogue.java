package yardloom.kernel.spi;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Rows of data that plans may name, listed for a reader by the command {@code words}.
 *
 * @param name one lower-case word, such as {@code plants}
 * @param title what the rows are
 */
public record Catalogue(String name, String title, List<Row> rows) {
  public Catalogue {
    rows = List.copyOf(rows);
    if (!name.matches("[a-z]+")) {
      throw new IllegalArgumentException("name of a catalogue \"" + name + "\"");
    }
  }

  /**
   * One row.
   *
   * @param name as plans name it
   * @param traits what may be asked for, by name, each in words; several are parted by commas
   */
  public record Row(String name, Map<String, String> traits) {
    public Row {
      traits = Collections.unmodifiableMap(new TreeMap<>(traits));
    }

    /** Whether a trait holds the text, without regard to case. */
    public boolean has(String trait, String text) {
      String said = traits.getOrDefault(trait, "");
      return said.toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT));
    }
  }
}
