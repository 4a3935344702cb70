package yardloom.language.typed;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.transform.stc.StaticTypesMarker;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Unit;
import yardloom.language.text.Report;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.ElementTypes;
import yardloom.language.type.Hole;
import yardloom.language.type.HostClasses;
import yardloom.language.type.LibraryLoops;
import yardloom.language.type.ScriptTypes;
import yardloom.language.type.TypeWords;

/**
 * Finds the one method behind a sign, a method name or a property, once the types of the operands
 * are known: a listed method of a kernel type, or a host method. There is no third way.
 */
final class LateCalls {
  /** The call to make and the type it gives. */
  record Found(
      Expression receiver, MethodNode target, List<Expression> arguments, ClassNode type) {}

  private final Report report;
  private final HostClasses host;
  private final Function<Expression, ClassNode> types;
  private final OperatorTypes signs;

  LateCalls(Report report, HostClasses host, Function<Expression, ClassNode> types) {
    this.report = report;
    this.host = host;
    this.types = types;
    this.signs = new OperatorTypes(report, host, this);
  }

  ClassNode typeOf(Expression e) {
    return types.apply(e);
  }

  Class<?> classOf(Expression e) {
    if (e instanceof ConstantExpression c && c.getValue() == null) {
      return Void.class;
    }
    ClassNode type = types.apply(e);
    if (type == null) {
      return Object.class;
    }
    return type.getName().equals(Hole.class.getName()) ? Hole.class : TypeWords.classOf(type);
  }

  /** The type that {@code param} takes from its default. */
  ClassNode paramType(Expression fallback) {
    Class<?> type = classOf(fallback);
    boolean known =
        TypeWords.isNumber(type)
            || type == String.class
            || type == Boolean.class
            || ScriptTypes.values().contains(type);
    if (!known && type != Hole.class) {
      report.add(
          ProblemCode.WRONG_TYPE,
          fallback,
          "the default of a parameter is a quantity, a number, a text, true or false, or a shape;"
              + " got "
              + TypeWords.a(type));
    }
    return known ? ClassHelper.make(type) : ClassHelper.make(Hole.class);
  }

  /** The target, or null after reporting why there is none. */
  Found resolve(Planned.Late call) {
    List<Class<?>> given = new ArrayList<>();
    call.operands().forEach(e -> given.add(classOf(e)));
    if (given.contains(Hole.class)) {
      return null;
    }
    return switch (call.kind()) {
      case Planned.Late.OPERATOR -> signs.resolve(call, given);
      case Planned.Late.PROPERTY -> property(call, given.get(0));
      default -> method(call, given);
    };
  }

  private Found property(Planned.Late call, Class<?> receiver) {
    Expression from = call.operands().get(0);
    String name = call.name();
    String getter = getter(name);
    if (receiver == Map.class) {
      Expression key = Tree.constant(call.call(), name);
      return host(
          host.operators(), "get", List.of(from, key), ElementTypes.part(typeOf(from), "V"));
    }
    if (TypeWords.isNumber(receiver)) {
      Optional<Unit> unit = Unit.byWord(name);
      if (unit.isPresent()) {
        String made = getter(unit.get().word());
        Method method = single(host.units(), made).orElseThrow();
        return host(host.units(), made, List.of(from), ClassHelper.make(method.getReturnType()));
      }
      report.add(
          ProblemCode.UNKNOWN_WORD,
          call.call(),
          "there is no unit `"
              + name
              + "`."
              + Nearest.hint(name, unitWords())
              + " Units are "
              + Unit.words());
      return null;
    }
    for (String candidate : List.of(name, getter, "is" + getter.substring(3))) {
      for (Method method : ScriptTypes.methods(receiver, candidate)) {
        if (method.getParameterCount() == 0) {
          return instance(from, receiver, method, List.of());
        }
      }
    }
    Optional<Method> own = single(host.values(), getter, receiver);
    if (own.isPresent()) {
      return own(own.get(), call.operands());
    }
    unknownMember(call, receiver);
    return null;
  }

