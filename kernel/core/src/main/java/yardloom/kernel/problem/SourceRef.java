package yardloom.kernel.problem;

import java.util.Comparator;

/**
 * A place in a script or data file; lines and columns count from 1, 0 means unknown.
 *
 * @param file the file as the user named it
 */
public record SourceRef(String file, int line, int column) implements Comparable<SourceRef> {
  /** Nowhere in particular. */
  public static final SourceRef NONE = new SourceRef("", 0, 0);

  private static final Comparator<SourceRef> ORDER =
      Comparator.comparing(SourceRef::file)
          .thenComparingInt(SourceRef::line)
          .thenComparingInt(SourceRef::column);

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
