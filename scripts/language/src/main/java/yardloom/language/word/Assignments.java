package yardloom.language.word;

import java.util.List;
import java.util.Map;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.expr.BinaryExpression;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.DeclarationExpression;
import org.codehaus.groovy.ast.expr.EmptyExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.PropertyExpression;
import org.codehaus.groovy.ast.expr.VariableExpression;
import org.codehaus.groovy.ast.stmt.ExpressionStatement;
import org.codehaus.groovy.ast.stmt.Statement;
import org.codehaus.groovy.syntax.Token;
import org.codehaus.groovy.syntax.Types;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.text.Report;
import yardloom.language.tree.LateCast;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.ScriptTypes;
import yardloom.language.type.TypeWords;

/** Translates declarations of variables, and whatever gives them a value. */
final class Assignments {
  private static final Map<Integer, String> COMPOUND =
      Map.of(
          Types.PLUS_EQUAL, "plus",
          Types.MINUS_EQUAL, "minus",
          Types.MULTIPLY_EQUAL, "multiply",
          Types.DIVIDE_EQUAL, "div");

  private final Report report;
  private final Names names;
  private final Expressions expressions;
  private final WordCalls calls;
  private final DeclaredTypes types;

  Assignments(
      Report report, Names names, Expressions expressions, WordCalls calls, DeclaredTypes types) {
    this.report = report;
    this.names = names;
    this.expressions = expressions;
    this.calls = calls;
    this.types = types;
  }

  boolean isAssignment(BinaryExpression binary) {
    int sign = binary.getOperation().getType();
    return sign == Types.ASSIGN || COMPOUND.containsKey(sign);
  }

  Statement count(Expression raw, Expression target, int sign) {
    Expression one = Tree.constant(raw, 1);
    Expression next =
        Tree.late(
            raw,
            Planned.Late.OPERATOR,
            sign == Types.PLUS_PLUS ? "plus" : "minus",
            List.of(expressions.translate(target), one));
    return Tree.at(raw, new ExpressionStatement(store(raw, target, next)));
  }

  Expression assignment(BinaryExpression raw) {
    Expression value = expressions.translate(raw.getRightExpression());
    String compound = COMPOUND.get(raw.getOperation().getType());
    if (compound != null) {
      Expression old = expressions.translate(raw.getLeftExpression());
      value = Tree.late(raw, Planned.Late.OPERATOR, compound, List.of(old, value));
    }
    return store(raw, raw.getLeftExpression(), value);
  }

  private Expression store(Expression raw, Expression target, Expression value) {
    if (target.getClass() == VariableExpression.class) {
      String name = target.getText();
      if (names.knows(name)) {
        Expression kept = held(raw, name, names.typeOf(name), value);
        return Tree.at(
            raw,
            new BinaryExpression(
                Tree.at(target, new VariableExpression(name)),
                Token.newSymbol(Types.ASSIGN, raw.getLineNumber(), raw.getColumnNumber()),
                kept));
      }
      report.add(
          ScriptTypes.isDoor(name) ? ProblemCode.FORBIDDEN : ProblemCode.UNKNOWN_WORD,
          target,
          "`"
              + name
              + "` is not known here; a new name starts with `def`, as in def "
              + name
              + " = …");
      return expressions.hole(raw);
    }
    if (target.getClass() == PropertyExpression.class
        && ((PropertyExpression) target).getPropertyAsString() != null
        && !ScriptTypes.isDoor(((PropertyExpression) target).getPropertyAsString())
        && !((PropertyExpression) target).isSafe()) {
      PropertyExpression p = (PropertyExpression) target;
      Expression key = Tree.constant(target, p.getPropertyAsString());
      Expression receiver = expressions.translate(p.getObjectExpression());
      return Tree.late(raw, Planned.Late.OPERATOR, "putAt", List.of(receiver, key, value));
    }
    if (target.getClass() == BinaryExpression.class
        && ((BinaryExpression) target).getOperation().getType() == Types.LEFT_SQUARE_BRACKET) {
      BinaryExpression b = (BinaryExpression) target;
      List<Expression> operands =
          List.of(
              expressions.translate(b.getLeftExpression()),
              expressions.translate(b.getRightExpression()),
              value);
      return Tree.late(raw, Planned.Late.OPERATOR, "putAt", operands);
    }
    report.add(ProblemCode.FORBIDDEN, raw, "only a name can be given a value in a plan");
    return expressions.hole(raw);
  }

  /** A value as a variable of a declared type takes it. */
  private static Expression held(ASTNode where, String name, Class<?> declared, Expression value) {
    if (declared == null || declared == Object.class) {
      return value;
    }
    Expression given =
        declared == Double.class
            ? Tree.late(where, Planned.Late.OPERATOR, "decimal", List.of(value))
            : value;
    LateCast made = Tree.at(where, new LateCast(given));
    made.putNodeMetaData(Planned.class, new Planned.Held(name, declared));
    return made;
  }

  Expression declaration(DeclarationExpression raw) {
    if (raw.isMultipleAssignmentDeclaration() || !raw.getAnnotations().isEmpty()) {
      report.add(
          ProblemCode.FORBIDDEN,
          raw,
          "declare one name at a time, as in def a = …, and without annotations");
      return expressions.hole(raw);
    }
    VariableExpression variable = raw.getVariableExpression();
    String name = variable.getName();
    DeclaredTypes.checkName(report, variable, name);
    if (java.lang.reflect.Modifier.isStatic(variable.getModifiers())) {
      report.add(ProblemCode.FORBIDDEN, raw, "`static` is not part of the plan language");
    }
    if (names.knows(name)) {
      report.add(ProblemCode.DUPLICATE, variable, "`" + name + "` is already declared");
    }
    Expression value = raw.getRightExpression();
    if (value instanceof ClosureExpression && calls.isWord(name)) {
      report.add(
          ProblemCode.DUPLICATE,
          variable,
          "`" + name + "` is a word of the language; name the closure otherwise");
    }
    ClassNode type =
        variable.isDynamicTyped()
            ? ClassHelper.dynamicType()
            : types.type(variable.getOriginType(), variable);
    Expression initial =
        value instanceof EmptyExpression ? EmptyExpression.INSTANCE : expressions.translate(value);
    Class<?> declared = ClassHelper.isDynamicTyped(type) ? null : TypeWords.classOf(type);
    if (!(initial instanceof EmptyExpression)) {
      initial = held(value, name, declared, initial);
    }
    names.declare(name, declared);
    return Tree.at(
        raw,
        new DeclarationExpression(
            Tree.at(variable, new VariableExpression(name, type)),
            Token.newSymbol(Types.ASSIGN, raw.getLineNumber(), raw.getColumnNumber()),
            initial));
  }
}
