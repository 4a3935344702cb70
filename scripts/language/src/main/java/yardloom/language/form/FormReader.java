package yardloom.language.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.text.Report;

/**
 * Reads a plan in its JSON form: {@code {"form": "yardloom-plan-1", "plan": [ … ]}}, where each
 * step is {@code {"word": …, "with": {…}, "block": […], "as": …}}.
 *
 * <p>It accepts what the vocabulary accepts and nothing else; all problems of a file are told
 * together, each with its line and column. Nothing of the plan runs here.
 */
public final class FormReader {
  /** What the head of a file says. */
  public static final String FORM = "yardloom-plan-1";

  static final String PARAM = "param";
  static final String INCLUDE = "include";

  /** What "as" may call a value. */
  static final String NAME = "[\\p{L}0-9_. -]{1,80}";

  private static final int MAX_PROBLEMS = 50;
  private static final List<String> STEP =
      List.of("word", "with", "block", "blocks", "as", "place");

  private final Lexicon lexicon;
  private final BiFunction<String, String, Optional<String>> missing;
  private final String file;
  private final Report report;
  private final Map<String, Class<?>> params = new HashMap<>();
  private final Map<String, Class<?>> names = new HashMap<>();
  private int problems;

  private FormReader(
      Lexicon lexicon, BiFunction<String, String, Optional<String>> missing, String file) {
    this.lexicon = lexicon;
    this.missing = missing;
    this.file = file;
    this.report = new Report(file);
  }

  /**
   * The plan that {@code text} holds, or what is wrong with it.
   *
   * @param file as the user named it, for messages
   * @param missing the shipped plugin that offers a word (block name, word) but is not loaded
   */
  public static FormPlan read(
      String text,
      String file,
      Lexicon lexicon,
      BiFunction<String, String, Optional<String>> missing) {
    FormReader reader = new FormReader(lexicon, missing, file);
    try {
      List<Step> steps = reader.head(JsonText.read(text, file));
      return new FormPlan(steps, reader.report.problems());
    } catch (PlanException e) {
      reader.report.addAll(e.problems());
      return new FormPlan(List.of(), reader.report.problems());
    }
  }

  private List<Step> head(Json json) {
    Json.Obj head = object(json, "a plan");
    onlyNames(head, List.of("$schema", "form", "plan"), "a plan");
    if (!(head.get("form") instanceof Json.Text t && t.value().equals(FORM))) {
      Json place = head.get("form") == null ? head : head.get("form");
      throw wrong(ProblemCode.SYNTAX, place, "a plan begins with \"form\": \"" + FORM + "\"");
    }
    if (head.get("plan") == null) {
      throw wrong(ProblemCode.MISSING_OPTION, head, "a plan has its steps in \"plan\": [ … ]");
    }
    return block(head.get("plan"), PlanScope.class, new Places(file, report));
  }

  private List<Step> block(Json json, Class<? extends Scope> scope, Places places) {
    List<Step> steps = new ArrayList<>();
    if (!(json instanceof Json.Items items)) {
      throw wrong(ProblemCode.WRONG_TYPE, json, "a block is a list of steps; got " + json.kind());
    }
    for (Json each : items.values()) {
      try {
        steps.add(step(each, scope, places));
      } catch (PlanException e) {
        report.addAll(e.at(report.place(each.line(), each.column())).problems());
        if (++problems >= MAX_PROBLEMS) {
          throw e;
        }
      }
    }
    return steps;
  }

  private Step step(Json json, Class<? extends Scope> scope, Places places) {
    Json.Obj node = object(json, "a step");
    String word = wordOf(node);
    boolean outermost = scope == PlanScope.class;
    if (outermost && word.equals(PARAM)) {
      return param(node, places);
    }
    if (outermost && word.equals(INCLUDE)) {
      return include(node, places);
    }
    return call(node, scope, places, false);
  }

  private String wordOf(Json.Obj node) {
    if (node.get("word") instanceof Json.Text t) {
      return t.value();
    }
    throw wrong(
        ProblemCode.MISSING_OPTION, node, "a step names its word, as in {\"word\": \"bed\", …}");
  }

