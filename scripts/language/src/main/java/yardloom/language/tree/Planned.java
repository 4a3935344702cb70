package yardloom.language.tree;

import java.lang.reflect.Method;
import java.util.List;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import yardloom.kernel.vocab.Word;

/** What the typed pass has to do at a rewritten node; kept as the node's metadata. */
public sealed interface Planned {
  /** A call of a host method that is already known. */
  record Host(Method target) implements Planned {}

  /** A call of a word; {@code given} is in the order of its parameters, null where left out. */
  record WordCall(Word word, List<Expression> given) implements Planned {}

  /** A cast to a type that is already known. */
  record Fixed(ClassNode type) implements Planned {}

  /** An operator, method or property whose target depends on the types of its operands. */
  record Late(String kind, String name, List<Expression> operands, MethodCallExpression call)
      implements Planned {
    public static final String OPERATOR = "operator";
    public static final String METHOD = "method";
    public static final String PROPERTY = "property";
  }

  /** A cast around a variable, to what is known of it at this place. */
  record Variable() implements Planned {}

  /** A cast around a value that a variable of a declared type takes. */
  record Held(String name, Class<?> declared) implements Planned {}

  /** A call of a helper of the script. */
  record HelperCall(String name, MethodNode head) implements Planned {}

  /** {@code param}: the type follows the default. */
  record Param(Expression fallback) implements Planned {}

  /** A call that Groovy's own checker resolves, if the name is on the list of library loops. */
  record Library(String name) implements Planned {}

  /** A cast around the value of a part of a long body, to what the closure gives. */
  record Part(ClosureExpression body) implements Planned {}

  /** A call of a closure held in a variable. */
  record ClosureCall(String name) implements Planned {}
}
