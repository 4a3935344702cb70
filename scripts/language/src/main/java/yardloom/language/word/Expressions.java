package yardloom.language.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.expr.BinaryExpression;
import org.codehaus.groovy.ast.expr.BooleanExpression;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.GStringExpression;
import org.codehaus.groovy.ast.expr.ListExpression;
import org.codehaus.groovy.ast.expr.MapExpression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.NotExpression;
import org.codehaus.groovy.ast.expr.PropertyExpression;
import org.codehaus.groovy.ast.expr.RangeExpression;
import org.codehaus.groovy.ast.expr.TernaryExpression;
import org.codehaus.groovy.ast.expr.UnaryMinusExpression;
import org.codehaus.groovy.ast.expr.UnaryPlusExpression;
import org.codehaus.groovy.ast.expr.VariableExpression;
import org.codehaus.groovy.syntax.Token;
import org.codehaus.groovy.syntax.Types;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.text.Report;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.Hole;
import yardloom.language.type.HostClasses;
import yardloom.language.type.ScriptTypes;
import yardloom.language.type.TypeWords;

/**
 * Translates raw expressions into fresh ones. Kinds of node that are not named here are refused, so
 * nothing of the raw tree reaches the compiler.
 */
final class Expressions {
  private static final Map<Integer, String> SIGNS =
      Map.ofEntries(
          Map.entry(Types.PLUS, "plus"),
          Map.entry(Types.MINUS, "minus"),
          Map.entry(Types.MULTIPLY, "multiply"),
          Map.entry(Types.DIVIDE, "div"),
          Map.entry(Types.MOD, "mod"),
          Map.entry(Types.REMAINDER, "mod"),
          Map.entry(Types.BITWISE_AND, "and"),
          Map.entry(Types.LEFT_SHIFT, "leftShift"),
          Map.entry(Types.COMPARE_EQUAL, "same"),
          Map.entry(Types.COMPARE_NOT_EQUAL, "differ"),
          Map.entry(Types.COMPARE_LESS_THAN, "less"),
          Map.entry(Types.COMPARE_LESS_THAN_EQUAL, "atMost"),
          Map.entry(Types.COMPARE_GREATER_THAN, "more"),
          Map.entry(Types.COMPARE_GREATER_THAN_EQUAL, "atLeast"),
          Map.entry(Types.COMPARE_TO, "order"),
          Map.entry(Types.KEYWORD_IN, "within"),
          Map.entry(Types.LEFT_SQUARE_BRACKET, "at"));

  private final Rewriter rewriter;
  private final Report report;
  private final Names names;
  private final HostClasses host;
  private final DeclaredTypes types;
  private final Literals literals;

  Expressions(
      Rewriter rewriter, Report report, Names names, HostClasses host, DeclaredTypes types) {
    this.rewriter = rewriter;
    this.report = report;
    this.names = names;
    this.host = host;
    this.types = types;
    this.literals = new Literals(this, report, host);
  }

  List<Expression> all(List<Expression> raw) {
    List<Expression> made = new ArrayList<>();
    raw.forEach(e -> made.add(translate(e)));
    return made;
  }

  Expression translate(Expression raw) {
    Class<?> kind = raw.getClass();
    if (kind == ConstantExpression.class) {
      return literals.constant((ConstantExpression) raw);
    } else if (kind == VariableExpression.class) {
      return variable((VariableExpression) raw);
    } else if (kind == MethodCallExpression.class) {
      return rewriter.calls().translate((MethodCallExpression) raw, false);
    } else if (kind == PropertyExpression.class) {
      return property((PropertyExpression) raw);
    } else if (kind == BinaryExpression.class) {
      return binary((BinaryExpression) raw);
    } else if (kind == GStringExpression.class) {
      return literals.text((GStringExpression) raw);
    } else if (kind == ClosureExpression.class) {
      return closure((ClosureExpression) raw);
    } else if (kind == ListExpression.class) {
      List<Expression> items = all(((ListExpression) raw).getExpressions());
      return Literals.known(raw, new ListExpression(items));
    } else if (kind == MapExpression.class) {
      return literals.map((MapExpression) raw);
    } else if (kind == RangeExpression.class) {
      return range((RangeExpression) raw);
    } else if (kind == TernaryExpression.class) {
      TernaryExpression t = (TernaryExpression) raw;
      return Tree.at(
          raw,
          new TernaryExpression(
              truth(t.getBooleanExpression()),
              translate(t.getTrueExpression()),
              translate(t.getFalseExpression())));
    } else if (kind == NotExpression.class) {
      return Tree.at(raw, new NotExpression(truth(((NotExpression) raw).getExpression())));
    } else if (kind == BooleanExpression.class) {
      return translate(((BooleanExpression) raw).getExpression());
    } else if (kind == UnaryMinusExpression.class) {
      Expression inner = translate(((UnaryMinusExpression) raw).getExpression());
      return Tree.late(raw, Planned.Late.OPERATOR, "negative", List.of(inner));
    } else if (kind == UnaryPlusExpression.class) {
      return translate(((UnaryPlusExpression) raw).getExpression());
    } else if (kind == CastExpression.class) {
      return cast((CastExpression) raw);
    }
    return Forbidden.expression(raw, report, this);
  }

  /** Stands for an expression that already has a problem, so that it causes no second one. */
  Expression hole(Expression raw) {
    return Tree.host(raw, Tree.method(host.guard(), "hole"), List.of());
  }

