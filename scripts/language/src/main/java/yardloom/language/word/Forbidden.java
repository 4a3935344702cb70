package yardloom.language.word;

import java.util.Map;
import org.codehaus.groovy.ast.expr.ArrayExpression;
import org.codehaus.groovy.ast.expr.AttributeExpression;
import org.codehaus.groovy.ast.expr.BinaryExpression;
import org.codehaus.groovy.ast.expr.BitwiseNegationExpression;
import org.codehaus.groovy.ast.expr.ConstructorCallExpression;
import org.codehaus.groovy.ast.expr.ElvisOperatorExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.LambdaExpression;
import org.codehaus.groovy.ast.expr.MethodPointerExpression;
import org.codehaus.groovy.ast.expr.MethodReferenceExpression;
import org.codehaus.groovy.ast.expr.NamedArgumentListExpression;
import org.codehaus.groovy.ast.expr.PostfixExpression;
import org.codehaus.groovy.ast.expr.PrefixExpression;
import org.codehaus.groovy.ast.expr.SpreadExpression;
import org.codehaus.groovy.ast.expr.SpreadMapExpression;
import org.codehaus.groovy.ast.expr.TupleExpression;
import org.codehaus.groovy.ast.stmt.AssertStatement;
import org.codehaus.groovy.ast.stmt.Statement;
import org.codehaus.groovy.ast.stmt.SwitchStatement;
import org.codehaus.groovy.ast.stmt.SynchronizedStatement;
import org.codehaus.groovy.ast.stmt.ThrowStatement;
import org.codehaus.groovy.ast.stmt.TryCatchStatement;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.text.Report;

/** Says in the words of the language what of Groovy is not part of it. */
final class Forbidden {
  private static final Map<Class<?>, String> EXPRESSIONS =
      Map.ofEntries(
          Map.entry(ConstructorCallExpression.class, "`new`"),
          Map.entry(ArrayExpression.class, "an array"),
          Map.entry(AttributeExpression.class, "`.@`"),
          Map.entry(BitwiseNegationExpression.class, "`~`"),
          Map.entry(LambdaExpression.class, "`->` without braces"),
          Map.entry(MethodPointerExpression.class, "`.&`"),
          Map.entry(MethodReferenceExpression.class, "`::`"),
          Map.entry(SpreadExpression.class, "`*` before a list"),
          Map.entry(SpreadMapExpression.class, "`*:`"),
          Map.entry(TupleExpression.class, "an assignment to several names"),
          Map.entry(NamedArgumentListExpression.class, "a named value here"));

  private static final Map<Class<?>, String> STATEMENTS =
      Map.of(
          AssertStatement.class, "`assert`",
          SwitchStatement.class, "`switch`",
          SynchronizedStatement.class, "`synchronized`",
          ThrowStatement.class, "`throw`",
          TryCatchStatement.class, "`try`");

  private Forbidden() {}

  static Expression expression(Expression raw, Report report, Expressions expressions) {
    String what = EXPRESSIONS.getOrDefault(raw.getClass(), "this");
    String message = what + " is not part of the plan language";
    if (raw instanceof ElvisOperatorExpression) {
      message = "`?:` is not part of the plan language; write `a != null ? a : b`";
    } else if (raw instanceof PostfixExpression || raw instanceof PrefixExpression) {
      message = "`++` and `--` stand alone, as in `i++`, not inside an expression";
    }
    report.add(ProblemCode.FORBIDDEN, raw, message);
    return expressions.hole(raw);
  }

  static Expression operator(BinaryExpression raw, Report report, Expressions expressions) {
    String sign = raw.getOperation().getText();
    String more = "";
    if (sign.equals("=")) {
      more = " here; an assignment stands alone";
    } else if (sign.equals("**")) {
      more = "; multiply instead";
    } else if (sign.equals("===")) {
      more = "; use `==`";
    }
    report.add(
        ProblemCode.FORBIDDEN, raw, "`" + sign + "` is not part of the plan language" + more);
    // Names inside are still looked at, so that all mistakes show at once.
    if (!sign.startsWith("instanceof") && !sign.startsWith("!instanceof")) {
      expressions.translate(raw.getRightExpression());
    }
    return expressions.hole(raw);
  }

  static void statement(Statement raw, Report report) {
    String what = STATEMENTS.getOrDefault(raw.getClass(), "this statement");
    String more = raw instanceof SwitchStatement ? "; use `if` and `else`" : "";
    report.add(ProblemCode.FORBIDDEN, raw, what + " is not part of the plan language" + more);
  }
}
