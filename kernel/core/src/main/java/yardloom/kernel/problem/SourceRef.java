package yardloom.kernel.problem;

import java.util.Comparator;

/**
 * A place in a script or data file; lines and columns count from 1, 0 means unknown.
 *
 * @param file the file as the user named it
 * @param calledFrom the line of the same file that called the helper this place lies in, the
 *     outermost where helpers call each other; 0 outside helpers
 */
public record SourceRef(String file, int line, int column, int calledFrom)
    implements Comparable<SourceRef> {
  /** Nowhere in particular. */
  public static final SourceRef NONE = new SourceRef("", 0, 0);

  private static final Comparator<SourceRef> ORDER =
      Comparator.comparing(SourceRef::file)
          .thenComparingInt(SourceRef::line)
          .thenComparingInt(SourceRef::column)
          .thenComparingInt(SourceRef::calledFrom);

  /** A place outside helpers. */
  public SourceRef(String file, int line, int column) {
    this(file, line, column, 0);
  }

  /** How it begins a message: {@code file:line:column: }, then the line that called a helper. */
  public String before() {
    String where = toString();
    return (where.isEmpty() ? "" : where + ": ")
        + (calledFrom == 0 ? "" : "called from line " + calledFrom + ": ");
  }

  @Override
  public int compareTo(SourceRef other) {
    return ORDER.compare(this, other);
  }

  /** {@code file:line:column}, leaving out what is unknown. */
  @Override
  public String toString() {
    if (line == 0) {
      return file;
    }
    return file + ":" + line + (column == 0 ? "" : ":" + column);
  }
}