  private Expression variable(VariableExpression raw) {
    String name = raw.getName();
    if (ScriptTypes.isDoor(name)) {
      report.add(ProblemCode.FORBIDDEN, raw, "`" + name + "` is not part of the plan language");
      return hole(raw);
    }
    if (names.knows(name)) {
      return Literals.known(raw, new VariableExpression(name));
    }
    rewriter.calls().unknown().name(raw, name);
    return hole(raw);
  }

  private Expression property(PropertyExpression raw) {
    String name = raw.getPropertyAsString();
    if (raw.isSafe() || raw.isSpreadSafe() || !(raw.getProperty() instanceof ConstantExpression)) {
      report.add(
          ProblemCode.FORBIDDEN,
          raw,
          raw.isSpreadSafe()
              ? "`*.` is not part of the plan language; use collect { … }"
              : raw.isSafe()
                  ? "`?.` is not part of the plan language; test for null first"
                  : "a computed name after the dot is not part of the plan language");
      return hole(raw);
    }
    if (rewriter.calls().lacksComma(raw)) {
      return hole(raw);
    }
    if (ScriptTypes.isDoor(name) || name.contains("$")) {
      report.add(
          ProblemCode.FORBIDDEN,
          raw.getProperty(),
          "`" + name + "` is not part of the plan language");
      return hole(raw);
    }
    if (isMath(raw.getObjectExpression()) && name.equals("PI")) {
      return Tree.constant(raw, Math.PI);
    }
    List<Expression> receiver = List.of(translate(raw.getObjectExpression()));
    return Tree.late(raw.getProperty(), Planned.Late.PROPERTY, name, receiver);
  }

  boolean isMath(Expression raw) {
    return raw instanceof VariableExpression v
        && v.getName().equals("Math")
        && !names.knows("Math");
  }

  private Expression binary(BinaryExpression raw) {
    int sign = raw.getOperation().getType();
    if (sign == Types.LOGICAL_AND || sign == Types.LOGICAL_OR) {
      return Tree.at(
          raw,
          new BinaryExpression(
              truth(raw.getLeftExpression()),
              Token.newSymbol(sign, raw.getLineNumber(), raw.getColumnNumber()),
              truth(raw.getRightExpression())));
    }
    String name = SIGNS.get(sign);
    if (name == null || raw.isSafe()) {
      return Forbidden.operator(raw, report, this);
    }
    List<Expression> operands =
        List.of(translate(raw.getLeftExpression()), translate(raw.getRightExpression()));
    return Tree.late(raw, Planned.Late.OPERATOR, name, operands);
  }

  /** A condition as one plain boolean. */
  BooleanExpression truth(Expression raw) {
    Expression test =
        Tree.host(raw, Tree.method(host.operators(), "truth"), List.of(translate(raw)));
    return Tree.at(raw, new BooleanExpression(test));
  }

  private Expression range(RangeExpression raw) {
    if (raw.isExclusiveLeft()) {
      report.add(ProblemCode.FORBIDDEN, raw, "a range includes its start; write 1..5 or 0..<5");
      return hole(raw);
    }
    List<Expression> ends = new ArrayList<>(all(List.of(raw.getFrom(), raw.getTo())));
    ends.add(Tree.constant(raw, !raw.isExclusiveRight()));
    return Tree.late(raw, Planned.Late.OPERATOR, "range", ends);
  }

  private Expression cast(CastExpression raw) {
    Expression inner = translate(raw.getExpression());
    report.add(
        ProblemCode.FORBIDDEN,
        raw,
        (raw.isCoerce() ? "`as`" : "a cast") + " is not part of the plan language");
    return inner;
  }

  private Expression closure(ClosureExpression raw) {
    names.open();
    Parameter[] made = Parameter.EMPTY_ARRAY;
    if (raw.getParameters() == null) {
      made = null;
    } else if (raw.getParameters().length == 0) {
      names.declare("it");
    } else {
      made = parameters(raw.getParameters(), false);
    }
    Expression result =
        Tree.at(raw, new ClosureExpression(made, rewriter.body(raw.getCode(), raw)));
    names.close();
    return result;
  }

  /** Checks and copies parameters, and declares them in the present frame. */
  Parameter[] parameters(Parameter[] raw, boolean mustBeTyped) {
    List<Parameter> made = new ArrayList<>();
    for (Parameter p : raw) {
      boolean plain = !p.hasInitialExpression() && p.getAnnotations().isEmpty();
      if (!plain || p.isReceiver()) {
        report.add(
            ProblemCode.FORBIDDEN,
            p,
            "`" + p.getName() + "`: parameters have no default and no annotation in a plan");
      }
      if (mustBeTyped && p.isDynamicTyped()) {
        report.add(
            ProblemCode.FORBIDDEN,
            p,
            "`" + p.getName() + "` needs a type, such as int, Length, String or Shape");
      }
      DeclaredTypes.checkName(report, p, p.getName());
      ClassNode type =
          p.isDynamicTyped()
              ? mustBeTyped ? ClassHelper.make(Hole.class) : ClassHelper.dynamicType()
              : types.type(p.getType(), p);
      names.declare(
          p.getName(),
          ClassHelper.isDynamicTyped(type) || type.equals(ClassHelper.make(Hole.class))
              ? null
              : TypeWords.classOf(type));
      made.add(Tree.at(p, new Parameter(type, p.getName())));
    }
    return made.toArray(new Parameter[0]);
  }

  String nearestName(String name, Set<String> more) {
    java.util.TreeSet<String> known = new java.util.TreeSet<>(names.visible());
    known.addAll(more);
    return Nearest.hint(name, known);
  }
}
