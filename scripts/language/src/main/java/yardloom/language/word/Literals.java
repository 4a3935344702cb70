package yardloom.language.word;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.GStringExpression;
import org.codehaus.groovy.ast.expr.MapEntryExpression;
import org.codehaus.groovy.ast.expr.MapExpression;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.text.Hidden;
import yardloom.language.text.Report;
import yardloom.language.tree.LateCast;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.HostClasses;

/** Translates numbers, texts and maps as scripts write them. */
public final class Literals {
  private final Expressions expressions;
  private final Report report;
  private final HostClasses host;

  Literals(Expressions expressions, Report report, HostClasses host) {
    this.expressions = expressions;
    this.report = report;
    this.host = host;
  }

  Expression constant(ConstantExpression raw) {
    Object value = raw.getValue();
    if (value instanceof String text && !isPlain(raw, text)) {
      return expressions.hole(raw);
    }
    if (value == null || value instanceof String || value instanceof Boolean) {
      return Tree.constant(raw, value);
    } else if (value instanceof Integer || value instanceof Double) {
      return Tree.constant(raw, value);
    } else if (value instanceof Float || value instanceof java.math.BigDecimal) {
      // Decimals are doubles here: big decimals can grow without end.
      double number = ((Number) value).doubleValue();
      if (Double.isFinite(number)) {
        return Tree.constant(raw, number);
      }
    }
    report.add(
        ProblemCode.FORBIDDEN,
        raw,
        "whole numbers go up to 2,147,483,647 and carry no letter; write a decimal, such as 3e9");
    return expressions.hole(raw);
  }

  /** Reports what a text may not hold, however it is spelled. */
  private boolean isPlain(Expression raw, String text) {
    if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
      report.add(
          ProblemCode.FORBIDDEN,
          raw,
          "this text holds half a sign, written as \\uD800 to \\uDFFF; write the whole sign");
      return false;
    }
    Optional<String> hidden = Hidden.in(text);
    hidden.ifPresent(what -> report.add(ProblemCode.FORBIDDEN, raw, what));
    return hidden.isEmpty();
  }

  /** Text with values in it becomes one plain text at once: nothing lazy stays behind. */
  Expression text(GStringExpression raw) {
    raw.getStrings().forEach(part -> isPlain(part, (String) part.getValue()));
    Expression made = Tree.constant(raw, raw.getStrings().get(0).getValue());
    for (int i = 0; i < raw.getValues().size(); i++) {
      Expression value = raw.getValues().get(i);
      if (value instanceof ClosureExpression) {
        report.add(
            ProblemCode.FORBIDDEN, value, "a closure in a text is not part of the plan language");
      } else {
        made = join(raw, made, expressions.translate(value));
      }
      if (i + 1 < raw.getStrings().size()) {
        Object more = raw.getStrings().get(i + 1).getValue();
        made = "".equals(more) ? made : join(raw, made, Tree.constant(raw, more));
      }
    }
    return made;
  }

  private Expression join(Expression raw, Expression a, Expression b) {
    return Tree.host(raw, Tree.method(host.operators(), "join"), List.of(a, b));
  }

  Expression map(MapExpression raw) {
    MapExpression made = new MapExpression();
    for (MapEntryExpression entry : raw.getMapEntryExpressions()) {
      Expression key = entry.getKeyExpression();
      if (key instanceof ConstantExpression c && c.getValue() instanceof String name) {
        isPlain(key, name);
        made.addMapEntryExpression(
            Tree.constant(key, name), expressions.translate(entry.getValueExpression()));
      } else {
        report.add(
            ProblemCode.FORBIDDEN, key, "the keys of a map in a plan are plain names or texts");
        expressions.translate(entry.getValueExpression());
      }
    }
    return known(raw, made);
  }

  /** A cast around a variable or literal, to what the typed pass knows of it. */
  static Expression known(Expression raw, Expression made) {
    LateCast cast = Tree.at(raw, new LateCast(Tree.at(raw, made)));
    cast.putNodeMetaData(Planned.class, new Planned.Variable());
    return cast;
  }
}
