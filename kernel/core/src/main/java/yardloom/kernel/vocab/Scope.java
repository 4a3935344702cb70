package yardloom.kernel.vocab;

import yardloom.kernel.problem.SourceRef;

/**
 * The block in which a word stands, at one place of the script.
 *
 * <p>The script layer calls {@link #at} before every word, so that each word knows the place it was
 * written at and what it makes can be traced to a line.
 */
public abstract class Scope {
  private final SourceRef place;

  protected Scope(SourceRef place) {
    this.place = place;
  }

  /** Where the word that is being read stands. */
  public final SourceRef place() {
    return place;
  }

  /** The same block, seen from another place of the script. */
  public abstract Scope at(SourceRef newPlace);

  /** How messages call a block of this type: {@code BedScope} is "bed". */
  public static String nameOf(Class<? extends Scope> type) {
    String name = type.getSimpleName();
    String bare = name.endsWith("Scope") ? name.substring(0, name.length() - 5) : name;
    return bare.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
  }
}
