package yardloom.facts;

import java.util.Optional;
import yardloom.kernel.source.Source;

/**
 * Whom to ask for marks of buried lines where the yard lies.
 *
 * @param call what to do, such as {@code call 811 some working days before}
 */
public record DigCall(String call, Source source) {
  /** Stands in shipped texts where {@link #inBrackets} goes. */
  public static final String IN_TEXT = "{dig call}";

  /** {@code (call 811 …)} with a space before it, or nothing where nobody is known. */
  public static String inBrackets(Optional<DigCall> known) {
    return known.map(c -> " (" + c.call() + ")").orElse("");
  }
}
