package yardloom.language.typed;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.GenericsType;
import org.codehaus.groovy.ast.expr.Expression;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.text.Report;
import yardloom.language.tree.Planned;
import yardloom.language.type.ElementTypes;
import yardloom.language.type.HostClasses;
import yardloom.language.type.ScriptTypes;
import yardloom.language.type.TypeWords;

/** What each sign of the language means for which types. */
public final class OperatorTypes {
  private static final Map<String, String> SPOKEN =
      Map.ofEntries(
          Map.entry("plus", "add %2$s to %1$s"),
          Map.entry("minus", "take %2$s from %1$s"),
          Map.entry("multiply", "multiply %1$s by %2$s"),
          Map.entry("div", "divide %1$s by %2$s"),
          Map.entry("mod", "take the remainder of %1$s by %2$s"),
          Map.entry("and", "combine %1$s and %2$s with `&`"),
          Map.entry("negative", "negate %1$s"),
          Map.entry("same", "compare %1$s with %2$s"),
          Map.entry("differ", "compare %1$s with %2$s"),
          Map.entry("less", "compare %1$s with %2$s"),
          Map.entry("more", "compare %1$s with %2$s"),
          Map.entry("atMost", "compare %1$s with %2$s"),
          Map.entry("atLeast", "compare %1$s with %2$s"),
          Map.entry("order", "compare %1$s with %2$s"),
          Map.entry("within", "look for %1$s in %2$s"),
          Map.entry("leftShift", "put %2$s into %1$s"),
          Map.entry("at", "take %2$s as a place in %1$s"),
          Map.entry("putAt", "put a value into %1$s at %2$s"),
          Map.entry("range", "make a range from %1$s to %2$s"),
          Map.entry("decimal", "keep %1$s as a decimal number"),
          Map.entry("loop", "go through %1$s"));

  private static final Set<String> ARITHMETIC = Set.of("plus", "minus", "multiply", "div", "mod");
  private static final Set<String> ORDERS = Set.of("less", "more", "atMost", "atLeast", "order");

  private final Report report;
  private final Class<?> operators;
  private final LateCalls late;

  OperatorTypes(Report report, HostClasses host, LateCalls late) {
    this.report = report;
    this.operators = host.operators();
    this.late = late;
  }

  LateCalls.Found resolve(Planned.Late call, List<Class<?>> given) {
    LateCalls.Found found = find(call.name(), call.operands(), given);
    if (found == null) {
      found = withPartOfRow(call, given);
    }
    if (found == null) {
      String a = TypeWords.a(given.get(0));
      String b = given.size() > 1 ? TypeWords.a(given.get(1)) : "";
      boolean unknown = given.contains(Object.class);
      boolean mixed = given.stream().anyMatch(OperatorTypes::isMixed);
      report.add(
          ProblemCode.WRONG_TYPE,
          call.call(),
          String.format(java.util.Locale.ROOT, "cannot " + SPOKEN.get(call.name()), a, b)
              + (unknown
                  ? "; declare its type, as in { Length x -> … } or List<Point> p = []"
                  : mixed ? "; declare its type first, as in Length depth = row[1]" : ""));
    }
    return found;
  }

  /**
   * A value out of a row of several kinds, compared with a length or added to one, is taken for a
   * length; when the script runs, a row that has something else there is told.
   */
  private LateCalls.Found withPartOfRow(Planned.Late call, List<Class<?>> given) {
    boolean sum = call.name().equals("plus") || call.name().equals("minus");
    if (given.size() != 2 || !sum && !ORDERS.contains(call.name())) {
      return null;
    }
    int part = isMixed(given.get(0)) ? 0 : 1;
    Class<?> other = given.get(1 - part);
    boolean known = TypeWords.isNumber(other) || ScriptTypes.isQuantity(other);
    if (!isMixed(given.get(part)) || !known && !(other == String.class && !sum)) {
      return null;
    }
    Class<?> kind = TypeWords.isNumber(other) ? Number.class : other;
    List<Expression> operands = new ArrayList<>(call.operands());
    operands.set(part, LateCalls.taken(operands.get(part), kind));
    List<Class<?>> kinds = new ArrayList<>(given);
    kinds.set(part, kind);
    return find(call.name(), operands, kinds);
  }

  private LateCalls.Found find(String sign, List<Expression> operands, List<Class<?>> given) {
    Class<?> a = given.get(0);
    Class<?> b = given.size() > 1 ? given.get(1) : null;
    if (sign.equals("same") || sign.equals("differ")) {
      return comparable(a, b) ? host(sign, operands, Boolean.class) : null;
    }
    if (ORDERS.contains(sign)) {
      boolean ordered =
          TypeWords.isNumber(a) && TypeWords.isNumber(b)
              || a == b && (a == String.class || ScriptTypes.isQuantity(a));
      Class<?> result = sign.equals("order") ? Integer.class : Boolean.class;
      return ordered ? host(sign, operands, result) : null;
    }
    if (sign.equals("decimal")) {
      return TypeWords.isNumber(a) ? host(sign, operands, Double.class) : null;
    }
    if (sign.equals("negative")) {
      return TypeWords.isNumber(a) ? host(sign, operands, a) : own(sign, operands, given);
    }
    if (ARITHMETIC.contains(sign)) {
      LateCalls.Found found = arithmetic(sign, operands, given);
      if (found != null) {
        return found;
      }
    }
    LateCalls.Found found = containers(sign, operands, given);
    return found != null ? found : own(sign, operands, given);
  }

