package yardloom.program.batch;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A lot of the list.
 *
 * @param name also its folder: lower-case letters, digits and hyphens
 * @param settings the values of the plan's parameters there
 */
public record LotRow(String name, Map<String, String> settings) {
  public LotRow {
    settings = Collections.unmodifiableMap(new TreeMap<>(settings));
  }
}