  /**
   * @param asValue whether it stands where a value is needed
   */
  Step.Call call(Json.Obj node, Class<? extends Scope> scope, Places places, boolean asValue) {
    Word word = word(node, wordOf(node), scope);
    onlyNames(node, STEP, "a step");
    if (asValue && word.method().getReturnType() == void.class) {
      throw wrong(ProblemCode.WRONG_TYPE, node, "`" + word.name() + "` gives no value");
    }
    List<Optional<Value>> values = values(node, word, scope, places);
    List<List<Step>> blocks = blocks(node, word, places);
    return new Step.Call(word, values, blocks, name(node, word, asValue), places.of(node));
  }

  private List<List<Step>> blocks(Json.Obj node, Word word, Places places) {
    Json one = node.get("block");
    Json several = node.get("blocks");
    if (one == null && several == null) {
      return List.of();
    }
    Json given = one == null ? several : one;
    Class<? extends Scope> inner =
        word.inner()
            .orElseThrow(
                () ->
                    wrong(
                        ProblemCode.MISPLACED_WORD, given, "`" + word.name() + "` takes no block"));
    if (one != null && several != null) {
      throw wrong(ProblemCode.DUPLICATE, several, "a step has \"block\" or \"blocks\", not both");
    }
    if (one != null) {
      return List.of(block(one, inner, places));
    }
    if (several instanceof Json.Items items && !items.values().isEmpty()) {
      return items.values().stream().map(b -> block(b, inner, places)).toList();
    }
    throw wrong(
        ProblemCode.WRONG_TYPE,
        several,
        "\"blocks\" is a list of blocks, one for each thing that the word makes; got "
            + several.kind());
  }

  private String name(Json.Obj node, Word word, boolean asValue) {
    Json as = node.get("as");
    if (as == null) {
      return null;
    }
    if (!(as instanceof Json.Text t) || !t.value().matches(NAME)) {
      throw wrong(
          ProblemCode.WRONG_TYPE,
          as,
          "\"as\" is a name of letters, digits and spaces; got " + as.kind());
    }
    if (asValue || word.method().getReturnType() == void.class) {
      throw wrong(
          ProblemCode.MISPLACED_WORD,
          as,
          asValue
              ? "only a step of its own can be named with \"as\""
              : "`" + word.name() + "` gives no value to be named");
    }
    if (names.putIfAbsent(t.value(), word.method().getReturnType()) != null) {
      throw wrong(ProblemCode.DUPLICATE, as, "the name '" + t.value() + "' is already given");
    }
    return t.value();
  }

  private Word word(Json.Obj node, String name, Class<? extends Scope> scope) {
    Optional<Word> found = lexicon.word(scope, name);
    if (found.isPresent()) {
      return found.get();
    }
    Json at = node.get("word");
    String block = Scope.nameOf(scope);
    TreeSet<String> where = new TreeSet<>();
    lexicon.all().stream()
        .filter(w -> w.name().equals(name))
        .forEach(w -> where.add(Scope.nameOf(w.scope())));
    if (!where.isEmpty()) {
      throw wrong(
          ProblemCode.MISPLACED_WORD,
          at,
          "`" + name + "` belongs in " + String.join(", ", where) + ", not in " + block);
    }
    Optional<String> plugin = missing.apply(block, name);
    if (plugin.isPresent()) {
      throw wrong(
          ProblemCode.MISSING_PLUGIN,
          at,
          "`" + name + "` comes with the plugin " + plugin.get() + ", which is not loaded");
    }
    List<String> known = lexicon.words(scope).stream().map(Word::name).toList();
    throw wrong(
        ProblemCode.UNKNOWN_WORD,
        at,
        "there is no word `"
            + name
            + "` in "
            + block
            + "."
            + Nearest.hint(name, known)
            + " `yardloom words` lists them");
  }