  private static boolean comparable(Class<?> a, Class<?> b) {
    boolean containers = isContainer(a) || isContainer(b);
    return a == Void.class
        || b == Void.class
        || TypeWords.isNumber(a) && TypeWords.isNumber(b)
        || a == b && !containers && a != Object.class
        || !containers
            && (isMixed(a) && a.isAssignableFrom(b) || isMixed(b) && b.isAssignableFrom(a));
  }

  /** Of a value out of a row of several kinds no more is known than what they share. */
  private static boolean isMixed(Class<?> type) {
    return type == Comparable.class || type == java.io.Serializable.class;
  }

  private static boolean isContainer(Class<?> type) {
    return type == List.class || type == Map.class || type == groovy.lang.Closure.class;
  }

  private LateCalls.Found arithmetic(String sign, List<Expression> operands, List<Class<?>> given) {
    Class<?> a = given.get(0);
    Class<?> b = given.get(1);
    if (TypeWords.isNumber(a) && TypeWords.isNumber(b)) {
      boolean whole = a == Integer.class && b == Integer.class && !sign.equals("div");
      boolean unsure = a == Number.class || b == Number.class;
      return host(
          sign,
          operands,
          whole ? Integer.class : unsure && !sign.equals("div") ? Number.class : Double.class);
    }
    if (sign.equals("plus") && (a == String.class || b == String.class) && isText(a) && isText(b)) {
      return host("join", operands, String.class);
    }
    if (sign.equals("multiply") && TypeWords.isNumber(a) && ScriptTypes.isQuantity(b)) {
      return own(sign, List.of(operands.get(1), operands.get(0)), List.of(b, a));
    }
    if (sign.equals("div") && a == b && ScriptTypes.isQuantity(a)) {
      return host("ratio", operands, Double.class);
    }
    return null;
  }

  private static boolean isText(Class<?> type) {
    return !isContainer(type) && type != Object.class;
  }

  private LateCalls.Found containers(String sign, List<Expression> operands, List<Class<?>> given) {
    Class<?> a = given.get(0);
    Class<?> b = given.size() > 1 ? given.get(1) : null;
    ClassNode left = late.typeOf(operands.get(0));
    boolean list = a == List.class;
    return switch (sign) {
      case "plus" ->
          list ? late.host(operators, b == List.class ? "both" : "with", operands, left) : null;
      case "leftShift" ->
          list && goesInto(left, b) ? late.host(operators, "append", operands, left) : null;
      case "within" ->
          b == List.class && !isContainer(a) ? host(sign, operands, Boolean.class) : null;
      case "at" -> at(operands, a, b, left);
      case "putAt" -> {
        if (list && b == Integer.class && goesInto(left, given.get(2))) {
          yield late.host(operators, "set", operands, ClassHelper.OBJECT_TYPE);
        }
        yield a == Map.class && b == String.class
            ? late.host(operators, "put", operands, ClassHelper.OBJECT_TYPE)
            : null;
      }
      case "range" ->
          a == Integer.class && b == Integer.class
              ? late.host(operators, sign, operands, ElementTypes.listOf(ClassHelper.Integer_TYPE))
              : null;
      case "loop" -> loop(operands, a, left);
      default -> null;
    };
  }

  private LateCalls.Found at(List<Expression> operands, Class<?> a, Class<?> b, ClassNode left) {
    if (a == List.class && b == Integer.class) {
      return late.host(operators, "at", operands, ElementTypes.part(left, "T"));
    } else if (a == List.class && b == List.class) {
      return late.host(operators, "slice", operands, left);
    } else if (a == Map.class && b == String.class) {
      return late.host(operators, "get", operands, ElementTypes.part(left, "V"));
    } else if (a == String.class && b == Integer.class) {
      return host("letter", operands, String.class);
    } else if (a == String.class && b == List.class) {
      return host("letters", operands, String.class);
    }
    return null;
  }

  private LateCalls.Found loop(List<Expression> operands, Class<?> a, ClassNode left) {
    if (a == List.class) {
      return late.host(
          operators, "items", operands, ElementTypes.listOf(ElementTypes.part(left, "T")));
    } else if (a == Map.class) {
      ClassNode entry = TypeWords.ENTRY.getPlainNodeReference();
      entry.setGenericsTypes(
          new GenericsType[] {
            new GenericsType(ElementTypes.part(left, "K")),
            new GenericsType(ElementTypes.part(left, "V"))
          });
      return late.host(operators, "entries", operands, ElementTypes.listOf(entry));
    }
    return null;
  }

  private static boolean goesInto(ClassNode list, Class<?> value) {
    Class<?> element = TypeWords.classOf(ElementTypes.part(list, "T"));
    return element == Object.class || TypeWords.fits(value, element);
  }

  private LateCalls.Found own(String sign, List<Expression> operands, List<Class<?>> given) {
    for (Method method : ScriptTypes.methods(given.get(0), sign)) {
      List<Class<?>> rest = given.subList(1, given.size());
      if (LateCalls.accepts(method, given.get(0), rest)) {
        return late.instance(
            operands.get(0), given.get(0), method, operands.subList(1, operands.size()));
      }
    }
    return null;
  }

  private LateCalls.Found host(String name, List<Expression> operands, Class<?> result) {
    return late.host(operators, name, operands, ClassHelper.make(result));
  }
}
