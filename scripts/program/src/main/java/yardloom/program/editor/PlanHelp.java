package yardloom.program.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Word;
import yardloom.program.words.BuiltIn;
import yardloom.program.words.Help;
import yardloom.program.words.Lists;

/**
 * What an editor shows at a place of a plan: what may be written there, and what stands there. All
 * of it comes from the vocabulary, so the words of any plugin come along.
 */
public final class PlanHelp {
  /** Which arguments name a row of which list. */
  private static final DataTable ROWS = DataTable.shipped(PlanHelp.class, "rows.csv");

  private static final Pattern NAMES = Pattern.compile("\\bdef\\s+(\\p{Alpha}\\w*)");

  private final Plugins plugins;
  private final Lexicon lexicon;

  public PlanHelp(Plugins plugins) {
    this.plugins = plugins;
    this.lexicon = plugins.lexicon();
  }

  /**
   * What may be written at a place.
   *
   * @param start where the part begins that stands there already
   */
  public record Suggestions(int start, List<Suggestion> all) {}

  /** What may be written at the place {@code at}; nothing in comments. */
  public Suggestions suggestions(String text, int at) {
    WritingPlace place = PlaceReader.at(lexicon, text, at);
    return new Suggestions(place.start(), suggested(place, text));
  }

  private List<Suggestion> suggested(WritingPlace place, String text) {
    return switch (place.kind()) {
      case STATEMENT -> statements(place);
      case VALUE -> values(place, text);
      case UNIT -> units();
      case TEXT -> inText(place, "");
      case NOTHING -> List.of();
    };
  }

