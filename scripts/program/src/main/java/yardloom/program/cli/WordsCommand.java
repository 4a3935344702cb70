package yardloom.program.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.form.FormSchema;
import yardloom.program.words.BuiltIn;
import yardloom.program.words.Help;
import yardloom.program.words.Lists;
import yardloom.program.words.RowIndex;
import yardloom.program.words.WordIndex;

/** Explains the words of the plan language. */
@Command(
    name = "words",
    description = {
      "List the words of the plan language, explain one, or find those for a topic.",
      "The name of a catalogue lists its rows; TRAIT:TEXT keeps those that say so."
    },
    footer = {
      "",
      "Examples:",
      "  yardloom words sheetMulch",
      "  yardloom words rain barrel",
      "  yardloom words units",
      "  yardloom words plants light:shade water:low",
      "  yardloom words --as schema > plan.schema.json"
    })
final class WordsCommand implements Callable<Integer> {
  /** Of a topic, no more than can be read at a glance. */
  private static final int MOST = 15;

  @ParentCommand private Main main;

  private final Console console;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "WORD",
      description = "The word to explain, or a catalogue.")
  private Optional<String> word;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "TRAIT:TEXT",
      description = "What rows of a catalogue must say, such as light:shade.")
  private List<String> asked = List.of();

  /** Other forms of the vocabulary. */
  enum Form {
    /** JSON Schema 2020-12 of plans in JSON form. */
    SCHEMA
  }

  @Option(
      names = "--as",
      paramLabel = "FORM",
      description =
          "Print all words for programs: schema is the JSON Schema of plans as JSON, for editors"
              + " and for what writes such plans.")
  private Optional<Form> form;

  @Mixin private HelpOption help;

  WordsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Plugins plugins = main.toolkit().plugins();
    Lexicon lexicon = plugins.lexicon();
    if (form.isPresent()) {
      console.say(FormSchema.of(lexicon));
      return ExitCode.FINE;
    }
    if (word.isEmpty()) {
      list(lexicon);
      console.say("of the language itself:");
      BuiltIn.ALL.forEach(
          b ->
              Wrapped.of(String.format("  %-16s %s", b.name(), Help.firstSentence(b.help())), 19)
                  .forEach(console::say));
      console.say("lists, by `yardloom words NAME`: " + String.join(", ", lists(plugins)));
      return ExitCode.FINE;
    }
    Optional<Catalogue> catalogue =
        plugins.each(YardPlugin::catalogues).filter(c -> c.name().equals(word.get())).findFirst();
    if (catalogue.isPresent()) {
      return new CatalogueList(console).print(catalogue.get(), asked);
    }
    List<Word> found = lexicon.all().stream().filter(w -> w.name().equals(word.get())).toList();
    if (found.isEmpty()) {
      return other(plugins);
    }
    for (Word each : found) {
      explain(each).forEach(line -> Wrapped.of(line, 6).forEach(console::say));
    }
    Lists.of(word.get(), plugins)
        .ifPresent(
            lines -> {
              console.say("of that name there is a list too:");
              lines.forEach(console::say);
            });
    return ExitCode.FINE;
  }

  /** No word is called so: a list, a word of the language itself, or a topic. */
  private int other(Plugins plugins) {
    String name = word.orElseThrow();
    Optional<List<String>> list = Lists.of(name, plugins);
    if (list.isPresent()) {
      list.get().forEach(line -> Wrapped.of(line, 6).forEach(console::say));
      return ExitCode.FINE;
    }
    for (BuiltIn each : BuiltIn.ALL) {
      if (each.name().equals(name)) {
        console.say(each.signature() + "   (in the block of plan: the language itself)");
        Wrapped.of("  " + each.help(), 6).forEach(console::say);
        console.say("  example: " + each.example());
        return ExitCode.FINE;
      }
    }
    String question = asked.isEmpty() ? name : name + " " + String.join(" ", asked);
    List<WordIndex.Found> found = new WordIndex(plugins.lexicon()).search(question);
    String near = Nearest.hint(name, plugins.lexicon().names());
    List<RowIndex.Found> rows = new RowIndex(plugins).search(question);
    if (rows.isEmpty() && found.isEmpty()) {
      console.complain(
          "there is no word `"
              + name
              + "`, and none speaks of it."
              + near
              + " Lists are "
              + String.join(", ", lists(plugins))
              + " [UNKNOWN_WORD]");
      return ExitCode.USE;
    }
    if (rows.isEmpty()) {
      console.say("no word is called `" + question + "`." + near + " These speak of it:");
    } else {
      console.say("`" + question + "` is found in lists:");
      most(rows, r -> console.say(String.format("  %-22s words %s", r.name(), r.list())));
      found.stream().findFirst().ifPresent(f -> console.say("These words speak of it:"));
    }
    most(found, this::line);
    return ExitCode.FINE;
  }

  private <T> void most(List<T> all, Consumer<T> line) {
    all.stream().limit(MOST).forEach(line);
    if (all.size() > MOST) {
      console.say("  and " + (all.size() - MOST) + " more");
    }
  }

  private void line(WordIndex.Found found) {
    String name =
        found.where().equals("plan") ? found.name() : found.name() + " in " + found.where();
    Wrapped.of(String.format("  %-22s %s", name, Help.firstSentence(found.help())), 25)
        .forEach(console::say);
  }

  /** Everything that is listed under a name of its own. */
  private static List<String> lists(Plugins plugins) {
    TreeSet<String> names = new TreeSet<>(Lists.names());
    plugins.all().forEach(p -> p.catalogues().forEach(c -> names.add(c.name())));
    return List.copyOf(names);
  }

  private void list(Lexicon lexicon) {
    for (Class<? extends Scope> scope : lexicon.scopes()) {
      if (lexicon.all().stream().noneMatch(w -> w.scope() == scope)) {
        continue;
      }
      console.say(heading(scope));
      lexicon.all().stream()
          .filter(w -> w.scope() == scope)
          .forEach(
              w ->
                  Wrapped.of(
                          String.format("  %-16s %s", w.name(), Help.firstSentence(w.help())), 19)
                      .forEach(console::say));
    }
  }

  private static String heading(Class<? extends Scope> scope) {
    return scope == Scope.class
        ? "in every block:"
        : "in the block of " + Scope.nameOf(scope) + ":";
  }

  /** The reference text of one word. */
  static List<String> explain(Word word) {
    List<String> lines = new ArrayList<>();
    lines.add(word.signature() + "   (" + heading(word.scope()) + " plugin " + word.plugin() + ")");
    lines.add("  " + word.help());
    for (Word.Parameter p : word.parameters()) {
      String fallback = p.required() ? " (required)" : " (without it: " + p.fallback() + ")";
      lines.add(
          String.format("  %-14s %-10s %s%s", p.name(), Help.type(p.type()), Help.of(p), fallback));
    }
    lines.add("  example: " + word.example());
    return lines;
  }
}
