package yardloom.kernel.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The known name nearest to a misspelt one.
 *
 * <p>Distance is the optimal string alignment distance (insert, delete, substitute, swap of
 * neighbours), case ignored; a name further than a third of its length (at least 1, at most 3) is
 * no suggestion. Ties go to the alphabetically first.
 *
 * <p>References: [1] F. J. Damerau, A technique for computer detection and correction of spelling
 * errors, Communications of the ACM 7(3), 1964, pp. 171-176.
 */
public final class Nearest {
  private Nearest() {}

  public static Optional<String> to(String wrong, Collection<String> known) {
    String low = wrong.toLowerCase(Locale.ROOT);
    int limit = Math.max(1, Math.min(3, (wrong.length() + 1) / 3));
    return known.stream()
        // As far apart as their lengths at least; what is not looked at costs nothing.
        .filter(k -> Math.abs(k.length() - wrong.length()) <= limit)
        .sorted(
            Comparator.<String>comparingInt(k -> distance(low, k.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()))
        .findFirst()
        .filter(best -> distance(low, best.toLowerCase(Locale.ROOT)) <= limit);
  }

  /** " Did you mean `bed`?" or nothing. */
  public static String hint(String wrong, Collection<String> known) {
    return to(wrong, known).map(best -> " Did you mean `" + best + "`?").orElse("");
  }

  /**
   * The known names that share a word of at least four letters with {@code wrong}, plurals and case
   * aside; at most five, sorted.
   */
  public static List<String> sharingAWord(String wrong, Collection<String> known) {
    Set<String> words = words(wrong);
    return known.stream()
        .filter(k -> words(k).stream().anyMatch(words::contains))
        .sorted()
        .limit(5)
        .toList();
  }

  private static Set<String> words(String name) {
    Set<String> words = new TreeSet<>();
    for (String word : name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
      String stem = word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
      if (stem.length() >= 4) {
        words.add(stem);
      }
    }
    return words;
  }

  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + cost);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
