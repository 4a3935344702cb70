package yardloom.program.cli;

import java.util.ArrayList;
import java.util.List;

/** Lines cut for a terminal. */
final class Wrapped {
  private static final int COLUMNS = 100;

  private Wrapped() {}

  /** A line in pieces of at most 100 columns, the later ones indented. */
  static List<String> of(String line, int indent) {
    List<String> pieces = new ArrayList<>();
    String rest = line;
    while (rest.length() > COLUMNS) {
      int cut = rest.lastIndexOf(' ', COLUMNS);
      if (cut <= indent) {
        break;
      }
      pieces.add(rest.substring(0, cut).stripTrailing());
      rest = " ".repeat(indent) + rest.substring(cut + 1);
    }
    pieces.add(rest);
    return pieces;
  }
}
