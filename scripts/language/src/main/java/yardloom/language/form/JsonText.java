package yardloom.language.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.language.text.Hidden;

/**
 * Reads JSON text, keeping the place of every value.
 *
 * <p>Strict: no comments, no comma behind the last value, no name twice in one object, no number
 * beyond a double's range, no invisible characters. What would run long or deep is refused: nesting
 * beyond {@link #MAX_DEPTH}, more than {@link #MAX_VALUES} values. The first fault ends the
 * reading.
 *
 * <p>References: [1] RFC 8259, The JavaScript Object Notation (JSON) Data Interchange Format, IETF,
 * 2017. [2] RFC 7493, The I-JSON Message Format, IETF, 2015, 2.3 (names are unique).
 */
final class JsonText {
  static final int MAX_DEPTH = 60;
  static final int MAX_VALUES = 400_000;

  private static final int LONGEST_NUMBER = 40;

  private final String file;
  private final String text;
  private int at;
  private int line = 1;
  private int lineStart;
  private int values;

  private JsonText(String text, String file) {
    this.text = text;
    this.file = file;
  }

  /**
   * The value that {@code text} holds.
   *
   * @throws PlanException (SYNTAX, DUPLICATE, LIMIT) with file, line and column
   */
  static Json read(String text, String file) {
    JsonText reader = new JsonText(text, file);
    reader.blanks();
    Json value = reader.value(0);
    reader.blanks();
    if (reader.at < text.length()) {
      throw reader.wrong("nothing may follow the plan's closing brace");
    }
    return value;
  }

  private Json value(int depth) {
    if (depth > MAX_DEPTH) {
      throw refused(ProblemCode.LIMIT, "values are nested more than " + MAX_DEPTH + " deep");
    }
    if (++values > MAX_VALUES) {
      throw refused(
          ProblemCode.LIMIT,
          String.format(Locale.ROOT, "the plan holds more than %,d values", MAX_VALUES));
    }
    int l = line;
    int c = column();
    char first = peek();
    return switch (first) {
      case '{' -> object(l, c, depth);
      case '[' -> list(l, c, depth);
      case '"' -> new Json.Text(l, c, string());
      case 't' -> word("true", new Json.Truth(l, c, true));
      case 'f' -> word("false", new Json.Truth(l, c, false));
      case 'n' -> word("null", new Json.Nothing(l, c));
      default -> {
        if (first == '-' || first >= '0' && first <= '9') {
          yield new Json.Num(l, c, number());
        }
        throw wrong(
            at >= text.length()
                ? "the text ends where a value is needed"
                : "a value is needed here: {, [, \", a number, true or false");
      }
    };
  }

  private Json object(int l, int c, int depth) {
    List<Json.Member> members = new ArrayList<>();
    Set<String> names = new HashSet<>();
    at++;
    blanks();
    while (peek() != '}') {
      if (!members.isEmpty()) {
        comma('}');
      }
      int nameLine = line;
      int nameColumn = column();
      if (peek() != '"') {
        throw wrong("a name in double quotes is needed here");
      }
      String name = string();
      if (!names.add(name)) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            new SourceRef(file, nameLine, nameColumn),
            "the name \"" + name + "\" is given twice in one object");
      }
      blanks();
      if (peek() != ':') {
        throw wrong("a colon is needed behind the name \"" + name + "\"");
      }
      at++;
      blanks();
      members.add(new Json.Member(nameLine, nameColumn, name, value(depth + 1)));
      blanks();
    }
    at++;
    return new Json.Obj(l, c, List.copyOf(members));
  }

  private Json list(int l, int c, int depth) {
    List<Json> items = new ArrayList<>();
    at++;
    blanks();
    while (peek() != ']') {
      if (!items.isEmpty()) {
        comma(']');
      }
      items.add(value(depth + 1));
      blanks();
    }
    at++;
    return new Json.Items(l, c, List.copyOf(items));
  }

  private void comma(char end) {
    if (peek() != ',') {
      throw wrong("a comma or " + end + " is needed here");
    }
    at++;
    blanks();
    if (peek() == end) {
      throw wrong("nothing follows the last comma; delete it");
    }
  }

  private Json word(String word, Json made) {
    if (!text.startsWith(word, at)) {
      throw wrong("a value is needed here: {, [, \", a number, true or false");
    }
    at += word.length();
    return made;
  }

  private Number number() {
    int from = at;
    while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    String digits = text.substring(from, at);
    if (digits.length() > LONGEST_NUMBER) {
      at = from;
      throw refused(
          ProblemCode.LIMIT, "a number has at most " + LONGEST_NUMBER + " characters here");
    }
    if (!digits.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?")) {
      at = from;
      throw wrong("'" + digits + "' is no number");
    }
    if (digits.matches("-?[0-9]{1,18}")) {
      long whole = Long.parseLong(digits);
      if (whole == (int) whole) {
        return (int) whole;
      }
      return whole;
    }
    double value = Double.parseDouble(digits);
    if (!Double.isFinite(value)) {
      at = from;
      throw refused(ProblemCode.OUT_OF_RANGE, "the number " + digits + " is too large");
    }
    return value;
  }

  private String string() {
    StringBuilder made = new StringBuilder();
    at++;
    while (true) {
      if (at >= text.length() || text.charAt(at) == '\n') {
        throw wrong("the text is not closed; a double quote is missing");
      }
      char c = text.charAt(at);
      if (c == '"') {
        at++;
        return made.toString();
      }
      if (c == '\\') {
        escaped(made);
      } else {
        require(c);
        made.append(c);
        at++;
      }
    }
  }

  private void escaped(StringBuilder made) {
    char kind = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
    int plain = "\"\\/bfnrt".indexOf(kind);
    if (plain >= 0) {
      char c = "\"\\/\b\f\n\r\t".charAt(plain);
      require(c);
      made.append(c);
      at += 2;
      return;
    }
    char c = unit();
    if (Character.isHighSurrogate(c)) {
      char low = ' ';
      if (text.startsWith("\\u", at + 6)) {
        at += 6;
        low = unit();
        at -= 6;
      }
      if (!Character.isLowSurrogate(low)) {
        throw wrong("half of a pair of \\u is missing");
      }
      made.append(c).append(low);
      at += 12;
    } else if (Character.isLowSurrogate(c)) {
      throw wrong("half of a pair of \\u is missing");
    } else {
      require(c);
      made.append(c);
      at += 6;
    }
  }

  private char unit() {
    String hex = at + 6 <= text.length() ? text.substring(at + 2, at + 6) : "";
    if (!text.startsWith("\\u", at) || !hex.matches("[0-9a-fA-F]{4}")) {
      throw wrong("a backslash stands before one of \" \\ / n t or uXXXX");
    }
    return (char) Integer.parseInt(hex, 16);
  }

  /** What a script may not hold, a text may not either. */
  private void require(char c) {
    if (Hidden.is(c)) {
      throw wrong(Hidden.of(c));
    }
  }

  private void blanks() {
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '\n') {
        line++;
        lineStart = at + 1;
      } else if (c != ' ' && c != '\t' && c != '\r') {
        return;
      }
      at++;
    }
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }

  private int column() {
    return at - lineStart + 1;
  }

  private PlanException wrong(String message) {
    return refused(ProblemCode.SYNTAX, message);
  }

  private PlanException refused(ProblemCode code, String message) {
    return new PlanException(code, new SourceRef(file, line, column()), message);
  }
}
