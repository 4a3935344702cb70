package yardloom.kernel.draw;

import yardloom.kernel.source.Source;

/** A warning printed on the sheet where work can hurt someone. */
public record Caution(String text, Source source, When when) {
  /** When it has to be read, in the order of printing. */
  public enum When {
    /** Before anybody sets foot or spade on the lot. */
    BEFORE_WORK,
    /** With the work it speaks of. */
    AT_WORK
  }

  /** A caution to be read with the work it speaks of. */
  public Caution(String text, Source source) {
    this(text, source, When.AT_WORK);
  }
}
