package yardloom.program.explain;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The words of a text, as they are compared: small letters, no plural s. */
final class QuestionWords {
  private static final Set<String> SAY_NOTHING =
      Set.of(
          "a", "all", "an", "and", "are", "at", "by", "do", "does", "for", "how", "i", "in", "is",
          "it", "many", "much", "of", "on", "the", "this", "to", "what", "why");

  /** What people say for what the tables call otherwise. */
  private static final List<Set<String>> SAME =
      List.of(
          Set.of("mulch", "chip"),
          Set.of("cost", "price", "money"),
          Set.of("labour", "labor", "work"),
          Set.of("autumn", "fall"),
          Set.of("drip", "dripline"),
          Set.of("yield", "harvest"),
          Set.of("run", "time"),
          Set.of("size", "area"),
          Set.of("number", "count"),
          Set.of("weight", "weigh"));

  private static final Set<String> NAMES_OF_MONTHS =
      Set.of(
          "january",
          "february",
          "march",
          "april",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  private static final int BEGINNING = 4;

  private QuestionWords() {}

  /** All words of {@code text}, in order. */
  static Set<String> of(String text) {
    Set<String> words = new LinkedHashSet<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
      if (!word.isEmpty()) {
        words.add(stem(word));
      }
    }
    return words;
  }

  /** The words of a question that say what is asked for. */
  static Set<String> asked(String question) {
    Set<String> words = of(question);
    words.removeAll(SAY_NOTHING);
    return words;
  }

  private static String stem(String word) {
    boolean isPlural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss");
    return isPlural ? word.substring(0, word.length() - 1) : word;
  }

  /** Whether an asked word means a said one: the same, its beginning, or another name for it. */
  static boolean means(String asked, String said) {
    return asked.equals(said)
        || asked.length() >= BEGINNING && said.startsWith(asked)
        || isMonth(asked, said)
        || SAME.stream().anyMatch(s -> s.contains(asked) && s.contains(said));
  }

  /** Tables shorten the names of months. */
  private static boolean isMonth(String asked, String said) {
    return said.length() == 3 && asked.startsWith(said) && NAMES_OF_MONTHS.contains(asked);
  }

  static boolean means(String asked, Set<String> said) {
    return said.stream().anyMatch(s -> means(asked, s));
  }
}
