package yardloom.kernel.draw;

import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.SheetUse;

/**
 * A warning printed once in a set, where work can hurt someone; two lines of a sheet are room for
 * about 110 letters. Its source stands in the report.
 *
 * @param where the sheet of the work it speaks of; empty for the sheet that all begin with
 */
public record Caution(String text, Source source, When when, Optional<SheetUse> where) {
  /** When it has to be read, in the order of printing. */
  public enum When {
    /** Before anybody sets foot or spade on the lot. */
    BEFORE_WORK,
    /** With the work it speaks of. */
    AT_WORK
  }

  /** A caution for the sheet that all begin with. */
  public Caution(String text, Source source, When when) {
    this(text, source, when, Optional.empty());
  }

  /** A caution to be read with the work it speaks of. */
  public Caution(String text, Source source) {
    this(text, source, When.AT_WORK);
  }

  /** The same on the sheet of that work. */
  public Caution on(SheetUse sheet) {
    return new Caution(text, source, when, Optional.of(sheet));
  }
}
