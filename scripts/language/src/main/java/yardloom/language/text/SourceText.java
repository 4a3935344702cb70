package yardloom.language.text;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** The lines of a script, to look at the text near a place. */
public final class SourceText {
  private final List<String> lines;

  public SourceText(String text) {
    this.lines = List.of(text.split("\\R", -1));
  }

  String line(int line) {
    return line < 1 || line > lines.size() ? "" : lines.get(line - 1);
  }

  /** Whether a text in quotes starts at the place. */
  public boolean isQuote(int line, int column) {
    String text = line(line);
    return column >= 1 && column <= text.length() && "'\"".indexOf(text.charAt(column - 1)) >= 0;
  }

  /** The last character before a place that is not blank; a blank if there is none. */
  public char before(int line, int column) {
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

  /**
   * Line, column and sign of the innermost bracket that is opened and never closed, texts and
   * comments left out; null if all are closed. A guess for messages: texts over several lines are
   * not followed.
   */
  int[] openBracket() {
    Deque<int[]> open = new ArrayDeque<>();
    for (int l = 1; l <= lines.size(); l++) {
      String bare = blanked(line(l));
      for (int c = 1; c <= bare.length(); c++) {
        char sign = bare.charAt(c - 1);
        if ("([{".indexOf(sign) >= 0) {
          open.push(new int[] {l, c, sign});
        } else if (")]}".indexOf(sign) >= 0 && !open.isEmpty()) {
          open.pop();
        }
      }
    }
    return open.peek();
  }

  /** The line with texts and comments replaced by blanks. */
  private static String blanked(String line) {
    StringBuilder made = new StringBuilder(line);
    char quote = 0;
    for (int i = 0; i < made.length(); i++) {
      char c = made.charAt(i);
      boolean comment = quote == 0 && line.startsWith("//", i);
      if (comment) {
        made.setLength(i);
      } else if (quote == 0 && (c == '\'' || c == '"')) {
        quote = c;
      } else if (quote != 0) {
        quote = c == quote ? 0 : quote;
        made.setCharAt(i, ' ');
      }
    }
    return made.toString();
  }
}
