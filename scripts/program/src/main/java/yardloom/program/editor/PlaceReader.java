package yardloom.program.editor;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;

/**
 * Reads a script up to a place and says what surrounds it. The text is being written, so it need
 * not be whole: only marks, names and brackets are read, never the grammar, and nothing is refused.
 */
final class PlaceReader {
  private final Lexicon lexicon;
  private final String text;
  private final int end;
  private final Deque<Frame> open = new ArrayDeque<>();
  private int at;
  private char before = '\n';
  private Word lastName;

  /** A bracket that is open, or the script itself. */
  private static final class Frame {
    private final char bracket;
    private final Class<? extends Scope> block;
    private Word word;
    private boolean begins = true;
    private Set<String> given = new TreeSet<>();
    private String option;
    private int argument;

    private Frame(char bracket, Class<? extends Scope> block, Word word) {
      this.bracket = bracket;
      this.block = block;
      this.word = word;
    }

    private boolean isBlock() {
      return bracket == '{';
    }

    private void nextStatement() {
      word = null;
      begins = true;
      given = new TreeSet<>();
      option = null;
      argument = 0;
    }
  }

  private PlaceReader(Lexicon lexicon, String text, int end) {
    this.lexicon = lexicon;
    this.text = text;
    this.end = end;
    open.push(new Frame('{', PlanScope.class, null));
  }

  /** What surrounds the place {@code end}, counted in characters from the start. */
  static Place at(Lexicon lexicon, String text, int end) {
    return new PlaceReader(lexicon, text, Math.max(0, Math.min(end, text.length()))).read();
  }

  private Place read() {
    while (at < end) {
      char c = text.charAt(at);
      if (text.startsWith("//", at) || text.startsWith("/*", at)) {
        int close = c == text.charAt(at + 1) ? find("\n", at) : find("*/", at + 2);
        if (close < 0 || close >= end) {
          return place(Place.Kind.NOTHING, end);
        }
        at = text.charAt(close) == '\n' ? close : close + 2;
      } else if (c == '\'' || c == '"') {
        int begin = at;
        if (!skipText(c)) {
          return place(Place.Kind.TEXT, begin + marks(begin, c).length());
        }
        before = c;
      } else if (Character.isJavaIdentifierStart(c)) {
        int begin = at;
        while (at < end && Character.isJavaIdentifierPart(text.charAt(at))) {
          at++;
        }
        if (at == end) {
          return place(kind(begin), begin);
        }
        name(text.substring(begin, at));
      } else if (Character.isDigit(c)) {
        number();
      } else {
        mark(c);
        at++;
      }
    }
    return place(kind(end), end);
  }

  private int find(String mark, int from) {
    return text.indexOf(mark, from);
  }

  private String marks(int begin, char quote) {
    String three = String.valueOf(quote).repeat(3);
    return text.startsWith(three, begin) ? three : String.valueOf(quote);
  }

  /** Goes behind a text; false if it is still open at the end. */
  private boolean skipText(char quote) {
    String close = marks(at, quote);
    at += close.length();
    while (at < end && !text.startsWith(close, at)) {
      if (close.length() == 1 && text.charAt(at) == '\n') {
        return true;
      }
      at += text.charAt(at) == '\\' ? 2 : 1;
    }
    if (at >= end) {
      return false;
    }
    at += close.length();
    open.peek().begins = false;
    return true;
  }

  /** What may stand where a name begins. */
  private Place.Kind kind(int begin) {
    char last = begin == 0 ? '\n' : text.charAt(begin - 1);
    if (last == '.') {
      char owner = begin < 2 ? ' ' : text.charAt(begin - 2);
      return Character.isDigit(owner) || owner == ')' ? Place.Kind.UNIT : Place.Kind.NOTHING;
    }
    Frame frame = open.peek();
    return frame.isBlock() && frame.begins && frame.option == null
        ? Place.Kind.STATEMENT
        : Place.Kind.VALUE;
  }

  private void number() {
    while (at < end && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '_')) {
      at++;
    }
    boolean fraction =
        at + 1 < end && text.charAt(at) == '.' && Character.isDigit(text.charAt(at + 1));
    if (fraction) {
      at++;
      number();
    }
    before = '0';
    open.peek().begins = false;
  }

  private void name(String name) {
    Frame frame = open.peek();
    lastName = null;
    int next = at;
    while (next < text.length() && text.charAt(next) == ' ') {
      next++;
    }
    if (before != '.') {
      if (next < text.length() && text.charAt(next) == ':' && before != '?') {
        frame.given.add(name);
        frame.option = name;
      } else if (!name.equals("def")) {
        lastName = lexicon.word(frame.block, name).orElse(null);
        if (frame.isBlock() && frame.word == null) {
          frame.word = lastName;
        }
      }
    }
    frame.begins = false;
    before = 'a';
  }

  private void mark(char c) {
    Frame frame = open.peek();
    switch (c) {
      case '(', '[' -> {
        frame.begins = false;
        open.push(new Frame(c, frame.block, c == '(' ? lastName : null));
      }
      case '{' -> {
        frame.begins = false;
        Class<? extends Scope> block =
            Optional.ofNullable(frame.word)
                .<Class<? extends Scope>>flatMap(Word::inner)
                .orElse(frame.block);
        open.push(new Frame(c, block, null));
      }
      case ')', ']', '}' -> {
        if (open.size() > 1) {
          open.pop();
        }
      }
      case ',' -> {
        if (frame.option == null) {
          frame.argument++;
        }
        frame.option = null;
      }
      case '\n' -> {
        if (frame.isBlock() && before != ',' && before != '=') {
          frame.nextStatement();
        }
      }
      case ';', '>' -> {
        // Behind an arrow the body of a closure begins.
        if (frame.isBlock() && (c == ';' || before == '-')) {
          frame.nextStatement();
        }
      }
      case '=' -> {
        if (frame.isBlock()) {
          frame.nextStatement();
        }
      }
      default -> {
        frame.begins &= Character.isWhitespace(c) || c == '.';
      }
    }
    if (c == '\n' || !Character.isWhitespace(c)) {
      before = before == ',' && c == '\n' ? before : c;
    }
    if (c != ' ') {
      lastName = null;
    }
  }

  private Place place(Place.Kind kind, int start) {
    Frame frame = open.peek();
    return new Place(
        kind,
        frame.block,
        Optional.ofNullable(frame.word),
        frame.given,
        Optional.ofNullable(frame.option),
        frame.argument,
        start,
        text.substring(start, Math.max(start, end)));
  }
}