  private List<Optional<Value>> values(
      Json.Obj node, Word word, Class<? extends Scope> scope, Places places) {
    Json.Obj with =
        node.get("with") == null
            ? new Json.Obj(node.line(), node.column(), List.of())
            : object(node.get("with"), "\"with\"");
    List<String> known = word.parameters().stream().map(Word.Parameter::name).toList();
    for (Json.Member member : with.members()) {
      if (!known.contains(member.name())) {
        report.add(
            ProblemCode.UNKNOWN_WORD,
            member.line(),
            member.column(),
            "`"
                + word.name()
                + "` has no option `"
                + member.name()
                + "`."
                + Nearest.hint(member.name(), known)
                + (known.isEmpty() ? " It has none" : " It has: " + String.join(", ", known)));
      }
    }
    ValueReader reader = new ValueReader(this, report, scope, places, params, names);
    List<Optional<Value>> values = new ArrayList<>();
    for (int i = 0; i < known.size(); i++) {
      Word.Parameter p = word.parameters().get(i);
      Json given = with.get(p.name());
      if (given == null && p.required()) {
        report.add(
            ProblemCode.MISSING_OPTION,
            with.line(),
            with.column(),
            "`" + word.name() + "`: missing `" + p.name() + "` (" + p.help() + ")");
      }
      values.add(given == null ? Optional.empty() : reader.read(given, word, i));
    }
    return values;
  }

  private Step param(Json.Obj node, Places places) {
    onlyNames(node, List.of("word", "with", "place"), "a parameter");
    Json.Obj with = object(node.get("with") == null ? node : node.get("with"), "\"with\"");
    onlyNames(with, List.of("name", "value", "help", "fixed"), "a parameter");
    Json.Text name = text(with, "name");
    Json.Text help = text(with, "help");
    boolean fixed = with.get("fixed") instanceof Json.Truth t && t.value();
    if (with.get("fixed") != null && !(with.get("fixed") instanceof Json.Truth)) {
      throw wrong(ProblemCode.WRONG_TYPE, with.get("fixed"), "\"fixed\" is true or false");
    }
    if (with.get("value") == null) {
      throw wrong(ProblemCode.MISSING_OPTION, with, "a parameter has a \"value\"");
    }
    Value value =
        new ValueReader(this, report, PlanScope.class, places, params, names)
            .free(with.get("value"));
    Class<?> type = ValueReader.typeOf(value);
    if (params.putIfAbsent(name.value(), type) != null) {
      throw wrong(
          ProblemCode.DUPLICATE, name, "the parameter `" + name.value() + "` is already declared");
    }
    return new Step.Param(name.value(), value, help.value(), fixed, places.of(node));
  }

  private Step include(Json.Obj node, Places places) {
    onlyNames(node, List.of("word", "with", "block", "place"), "an include");
    Json.Obj with = object(node.get("with") == null ? node : node.get("with"), "\"with\"");
    onlyNames(with, List.of("file"), "the \"with\" of an include");
    Json.Text name = text(with, "file");
    if (!Places.isFile(name.value())) {
      throw wrong(
          ProblemCode.FORBIDDEN,
          name,
          "\"file\" is the plain name of the file that the steps came from");
    }
    if (node.get("block") == null) {
      throw wrong(ProblemCode.MISSING_OPTION, node, "an include has its steps in \"block\": [ … ]");
    }
    return new Step.Include(
        name.value(),
        block(node.get("block"), PlanScope.class, places.inside(name.value())),
        places.of(node));
  }

  private Json.Text text(Json.Obj with, String name) {
    if (with.get(name) instanceof Json.Text t) {
      return t;
    }
    Json at = with.get(name) == null ? with : with.get(name);
    throw wrong(ProblemCode.MISSING_OPTION, at, "a text is needed as \"" + name + "\"");
  }

  private Json.Obj object(Json json, String what) {
    if (json instanceof Json.Obj object) {
      return object;
    }
    throw wrong(ProblemCode.WRONG_TYPE, json, what + " is an object, { … }; got " + json.kind());
  }

  private void onlyNames(Json.Obj object, List<String> known, String what) {
    for (Json.Member member : object.members()) {
      if (!known.contains(member.name())) {
        report.add(
            ProblemCode.UNKNOWN_WORD,
            member.line(),
            member.column(),
            what
                + " has no \""
                + member.name()
                + "\"."
                + Nearest.hint(member.name(), known)
                + " It has: "
                + String.join(", ", known));
      }
    }
  }

  PlanException wrong(ProblemCode code, Json at, String message) {
    return new PlanException(code, report.place(at.line(), at.column()), message);
  }
}