  private static String getter(String name) {
    return "get" + Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  private TreeSet<String> unitWords() {
    TreeSet<String> words = new TreeSet<>();
    Arrays.stream(Unit.values()).forEach(u -> words.add(u.word()));
    return words;
  }

  private Found method(Planned.Late call, List<Class<?>> given) {
    Class<?> receiver = given.get(0);
    List<Class<?>> arguments = given.subList(1, given.size());
    List<Expression> rest = call.operands().subList(1, call.operands().size());
    List<Method> named = ScriptTypes.methods(receiver, call.name());
    for (Method method : named) {
      if (accepts(method, receiver, arguments)) {
        return instance(call.operands().get(0), receiver, method, rest);
      }
    }
    List<Method> own = new ArrayList<>();
    for (Method method : host.values().getMethods()) {
      if (Modifier.isStatic(method.getModifiers())
          && method.getName().equals(call.name())
          && method.getParameterCount() > 0
          && TypeWords.fits(receiver, method.getParameterTypes()[0])) {
        own.add(method);
      }
    }
    own.sort(Comparator.comparing(Method::toGenericString));
    for (Method method : own) {
      if (fits(given, List.of(method.getParameterTypes()))) {
        return own(method, call.operands());
      }
    }
    own.addAll(named);
    if (own.isEmpty()) {
      unknownMember(call, receiver);
    } else {
      wrongArguments(call, arguments, own.get(0), own.get(0).getDeclaringClass() == host.values());
    }
    return null;
  }

  private void wrongArguments(
      Planned.Late call, List<Class<?>> arguments, Method method, boolean own) {
    List<Class<?>> wanted = new ArrayList<>(List.of(method.getParameterTypes()));
    if (own) {
      wanted.remove(0);
    }
    String needs =
        wanted.isEmpty()
            ? "takes no values"
            : "needs " + String.join(" and ", wanted.stream().map(TypeWords::needed).toList());
    String got =
        arguments.isEmpty()
            ? "nothing"
            : String.join(" and ", arguments.stream().map(TypeWords::a).toList());
    report.add(
        ProblemCode.WRONG_TYPE,
        call.call(),
        "`" + call.name().replaceFirst("^math(.)", "Math.$1") + "` " + needs + "; got " + got);
  }

  private void unknownMember(Planned.Late call, Class<?> receiver) {
    if (receiver == Object.class) {
      report.add(
          ProblemCode.WRONG_TYPE,
          call.call(),
          "`"
              + call.name()
              + "` of a value of unknown type; declare its type, as in"
              + " { Length x -> … } or List<Point> corners = []");
      return;
    }
    List<String> offers = offers(receiver);
    report.add(
        ProblemCode.UNKNOWN_WORD,
        call.call(),
        TypeWords.a(receiver)
            + " has no `"
            + call.name()
            + "`."
            + Nearest.hint(call.name(), offers)
            + (offers.isEmpty() ? "" : " It has: " + String.join(", ", offers)));
  }

  private List<String> offers(Class<?> receiver) {
    TreeSet<String> names = new TreeSet<>(ScriptTypes.offers(receiver));
    for (Method method : host.values().getMethods()) {
      if (Modifier.isStatic(method.getModifiers())
          && method.getParameterCount() > 0
          && method.getParameterTypes()[0].isAssignableFrom(receiver)
          && !method.getName().startsWith("math")) {
        String name = method.getName();
        names.add(
            name.startsWith("get")
                ? Character.toLowerCase(name.charAt(3)) + name.substring(4)
                : name);
      }
    }
    names.addAll(LibraryLoops.offers(receiver));
    return List.copyOf(names);
  }

  /**
   * Whether a listed method takes these. Quantities declare their partner as a type variable: it
   * must be of the same kind.
   */
  static boolean accepts(Method method, Class<?> receiver, List<Class<?>> given) {
    List<Class<?>> wanted = new ArrayList<>();
    for (Class<?> type : method.getParameterTypes()) {
      wanted.add(type == yardloom.kernel.unit.Quantity.class ? receiver : type);
    }
    return fits(given, wanted);
  }

  static boolean fits(List<Class<?>> given, List<Class<?>> wanted) {
    if (given.size() != wanted.size()) {
      return false;
    }
    for (int i = 0; i < given.size(); i++) {
      if (given.get(i) == Void.class || !TypeWords.fits(given.get(i), wanted.get(i))) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Method> single(Class<?> type, String name, Class<?>... receiver) {
    return Arrays.stream(type.getMethods())
        .filter(m -> m.getName().equals(name) && m.getParameterCount() == 1)
        .filter(m -> receiver.length == 0 || m.getParameterTypes()[0].isAssignableFrom(receiver[0]))
        .filter(m -> Modifier.isStatic(m.getModifiers()))
        .findFirst();
  }

  /** A strict cast around a value of which only the running script knows the kind. */
  static Expression taken(Expression value, Class<?> kind) {
    ClassNode type = ClassHelper.make(kind);
    Expression cast = Tree.cast(value, type, value);
    cast.putNodeMetaData(StaticTypesMarker.INFERRED_TYPE, type);
    return cast;
  }

  Found instance(Expression from, Class<?> receiver, Method method, List<Expression> arguments) {
    MethodNode node = Tree.node(method);
    ClassNode type =
        method.getGenericReturnType() instanceof TypeVariable<?>
            ? ClassHelper.make(receiver)
            : node.getReturnType();
    return new Found(from, node, arguments, type);
  }

  Found host(Class<?> type, String name, List<Expression> arguments, ClassNode result) {
    Method method = Tree.method(type, name);
    return new Found(Tree.type(arguments.get(0), type), Tree.node(method), arguments, result);
  }

  private Found own(Method method, List<Expression> operands) {
    ClassNode receiver = typeOf(operands.get(0));
    return new Found(
        Tree.type(operands.get(0), method.getDeclaringClass()),
        Tree.node(method),
        operands,
        ElementTypes.result(method.getGenericReturnType(), receiver));
  }
}
