package yardloom.language.text;

import java.util.ArrayDeque;
import java.util.Deque;
import yardloom.kernel.problem.ProblemCode;

/**
 * Looks at the raw text before any parser does: what would make the parser itself run long or deep
 * is refused here.
 */
public final class TextGate {
  /** Some 3,000 statements; a longer script belongs into several files. */
  static final int MAX_CHARS = 250_000;

  static final int MAX_DEPTH = 40;
  static final int MAX_LINE = 2_000;

  /** Signs in one statement: beyond it the parser's look-ahead explodes. */
  static final int MAX_SIGNS = 400;

  private TextGate() {}

  /** Reports what is too much; true if the text may be parsed. */
  public static boolean passes(String text, Report report) {
    if (text.length() > MAX_CHARS) {
      report.add(
          ProblemCode.LIMIT,
          1,
          1,
          "a script holds at most "
              + MAX_CHARS
              + " characters, this one has "
              + text.length()
              + "; move parts to files and `include` them");
      return false;
    }
    int line = 1;
    int column = 0;
    Deque<Character> open = new ArrayDeque<>();
    int signs = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      column++;
      if (c == '\n') {
        line++;
        column = 0;
        signs = open.isEmpty() || open.peek() == '{' ? 0 : signs;
      } else if (c == '(' || c == '[' || c == '{') {
        open.push(c);
        signs++;
      } else if (c == ')' || c == ']' || c == '}') {
        open.poll();
      } else if ("+-*/%<>=?:&|!~^".indexOf(c) >= 0) {
        signs++;
      } else if (c == ';') {
        signs = 0;
      }
      if (c == '{' || c == '}') {
        signs = 0;
      }
      String wrong = wrong(c, open.size(), signs, column);
      if (wrong != null) {
        report.add(
            wrong.startsWith("the character") ? ProblemCode.SYNTAX : ProblemCode.LIMIT,
            line,
            column,
            wrong);
        return false;
      }
    }
    return true;
  }

  private static String wrong(char c, int depth, int signs, int column) {
    if (depth > MAX_DEPTH) {
      return "brackets are nested more than " + MAX_DEPTH + " deep";
    }
    if (signs > MAX_SIGNS) {
      return "one statement holds more than " + MAX_SIGNS + " signs; split it";
    }
    if (column > MAX_LINE) {
      return "a line holds at most " + MAX_LINE + " characters";
    }
    if (Hidden.is(c)) {
      return Hidden.of(c);
    }
    return null;
  }
}