  /** What stands at the place {@code at}, in Markdown; empty where the language knows nothing. */
  public Optional<String> explanation(String text, int at) {
    if (at < 0 || at > text.length()) {
      return Optional.empty();
    }
    WritingPlace place = PlaceReader.at(lexicon, text, at);
    if (place.kind() == WritingPlace.Kind.TEXT) {
      String said = text.substring(place.start(), endOfText(text, at));
      return inText(place, "").stream()
          .filter(s -> s.label().equals(said) && !s.help().isEmpty())
          .map(Suggestion::help)
          .findFirst();
    }
    int end = at;
    while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
      end++;
    }
    WritingPlace whole = PlaceReader.at(lexicon, text, end);
    boolean isOption = text.startsWith(":", end) && whole.kind() != WritingPlace.Kind.UNIT;
    return switch (whole.kind()) {
      case STATEMENT, VALUE -> isOption ? option(whole) : word(whole);
      case UNIT -> Unit.byWord(whole.part()).map(PlanHelp::of);
      case TEXT, NOTHING -> Optional.empty();
    };
  }

  private static int endOfText(String text, int at) {
    int end = at;
    while (end < text.length() && "'\"\n".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return end;
  }

  private Optional<String> word(WritingPlace place) {
    Optional<String> builtIn =
        BuiltIn.ALL.stream()
            .filter(b -> b.name().equals(place.part()))
            .map(PlanHelp::of)
            .findFirst();
    return lexicon.word(place.block(), place.part()).map(PlanHelp::of).or(() -> builtIn);
  }

  private static Optional<String> option(WritingPlace place) {
    return place.word().stream()
        .flatMap(w -> w.options().stream())
        .filter(p -> p.name().equals(place.part()))
        .map(PlanHelp::of)
        .findFirst();
  }

  private List<Suggestion> statements(WritingPlace place) {
    List<Suggestion> all = new ArrayList<>();
    lexicon.words(place.block()).forEach(w -> all.add(suggestion(w)));
    if (place.block() == PlanScope.class) {
      BuiltIn.ALL.forEach(b -> all.add(suggestion(b)));
    }
    return all;
  }

  private List<Suggestion> values(WritingPlace place, String text) {
    List<Suggestion> all = new ArrayList<>();
    place.parameter().ifPresent(p -> all.addAll(inText(place, "'")));
    if (place.option().isEmpty()) {
      place.word().stream()
          .flatMap(w -> w.options().stream())
          .filter(p -> !place.given().contains(p.name()))
          .forEach(p -> all.add(suggestion(p)));
    }
    lexicon.words(place.block()).stream()
        .filter(w -> place.word().isEmpty() || givesValue(w))
        .forEach(w -> all.add(suggestion(w)));
    TreeSet<String> names = new TreeSet<>();
    NAMES.matcher(text).results().forEach(found -> names.add(found.group(1)));
    names.forEach(
        n -> all.add(new Suggestion(Suggestion.Kind.NAME, n, n, "a name of this plan", "")));
    return all;
  }

  private static boolean givesValue(Word word) {
    return word.method().getReturnType() != void.class;
  }

  /** The texts that the parameter of a place knows, within marks if none are written yet. */
  private List<Suggestion> inText(WritingPlace place, String mark) {
    Optional<Word.Parameter> parameter = place.parameter();
    if (parameter.isEmpty()) {
      return List.of();
    }
    Word.Parameter asked = parameter.get();
    List<Suggestion> all = new ArrayList<>();
    for (String choice : asked.choices()) {
      all.add(
          new Suggestion(
              Suggestion.Kind.CHOICE, choice, mark + choice + mark, asked.name(), of(asked)));
    }
    if (asked.type() == Boolean.class && !mark.isEmpty()) {
      for (String choice : List.of("true", "false")) {
        all.add(new Suggestion(Suggestion.Kind.CHOICE, choice, choice, asked.name(), of(asked)));
      }
    }
    ROWS.rows().stream()
        .filter(r -> r.text("word").equals(place.word().orElseThrow().name()))
        .filter(r -> r.text("parameter").equals(asked.name()))
        .flatMap(r -> rows(r.text("list"), mark))
        .forEach(all::add);
    return all;
  }

  private Stream<Suggestion> rows(String list, String mark) {
    Optional<Catalogue> catalogue =
        plugins.each(YardPlugin::catalogues).filter(c -> c.name().equals(list)).findFirst();
    if (catalogue.isPresent()) {
      return catalogue.get().rows().stream().map(r -> row(r, list, mark));
    }
    return Lists.of(list, plugins).stream()
        .flatMap(List::stream)
        .map(String::strip)
        .map(n -> new Suggestion(Suggestion.Kind.ROW, n, mark + n + mark, list, ""));
  }

  private static Suggestion row(Catalogue.Row row, String list, String mark) {
    StringBuilder help = new StringBuilder("**" + row.name() + "** (" + list + ")\n\n");
    row.traits()
        .forEach(
            (trait, said) ->
                help.append("- ").append(trait).append(": ").append(said).append('\n'));
    return new Suggestion(
        Suggestion.Kind.ROW, row.name(), mark + row.name() + mark, list, help.toString());
  }

  private static List<Suggestion> units() {
    List<Suggestion> all = new ArrayList<>();
    for (Dimension dimension : Dimension.values()) {
      Unit.of(dimension)
          .forEach(
              u ->
                  all.add(
                      new Suggestion(
                          Suggestion.Kind.UNIT, u.word(), u.word(), dimension.word(), of(u))));
    }
    return all;
  }

  private static Suggestion suggestion(Word word) {
    return new Suggestion(
        Suggestion.Kind.WORD, word.name(), word.name(), word.signature(), of(word));
  }

  private static Suggestion suggestion(BuiltIn word) {
    return new Suggestion(
        Suggestion.Kind.WORD, word.name(), word.name(), word.signature(), of(word));
  }

  private static Suggestion suggestion(Word.Parameter option) {
    return new Suggestion(
        Suggestion.Kind.OPTION,
        option.name(),
        option.name() + ": ",
        Help.type(option.type()) + (option.required() ? ", required" : ""),
        of(option));
  }

  private static String of(Word word) {
    StringBuilder help = new StringBuilder("`" + word.signature() + "`\n\n" + word.help() + "\n\n");
    word.parameters().forEach(p -> help.append("- ").append(of(p)).append('\n'));
    return help + "\n```groovy\n" + word.example() + "\n```\n";
  }

  private static String of(BuiltIn word) {
    return "`"
        + word.signature()
        + "`\n\n"
        + word.help()
        + "\n\n```groovy\n"
        + word.example()
        + "\n```\n";
  }

  private static String of(Word.Parameter parameter) {
    return "`"
        + parameter.name()
        + "` ("
        + Help.type(parameter.type())
        + ") "
        + Help.of(parameter)
        + (parameter.required() ? " (required)" : " (without it: " + parameter.fallback() + ")");
  }

  private static String of(Unit unit) {
    return "`"
        + unit.word()
        + "`: a unit of "
        + unit.dimension().word()
        + (unit.symbol().isEmpty() ? "" : ", printed as " + unit.symbol())
        + (unit.also().isEmpty() ? "" : "; also " + String.join(", ", unit.also()));
  }
}
