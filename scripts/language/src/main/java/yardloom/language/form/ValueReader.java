package yardloom.language.form;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Rings;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.text.Report;
import yardloom.language.type.TypeWords;
import yardloom.language.value.ParamText;

/**
 * Reads values of steps as the parameters of their words need them.
 *
 * <p>Quantities are texts with a unit, {@code "40 ft"}. A point is a list of two lengths, a line a
 * list of points. Where a list may hold anything, a text that is a number with a known unit is a
 * quantity; {@code {"text": "4 ft"}} stays a text.
 */
final class ValueReader {
  private final FormReader steps;
  private final Report report;
  private final Class<? extends Scope> scope;
  private final Places places;
  private final Map<String, Class<?>> params;
  private final Map<String, Class<?>> names;

  /**
   * @param scope the block that the step stands in
   * @param params the types of the parameters declared so far, by name
   * @param names the types of the named values so far
   */
  ValueReader(
      FormReader steps,
      Report report,
      Class<? extends Scope> scope,
      Places places,
      Map<String, Class<?>> params,
      Map<String, Class<?>> names) {
    this.steps = steps;
    this.report = report;
    this.scope = scope;
    this.places = places;
    this.params = params;
    this.names = names;
  }

  /** The value of a parameter of a word; empty if it has a problem, which is reported. */
  Optional<Value> read(Json json, Word word, int index) {
    Word.Parameter p = word.parameters().get(index);
    String what = "`" + word.name() + "`: " + p.name();
    try {
      Value value = typed(json, word.method().getGenericParameterTypes()[index + 1], what);
      if (!p.choices().isEmpty()
          && value instanceof Value.Plain plain
          && plain.value() instanceof String text
          && !p.choices().contains(text)) {
        throw wrong(
            ProblemCode.UNKNOWN_WORD,
            json,
            what
                + " cannot be '"
                + text
                + "'."
                + Nearest.hint(text, p.choices())
                + " It can be: "
                + String.join(", ", p.choices()));
      }
      return Optional.of(value);
    } catch (PlanException e) {
      report.addAll(e.at(report.place(json.line(), json.column())).problems());
      return Optional.empty();
    }
  }

  private Value typed(Json json, Type generic, String what) {
    Class<?> type = raw(generic);
    if (json instanceof Json.Obj object && isMade(object)) {
      Value made = made(object);
      requireFits(json, made, type, what);
      return made;
    }
    if (Quantity.class.isAssignableFrom(type)) {
      return measure(json, type, what);
    } else if (type == String.class && json instanceof Json.Text t) {
      return new Value.Plain(t.value());
    } else if (type == Boolean.class && json instanceof Json.Truth t) {
      return new Value.Plain(t.value());
    } else if (type == Integer.class && json instanceof Json.Num n) {
      if (n.value() instanceof Integer) {
        return new Value.Plain(n.value());
      }
    } else if (type == Number.class && json instanceof Json.Num n) {
      return new Value.Plain(n.value());
    } else if (type == Point.class && json instanceof Json.Items items) {
      return point(items, what);
    } else if (type == Line.class && json instanceof Json.Items items) {
      return line(items, what);
    } else if (type == List.class && json instanceof Json.Items items) {
      return list(items, generic, what);
    } else if (type == Object.class) {
      return free(json);
    }
    throw wrong(
        ProblemCode.WRONG_TYPE, json, what + " needs " + needed(type) + "; got " + json.kind());
  }

  private static Class<?> raw(Type generic) {
    if (generic instanceof Class<?> type) {
      return type;
    }
    return generic instanceof ParameterizedType p ? (Class<?>) p.getRawType() : Object.class;
  }

  private static Type element(Type list) {
    return list instanceof ParameterizedType p && p.getActualTypeArguments().length == 1
        ? p.getActualTypeArguments()[0]
        : Object.class;
  }

  private Value list(Json.Items items, Type generic, String what) {
    List<Value> values = new ArrayList<>();
    for (Json each : items.values()) {
      values.add(typed(each, element(generic), what));
    }
    return new Value.Items(List.copyOf(values));
  }

