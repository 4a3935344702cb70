package yardloom.program.editor;

import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/** A script as an editor has it. Lines and columns of the protocol count from 0, in UTF-16. */
record OpenScript(String text, int version) {

  /** How many characters stand before a position; one behind a line's end is its end. */
  int offset(Position position) {
    int start = start(position.getLine());
    return Math.min(start + Math.max(0, position.getCharacter()), endOfLine(start));
  }

  Position position(int offset) {
    int line = 0;
    int start = 0;
    for (int next = after(start); next <= offset && next > start; next = after(start)) {
      if (next == text.length() && !endsLine(next)) {
        break;
      }
      line++;
      start = next;
    }
    return new Position(line, offset - start);
  }

  /** The name or mark at a place of a remark, or the whole line. */
  Range range(int line, int column) {
    int start = start(Math.max(0, line - 1));
    int end = endOfLine(start);
    if (column > 0 && start + column - 1 < end) {
      start += column - 1;
      int stop = start + 1;
      while (stop < end
          && Character.isJavaIdentifierPart(text.charAt(stop - 1))
          && Character.isJavaIdentifierPart(text.charAt(stop))) {
        stop++;
      }
      end = stop;
    }
    return new Range(position(start), position(end));
  }

  private int start(int line) {
    int start = 0;
    for (int i = 0; i < line; i++) {
      int next = after(start);
      if (!endsLine(next)) {
        return text.length();
      }
      start = next;
    }
    return start;
  }

  private boolean endsLine(int next) {
    return next > 0 && (text.charAt(next - 1) == '\n' || text.charAt(next - 1) == '\r');
  }

  private int endOfLine(int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  /** Where the line behind that of {@code start} begins; the end of the text if there is none. */
  private int after(int start) {
    int end = endOfLine(start);
    if (end == text.length()) {
      return end;
    }
    return text.startsWith("\r\n", end) ? end + 2 : end + 1;
  }
}
