package yardloom.materials.data;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the cells of a comma-separated line begin, so that messages can point at one.
 *
 * <p>Columns count from 1. A comma between double quotes is part of its cell.
 *
 * <p>References: [1] Y. Shafranovich, RFC 4180, Common Format and MIME Type for CSV Files, 2005,
 * section 2.
 */
final class CellPlaces {
  private CellPlaces() {}

  static List<Integer> starts(String line) {
    List<Integer> starts = new ArrayList<>(List.of(1));
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      quoted ^= line.charAt(i) == '"';
      if (line.charAt(i) == ',' && !quoted) {
        starts.add(i + 2);
      }
    }
    return starts;
  }

  /** The cells' texts without quotes. */
  static List<String> cells(String line) {
    List<Integer> starts = starts(line);
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      int end = i + 1 < starts.size() ? starts.get(i + 1) - 2 : line.length();
      cells.add(line.substring(starts.get(i) - 1, end).strip().replace("\"", ""));
    }
    return cells;
  }
}