  private void requireFits(Json json, Value made, Class<?> wanted, String what) {
    Class<?> got = typeOf(made);
    boolean ground = got == Handle.class && (wanted == Shape.class || wanted == Line.class);
    boolean list = wanted == List.class && List.class.isAssignableFrom(got);
    if (!ground && !list && !wanted.isAssignableFrom(got)) {
      throw wrong(
          ProblemCode.WRONG_TYPE,
          json,
          what
              + " needs "
              + needed(wanted)
              + (made instanceof Value.Given given
                  ? "; the parameter `" + given.name() + "` holds "
                  : "; got ")
              + TypeWords.a(got));
    }
  }

  private static String needed(Class<?> type) {
    if (type == Point.class) {
      return "a point, such as [\"4 ft\", \"10 ft\"]";
    } else if (type == Line.class) {
      return "a line, such as [[\"0 ft\", \"0 ft\"], [\"0 ft\", \"40 ft\"]]";
    } else if (type == Shape.class) {
      return "a shape, such as {\"word\": \"rect\", \"with\": {…}}";
    } else if (type == Handle.class
        || type.getPackageName().startsWith("yardloom") && !isQuantity(type)) {
      return TypeWords.a(type) + ", such as {\"ref\": \"…\"} to a step with that \"as\"";
    }
    // Scripts write 4.ft, this form "4 ft".
    return TypeWords.needed(type).replaceFirst("such as ([0-9.]+)\\.(\\w+)$", "such as \"$1 $2\"");
  }

  private static boolean isQuantity(Class<?> type) {
    return Quantity.class.isAssignableFrom(type);
  }

  private Value.Measure measure(Json json, Class<?> type, String what) {
    if (json instanceof Json.Text t) {
      Optional<Quantity<?>> read = ParamText.quantity(t.value());
      if (read.isPresent() && type.isInstance(read.get())) {
        return new Value.Measure(read.get(), t.value());
      }
    }
    throw wrong(
        ProblemCode.WRONG_TYPE,
        json,
        what
            + " needs "
            + needed(type)
            + "; got "
            + json.kind()
            + (json instanceof Json.Num ? ", which has no unit" : ""));
  }

  private Value.At point(Json.Items items, String what) {
    if (items.values().size() != 2) {
      throw wrong(
          ProblemCode.WRONG_TYPE,
          items,
          what + " needs " + needed(Point.class) + "; got a list of " + items.values().size());
    }
    return new Value.At(
        measure(items.values().get(0), Length.class, what),
        measure(items.values().get(1), Length.class, what));
  }

  private Value line(Json.Items items, String what) {
    List<Point> points = new ArrayList<>();
    for (Json each : items.values()) {
      if (!(each instanceof Json.Items pair)) {
        throw wrong(
            ProblemCode.WRONG_TYPE,
            each,
            what + " needs " + needed(Line.class) + "; got " + each.kind());
      }
      Value.At at = point(pair, what);
      points.add(new Point((Length) at.x().value(), (Length) at.y().value()));
    }
    return new Value.Along(Line.through(points));
  }

  /** A value whose type is not known beforehand. */
  Value free(Json json) {
    if (json instanceof Json.Text t) {
      Optional<Quantity<?>> read = ParamText.quantity(t.value());
      return read.isPresent()
          ? new Value.Measure(read.get(), t.value())
          : new Value.Plain(t.value());
    } else if (json instanceof Json.Num n) {
      return new Value.Plain(n.value());
    } else if (json instanceof Json.Truth t) {
      return new Value.Plain(t.value());
    } else if (json instanceof Json.Items items) {
      return new Value.Items(items.values().stream().map(this::free).toList());
    } else if (json instanceof Json.Obj object && isMade(object)) {
      return made(object);
    }
    throw wrong(
        ProblemCode.WRONG_TYPE,
        json,
        "a value is a text, number, true, false, list, or an object with "
            + String.join(", ", MADE)
            + "; got "
            + json.kind());
  }

  private static final List<String> MADE =
      List.of("word", "ref", "param", "text", "point", "line", "ground");

  private static boolean isMade(Json.Obj object) {
    return object.members().stream().anyMatch(m -> MADE.contains(m.name()));
  }

