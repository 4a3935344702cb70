package yardloom.language.tree;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.expr.ArgumentListExpression;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.ClassExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import yardloom.language.type.TypeWords;

/** Makes the nodes of the rewritten script. Every node gets a position, or its errors vanish. */
public final class Tree {
  private Tree() {}

  public static <N extends ASTNode> N at(ASTNode where, N node) {
    node.setSourcePosition(where);
    return node;
  }

  public static ConstantExpression constant(ASTNode where, Object value) {
    // Boxed on purpose: the rewritten script holds no primitive, so that every cast is a checkcast.
    ConstantExpression made = new ConstantExpression(value);
    return at(where, made);
  }

  /** The one public static method of that name in a class of the host. */
  public static Method method(Class<?> type, String name) {
    return Arrays.stream(type.getMethods())
        .filter(m -> m.getName().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(type + " has no " + name));
  }

  public static MethodCallExpression call(
      ASTNode where, Expression receiver, String name, List<Expression> arguments) {
    MethodCallExpression made =
        new MethodCallExpression(
            receiver,
            constant(where, name),
            at(where, new ArgumentListExpression(new java.util.ArrayList<>(arguments))));
    made.setImplicitThis(false);
    return at(where, made);
  }

  public static Expression type(ASTNode where, Class<?> type) {
    return at(where, new ClassExpression(ClassHelper.make(type)));
  }

  /** A call of a static host method. */
  public static Expression host(ASTNode where, Method target, List<Expression> arguments) {
    MethodCallExpression made =
        call(where, type(where, target.getDeclaringClass()), target.getName(), arguments);
    made.putNodeMetaData(Planned.class, new Planned.Host(target));
    return made;
  }

  /** A checked cast whose type is known; the finished bytes hold one {@code checkcast}. */
  public static CastExpression cast(ASTNode where, ClassNode type, Expression inner) {
    CastExpression made = new CastExpression(TypeWords.boxed(type), inner);
    made.setStrict(true);
    made.putNodeMetaData(Planned.class, new Planned.Fixed(type));
    return at(where, made);
  }

  /** A cast around a call that the typed pass resolves. */
  public static Expression late(
      ASTNode where, String kind, String name, List<Expression> operands) {
    Expression receiver = operands.get(0);
    MethodCallExpression call = call(where, receiver, name, operands.subList(1, operands.size()));
    CastExpression made = new LateCast(call);
    made.putNodeMetaData(Planned.class, new Planned.Late(kind, name, List.copyOf(operands), call));
    return at(where, made);
  }

  /** The compiler's node of a method known by reflection. */
  public static MethodNode node(Method method) {
    ClassNode owner = ClassHelper.make(method.getDeclaringClass());
    Class<?>[] wanted = method.getParameterTypes();
    for (MethodNode candidate : owner.getDeclaredMethods(method.getName())) {
      Parameter[] parameters = candidate.getParameters();
      boolean same = parameters.length == wanted.length;
      for (int i = 0; same && i < wanted.length; i++) {
        same = nameOf(parameters[i].getType()).equals(wanted[i].getName());
      }
      if (same) {
        return candidate;
      }
    }
    throw new IllegalStateException("no node for " + method);
  }

  private static String nameOf(ClassNode type) {
    ClassNode bare = type.isGenericsPlaceHolder() ? type.redirect() : type;
    return bare.isArray() ? bare.getTypeClass().getName() : bare.getName();
  }
}
