package yardloom.program.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;

/**
 * Finds words by what is asked for: their own names first, then other names for the same thing,
 * then what their help, options and choices speak of. The order depends on the question and the
 * vocabulary only.
 */
public final class WordIndex {
  private static final DataTable OTHER_NAMES =
      DataTable.shipped(WordIndex.class, "other-names.csv");

  private static final int NAME = 8;
  private static final int OTHER_NAME = 6;
  private static final int HELP = 3;
  private static final int OPTIONS = 1;

  /**
   * What was found.
   *
   * @param where the block it stands in, such as {@code plan}
   * @param help what it does
   */
  public record Found(String name, String where, String help, int score) {}

  private record Entry(String name, String where, String help, String options) {}

  private final List<Entry> entries = new ArrayList<>();

  public WordIndex(Lexicon lexicon) {
    for (Word word : lexicon.all()) {
      StringBuilder options = new StringBuilder();
      for (Word.Parameter p : word.parameters()) {
        options.append(p.name()).append(' ').append(p.help()).append(' ');
        options.append(String.join(" ", p.choices())).append(' ');
      }
      String where = word.scope() == Scope.class ? "every block" : Scope.nameOf(word.scope());
      entries.add(new Entry(word.name(), where, word.help(), options + word.example()));
    }
    BuiltIn.ALL.forEach(b -> entries.add(new Entry(b.name(), "plan", b.help(), b.example())));
  }

  /** What answers the question, best first; nothing if nothing does. */
  public List<Found> search(String question) {
    String asked = question.toLowerCase(Locale.ROOT).strip();
    Set<String> meant = meant(asked);
    Set<String> tokens = tokens(asked);
    List<Found> found = new ArrayList<>();
    for (Entry entry : entries) {
      int score = score(entry, asked, tokens, meant);
      if (score > 0) {
        found.add(new Found(entry.name(), entry.where(), entry.help(), score));
      }
    }
    found.sort(
        Comparator.comparingInt(Found::score)
            .reversed()
            .thenComparing(Found::name)
            .thenComparing(Found::where));
    return found;
  }

  private static int score(Entry entry, String asked, Set<String> tokens, Set<String> meant) {
    String name = entry.name().toLowerCase(Locale.ROOT);
    if (tokens.isEmpty()) {
      return 0;
    }
    int score = 0;
    if (name.contains(asked.replace(" ", "")) || tokens(entry.name()).containsAll(tokens)) {
      score += NAME;
    }
    if (meant.contains(entry.name())) {
      score += OTHER_NAME;
    }
    if (tokens(entry.help()).containsAll(tokens)) {
      score += HELP;
    }
    if (tokens(entry.options()).containsAll(tokens)) {
      score += OPTIONS;
    }
    return score;
  }

  /** The names that stand for what is asked, also where only a part of the question has some. */
  private static Set<String> meant(String asked) {
    Set<String> meant = new LinkedHashSet<>();
    for (var row : OTHER_NAMES.rows()) {
      Set<String> term = tokens(row.text("asked"));
      if (tokens(asked).containsAll(term)) {
        meant.addAll(Arrays.asList(row.text("for").split(";")));
      }
    }
    return meant;
  }

  /** Words of a text, camel case parted, plurals and case aside. */
  static Set<String> tokens(String text) {
    Set<String> tokens = new TreeSet<>();
    String parted = text.replaceAll("(\\p{Ll})(\\p{Lu})", "$1 $2").toLowerCase(Locale.ROOT);
    for (String token : parted.split("[^\\p{L}\\p{N}]+")) {
      if (!token.isEmpty()) {
        tokens.add(
            token.length() > 3 && token.endsWith("s")
                ? token.substring(0, token.length() - 1)
                : token);
      }
    }
    return tokens;
  }
}
