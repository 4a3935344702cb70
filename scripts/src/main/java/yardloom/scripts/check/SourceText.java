package yardloom.scripts.check;

import java.util.List;

/** The lines of a script, to look at the text near a place. */
final class SourceText {
  private final List<String> lines;

  SourceText(String text) {
    this.lines = List.of(text.split("\\R", -1));
  }

  String line(int line) {
    return line < 1 || line > lines.size() ? "" : lines.get(line - 1);
  }

  int lines() {
    return lines.size();
  }

  /** The character at a place counted from 1; a blank beyond the end of the line. */
  char at(int line, int column) {
    String text = line(line);
    return column < 1 || column > text.length() ? ' ' : text.charAt(column - 1);
  }

  /** The last character before a place that is not blank; a blank if there is none. */
  char before(int line, int column) {
    int c = column - 1;
    for (int l = line; l >= 1; l--) {
      String text = line(l);
      for (c = Math.min(l == line ? c : text.length(), text.length()); c >= 1; c--) {
        if (!Character.isWhitespace(text.charAt(c - 1))) {
          return text.charAt(c - 1);
        }
      }
    }
    return ' ';
  }
}