  private Value made(Json.Obj object) {
    if (object.get("word") != null) {
      return steps.call(object, scope, places, true);
    }
    boolean part = object.get("ref") != null && object.get("part") != null;
    if (object.members().size() != (part ? 2 : 1)) {
      throw wrong(
          ProblemCode.UNKNOWN_WORD,
          object,
          "such a value has one name only: one of " + String.join(", ", MADE));
    }
    Json.Member only = object.members().get(0);
    if (object.get("ref") != null) {
      return ref(object);
    }
    return switch (only.name()) {
      case "param" -> param(only.value());
      case "text" -> new Value.Plain(text(only.value()));
      case "point" -> point(items(only.value()), "a point");
      case "line" -> line(items(only.value()), "a line");
      default -> new Value.Ground(Rings.shape(polygons(items(only.value()))));
    };
  }

  private Value ref(Json.Obj object) {
    String name = text(object.get("ref"));
    Class<?> type = names.get(name);
    if (type == null) {
      throw wrong(
          ProblemCode.UNKNOWN_WORD,
          object.get("ref"),
          "no earlier step is named '"
              + name
              + "' with \"as\"."
              + Nearest.hint(name, names.keySet())
              + (names.isEmpty()
                  ? " None is named so far"
                  : " Named are: " + String.join(", ", new java.util.TreeSet<>(names.keySet()))));
    }
    Json part = object.get("part");
    if (part == null) {
      return new Value.Ref(name, 0, type);
    }
    if (type == Handle.class && part instanceof Json.Num n && n.value() instanceof Integer i) {
      if (i >= 1) {
        return new Value.Ref(name, i, type);
      }
    }
    throw wrong(ProblemCode.WRONG_TYPE, part, "\"part\" counts the things one step made, from 1");
  }

  private Value param(Json json) {
    String name = text(json);
    if (!params.containsKey(name)) {
      throw wrong(
          ProblemCode.UNKNOWN_WORD,
          json,
          "no earlier step declares the parameter `"
              + name
              + "`."
              + Nearest.hint(name, params.keySet()));
    }
    return new Value.Given(name, params.get(name));
  }

  private String text(Json json) {
    if (json instanceof Json.Text t) {
      return t.value();
    }
    throw wrong(ProblemCode.WRONG_TYPE, json, "a text is needed here; got " + json.kind());
  }

  private Json.Items items(Json json) {
    if (json instanceof Json.Items items) {
      return items;
    }
    throw wrong(ProblemCode.WRONG_TYPE, json, "a list is needed here; got " + json.kind());
  }

  private List<List<List<Point>>> polygons(Json.Items ground) {
    List<List<List<Point>>> polygons = new ArrayList<>();
    for (Json polygon : ground.values()) {
      List<List<Point>> rings = new ArrayList<>();
      for (Json ring : items(polygon).values()) {
        List<Point> corners = new ArrayList<>();
        items(ring).values().forEach(c -> corners.add(corner(c)));
        rings.add(corners);
      }
      polygons.add(rings);
    }
    return polygons;
  }

  private Point corner(Json json) {
    if (json instanceof Json.Items pair
        && pair.values().size() == 2
        && pair.values().get(0) instanceof Json.Num x
        && pair.values().get(1) instanceof Json.Num y) {
      return Point.metres(x.value().doubleValue(), y.value().doubleValue());
    }
    throw wrong(
        ProblemCode.WRONG_TYPE, json, "a corner of ground is [x, y] in metres; got " + json.kind());
  }

  /** The type that a value will have. */
  static Class<?> typeOf(Value value) {
    if (value instanceof Step.Call call) {
      return call.word().method().getReturnType();
    } else if (value instanceof Value.Plain plain) {
      return plain.value().getClass();
    } else if (value instanceof Value.Measure measure) {
      return measure.value().getClass();
    } else if (value instanceof Value.At) {
      return Point.class;
    } else if (value instanceof Value.Along) {
      return Line.class;
    } else if (value instanceof Value.Ground) {
      return Shape.class;
    } else if (value instanceof Value.Items) {
      return List.class;
    } else if (value instanceof Value.Ref ref) {
      return ref.type();
    }
    return ((Value.Given) value).type();
  }

  private PlanException wrong(ProblemCode code, Json at, String message) {
    return steps.wrong(code, at, message);
  }
}
