package yardloom.language.form;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;

/**
 * The JSON Schema of plans in JSON form, made from the vocabulary: what {@link FormReader} accepts,
 * save what a schema cannot say (that a name is given before it is used, and given once).
 *
 * <p>References: [1] JSON Schema: A Media Type for Describing JSON Documents, draft 2020-12.
 */
public final class FormSchema {
  private static final String NUMBER = "[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]+)?[ .]?\\s*";

  private final Lexicon lexicon;
  private final Map<String, Object> defs = new LinkedHashMap<>();

  private FormSchema(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /** The schema as text. */
  public static String of(Lexicon lexicon) {
    return JsonOut.of(new FormSchema(lexicon).plan());
  }

  private Map<String, Object> plan() {
    Map<String, Object> plan = new LinkedHashMap<>();
    plan.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    plan.put("title", "Yard plan in JSON form");
    plan.put("type", "object");
    plan.put("required", List.of("form", "plan"));
    plan.put(
        "properties",
        object(
            "$schema", object("type", "string"),
            "form", object("const", FormReader.FORM),
            "plan", block(PlanScope.class)));
    plan.put("additionalProperties", false);
    plan.put("$defs", defs);
    return plan;
  }

  private Object ref(String name) {
    return object("$ref", "#/$defs/" + name);
  }

  /** A definition made once; its name is there before it is finished, since blocks nest. */
  private Object defined(String name, java.util.function.Supplier<Object> made) {
    if (!defs.containsKey(name)) {
      defs.put(name, true);
      defs.put(name, made.get());
    }
    return ref(name);
  }

  private static String name(Class<? extends Scope> scope) {
    return Scope.nameOf(scope).replace(' ', '-');
  }

  private Object block(Class<? extends Scope> scope) {
    return defined("block." + name(scope), () -> object("type", "array", "items", step(scope)));
  }

  private Object step(Class<? extends Scope> scope) {
    return defined(
        "step." + name(scope),
        () -> {
          List<Word> words = lexicon.words(scope);
          boolean plan = scope == PlanScope.class;
          List<String> names =
              Stream.concat(
                      words.stream().map(Word::name),
                      plan ? Stream.of(FormReader.PARAM, FormReader.INCLUDE) : Stream.of())
                  .sorted()
                  .toList();
          List<Object> rules = new ArrayList<>();
          words.forEach(w -> rules.add(rule(w.name(), word(w, scope))));
          if (plan) {
            rules.add(rule(FormReader.PARAM, param()));
            rules.add(rule(FormReader.INCLUDE, include()));
          }
          return chosen(names, rules);
        });
  }

  private static Object rule(String word, Object then) {
    return object("if", object("properties", object("word", object("const", word))), "then", then);
  }

  private static Object chosen(List<String> names, List<Object> rules) {
    return object(
        "type",
        "object",
        "required",
        List.of("word"),
        "properties",
        object("word", object("enum", names)),
        "allOf",
        rules);
  }

  private Object word(Word word, Class<? extends Scope> scope) {
    return defined(
        "word." + name(scope) + "." + word.name(),
        () -> {
          Map<String, Object> with = new LinkedHashMap<>();
          List<String> required = new ArrayList<>();
          for (int i = 0; i < word.parameters().size(); i++) {
            Word.Parameter p = word.parameters().get(i);
            with.put(p.name(), parameter(p, word, i, scope));
            if (p.required()) {
              required.add(p.name());
            }
          }
          Map<String, Object> properties = new LinkedHashMap<>();
          properties.put("word", true);
          properties.put("with", closed(with, required));
          if (word.method().getReturnType() != void.class) {
            properties.put("as", text(FormReader.NAME));
          }
          word.inner()
              .ifPresent(
                  inner -> {
                    properties.put("block", block(inner));
                    properties.put(
                        "blocks", object("type", "array", "minItems", 1, "items", block(inner)));
                  });
          properties.put("place", place());
          Map<String, Object> step =
              closed(properties, required.isEmpty() ? List.of() : List.of("with"));
          step.put("description", word.help());
          if (word.inner().isPresent()) {
            step.put("not", object("required", List.of("block", "blocks")));
          }
          return step;
        });
  }

  private static Object place() {
    return text(Places.PLACE);
  }

  /** A text that is wholly so, by the reader's own pattern. */
  private static Map<String, Object> text(String pattern) {
    return object("type", "string", "pattern", "^" + pattern + "$");
  }

  private Object parameter(Word.Parameter p, Word word, int index, Class<? extends Scope> scope) {
    Type type = word.method().getGenericParameterTypes()[index + 1];
    Object value =
        p.choices().isEmpty()
            ? value(type, scope)
            : object("anyOf", List.of(object("enum", p.choices()), made(String.class, scope)));
    String fallback =
        p.required() || p.fallback().isBlank() ? "" : " (without it: " + p.fallback() + ")";
    return object("description", p.help() + fallback, "allOf", List.of(value));
  }

  private Object value(Type generic, Class<? extends Scope> scope) {
    Class<?> type =
        generic instanceof Class<?> c
            ? c
            : generic instanceof ParameterizedType p ? (Class<?>) p.getRawType() : Object.class;
    if (type == Object.class) {
      return free(scope);
    }
    if (type == List.class) {
      Type element =
          generic instanceof ParameterizedType p ? p.getActualTypeArguments()[0] : Object.class;
      return either(object("type", "array", "items", value(element, scope)), type, scope);
    }
    Optional<Object> plain = plain(type);
    return defined(
        "value." + name(scope) + "." + type.getSimpleName().toLowerCase(java.util.Locale.ROOT),
        () -> plain.isPresent() ? either(plain.get(), type, scope) : made(type, scope));
  }

  private Object either(Object plain, Class<?> type, Class<? extends Scope> scope) {
    return object("anyOf", List.of(plain, made(type, scope)));
  }

  /** The form that needs no object. */
  private Optional<Object> plain(Class<?> type) {
    if (Quantity.class.isAssignableFrom(type)) {
      return Optional.of(quantity(type));
    } else if (type == String.class) {
      return Optional.of(object("type", "string"));
    } else if (type == Boolean.class) {
      return Optional.of(object("type", "boolean"));
    } else if (type == Integer.class) {
      return Optional.of(object("type", "integer"));
    } else if (Number.class.isAssignableFrom(type)) {
      return Optional.of(object("type", "number"));
    } else if (type == Point.class) {
      return Optional.of(point());
    }
    return type == Line.class ? Optional.of(points()) : Optional.empty();
  }

  private Object quantity(Class<?> type) {
    return defined(
        type == Quantity.class
            ? "quantity"
            : "quantity." + type.getSimpleName().toLowerCase(java.util.Locale.ROOT),
        () -> text(NUMBER + "(" + units(type) + ")"));
  }

  private static String units(Class<?> type) {
    return Arrays.stream(Unit.values())
        .filter(u -> type.isInstance(Quantity.of(1, u)))
        .flatMap(u -> Stream.concat(Stream.of(u.word(), u.symbol()), u.also().stream()))
        .filter(u -> !u.isEmpty())
        .distinct()
        .map(u -> u.replaceAll("([()./])", "\\\\$1"))
        .collect(Collectors.joining("|"));
  }

  private Object point() {
    Object length = quantity(Length.class);
    return defined(
        "point", () -> object("type", "array", "minItems", 2, "maxItems", 2, "items", length));
  }

  private Object points() {
    return defined("points", () -> object("type", "array", "minItems", 2, "items", point()));
  }

  private Object ground() {
    return defined(
        "ground",
        () -> {
          Object corner =
              object(
                  "type", "array", "minItems", 2, "maxItems", 2, "items", object("type", "number"));
          Object ring = object("type", "array", "minItems", 3, "items", corner);
          Object polygon = object("type", "array", "minItems", 1, "items", ring);
          return object("type", "array", "items", polygon);
        });
  }

  /** An object that stands for a value of {@code type}. */
  private Object made(Class<?> type, Class<? extends Scope> scope) {
    return defined(
        "made." + name(scope) + "." + type.getSimpleName().toLowerCase(java.util.Locale.ROOT),
        () -> {
          List<Object> forms = new ArrayList<>();
          Object text = object("type", "string");
          forms.add(closed(object("param", text), List.of("param")));
          Map<String, Object> ref =
              object("ref", text, "part", object("type", "integer", "minimum", 1));
          forms.add(closed(ref, List.of("ref")));
          boolean any = type == Object.class;
          if (any || type == String.class) {
            forms.add(closed(object("text", text), List.of("text")));
          }
          if (any || type == Point.class) {
            forms.add(closed(object("point", point()), List.of("point")));
          }
          if (any || type == Line.class) {
            forms.add(closed(object("line", points()), List.of("line")));
          }
          if (any || type == Shape.class) {
            forms.add(closed(object("ground", ground()), List.of("ground")));
          }
          List<Word> words = lexicon.words(scope).stream().filter(w -> gives(w, type)).toList();
          if (!words.isEmpty()) {
            List<Object> rules = new ArrayList<>();
            words.forEach(w -> rules.add(rule(w.name(), word(w, scope))));
            rules.add(object("not", object("required", List.of("as"))));
            forms.add(chosen(words.stream().map(Word::name).toList(), rules));
          }
          return object("anyOf", forms);
        });
  }

  private static boolean gives(Word word, Class<?> type) {
    Class<?> given = word.method().getReturnType();
    boolean ground = given == Handle.class && (type == Shape.class || type == Line.class);
    return given != void.class && (ground || type.isAssignableFrom(given));
  }

  private Object free(Class<? extends Scope> scope) {
    return defined(
        "value." + name(scope) + ".any",
        () ->
            object(
                "anyOf",
                List.of(
                    object("type", List.of("string", "number", "boolean")),
                    object("type", "array", "items", free(scope)),
                    made(Object.class, scope))));
  }

  private Object param() {
    Object text = object("type", "string");
    Map<String, Object> with =
        object(
            "name",
            text,
            "value",
            free(PlanScope.class),
            "help",
            text,
            "fixed",
            object("type", "boolean"));
    return closed(
        object(
            "word", true,
            "with", closed(with, List.of("name", "value", "help")),
            "place", place()),
        List.of("with"));
  }

  private Object include() {
    Object file = text(Places.FILE);
    return closed(
        object(
            "word", true,
            "with", closed(object("file", file), List.of("file")),
            "block", block(PlanScope.class),
            "place", place()),
        List.of("with", "block"));
  }

  private static Map<String, Object> closed(Map<String, Object> properties, List<String> required) {
    Map<String, Object> made = object("type", "object", "properties", properties);
    if (!required.isEmpty()) {
      made.put("required", required);
    }
    made.put("additionalProperties", false);
    return made;
  }

  private static Map<String, Object> object(Object... namesAndValues) {
    Map<String, Object> made = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      made.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return made;
  }
}
