package yardloom.language.text;

import java.util.Locale;
import java.util.Optional;

/**
 * Signs that nobody sees: control characters but line ends and tabs, and formatting marks such as
 * those that turn the direction of writing. Printed, they could steer a terminal or make a text
 * read as another.
 */
public final class Hidden {
  /** Joiners, the soft hyphen and the mark of byte order. */
  private static final String WITHIN_WORDS = "\u200C\u200D\u00AD\uFEFF";

  private Hidden() {}

  public static boolean is(char c) {
    boolean control = Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t';
    return control || Character.getType(c) == Character.FORMAT;
  }

  /** What to say of the first hidden sign of a text; empty if it has none. */
  public static Optional<String> in(String text) {
    return text.chars().filter(c -> is((char) c)).mapToObj(c -> of((char) c)).findFirst();
  }

  /**
   * What to say of the first hidden sign of a data file, behind its line; empty if it has none.
   * Marks that some languages write within words may stand there.
   */
  public static Optional<String> inData(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (is(c) && WITHIN_WORDS.indexOf(c) < 0) {
        long line = 1 + text.substring(0, i).chars().filter(b -> b == '\n').count();
        return Optional.of(":" + line + ": " + of(c));
      }
    }
    return Optional.empty();
  }

  /** What to say of a hidden sign. */
  public static String of(char c) {
    return String.format(
        Locale.ROOT,
        "the character U+%04X is invisible and has no place in a plan; delete it",
        (int) c);
  }
}
