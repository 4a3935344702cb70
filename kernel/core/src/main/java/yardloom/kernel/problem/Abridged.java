package yardloom.kernel.problem;

import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps messages readable whatever the plan holds: quoted names and single words are cut after
 * {@value #KEPT} characters, numbers of more than {@value #DIGITS} digits are shown by powers of
 * ten. File paths stay whole, as people copy them.
 */
final class Abridged {
  private static final int KEPT = 60;
  private static final int DIGITS = 21;

  /** Not within a word or path, whose digits are a name. */
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w./\\\\-])\\d{" + (DIGITS + 1) + ",}(\\.\\d+)?");

  /** A quote that opens after a space or bracket and closes before one, so no apostrophe. */
  private static final Pattern QUOTED =
      Pattern.compile("(?<![^\\s(\\[{,])([\"'`])([^\\n]{" + (KEPT + 1) + ",}?)\\1(?![\\w])");

  private static final Pattern WORD = Pattern.compile("[^\\s/\\\\]{" + (2 * KEPT) + ",}");

  private Abridged() {}

  static String of(String message) {
    String numbers =
        NUMBER
            .matcher(message)
            .replaceAll(m -> String.format(Locale.ROOT, "%.3g", Double.parseDouble(m.group())));
    String quoted = QUOTED.matcher(numbers).replaceAll(m -> Matcher.quoteReplacement(quoted(m)));
    return WORD.matcher(quoted)
        .replaceAll(m -> Matcher.quoteReplacement(m.group().substring(0, KEPT) + "…"));
  }

  private static String quoted(MatchResult found) {
    String name = found.group(2);
    // A shorter quotation may have ended here, and what follows is the sentence.
    boolean kept = name.contains(found.group(1)) || name.contains("/") || name.contains("\\");
    return kept ? found.group() : found.group(1) + name.substring(0, KEPT) + "…" + found.group(1);
  }
}
