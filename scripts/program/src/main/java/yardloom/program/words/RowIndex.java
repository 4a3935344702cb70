package yardloom.program.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Unit;

/** Rows of the lists by name, for whoever asks for a tomato where words are asked for. */
public final class RowIndex {
  private final Plugins plugins;

  public RowIndex(Plugins plugins) {
    this.plugins = plugins;
  }

  /**
   * A row that has the name.
   *
   * @param name as plans name it
   * @param list the list that holds it
   */
  public record Found(String name, String list) {}

  /**
   * Rows with all words of the question in their name, or a unit one of whose spellings it is; in
   * the order of the lists, without regard to case and plurals. None for a blank question.
   */
  public List<Found> search(String question) {
    Set<String> asked = parts(question);
    List<Found> found = new ArrayList<>();
    if (asked.isEmpty()) {
      return found;
    }
    plugins.each(YardPlugin::catalogues).forEach(list -> rows(list, asked).forEach(found::add));
    for (Dimension dimension : Dimension.values()) {
      Unit.of(dimension).stream()
          .filter(u -> spellings(u).anyMatch(s -> s.equalsIgnoreCase(question.strip())))
          .forEach(u -> found.add(new Found(u.word(), "units")));
    }
    return found;
  }

  private static Stream<Found> rows(Catalogue list, Set<String> asked) {
    return list.rows().stream()
        .map(Catalogue.Row::name)
        .filter(name -> parts(name).containsAll(asked))
        .distinct()
        .map(name -> new Found(name, list.name()));
  }

  private static Set<String> parts(String text) {
    return WordIndex.tokens(text.toLowerCase(Locale.ROOT));
  }

  private static Stream<String> spellings(Unit unit) {
    return Stream.concat(Stream.of(unit.word(), unit.symbol()), unit.also().stream());
  }
}
