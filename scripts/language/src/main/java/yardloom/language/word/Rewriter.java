package yardloom.language.word;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.expr.BinaryExpression;
import org.codehaus.groovy.ast.expr.ClosureListExpression;
import org.codehaus.groovy.ast.expr.DeclarationExpression;
import org.codehaus.groovy.ast.expr.EmptyExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.PostfixExpression;
import org.codehaus.groovy.ast.expr.PrefixExpression;
import org.codehaus.groovy.ast.expr.VariableExpression;
import org.codehaus.groovy.ast.stmt.BlockStatement;
import org.codehaus.groovy.ast.stmt.BreakStatement;
import org.codehaus.groovy.ast.stmt.ContinueStatement;
import org.codehaus.groovy.ast.stmt.DoWhileStatement;
import org.codehaus.groovy.ast.stmt.EmptyStatement;
import org.codehaus.groovy.ast.stmt.ExpressionStatement;
import org.codehaus.groovy.ast.stmt.ForStatement;
import org.codehaus.groovy.ast.stmt.IfStatement;
import org.codehaus.groovy.ast.stmt.ReturnStatement;
import org.codehaus.groovy.ast.stmt.Statement;
import org.codehaus.groovy.ast.stmt.WhileStatement;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.language.text.Report;
import yardloom.language.text.SourceText;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.HostClasses;

/** Translates raw statements and helpers into fresh ones, weaving in the step counter. */
public final class Rewriter {
  private final Report report;
  private final Names names = new Names();
  private final HostClasses host;
  private final Expressions expressions;
  private final WordCalls calls;
  private final Assignments assignments;
  private final Helpers helpers;

  public Rewriter(
      Report report,
      HostClasses host,
      ScriptSetting setting,
      ClassNode program,
      SourceText source) {
    this.report = report;
    this.host = host;
    DeclaredTypes types = new DeclaredTypes(report);
    this.expressions = new Expressions(this, report, names, host, types);
    this.calls = new WordCalls(this, report, names, host, setting, program, source);
    this.assignments = new Assignments(report, names, expressions, calls, types);
    this.helpers = new Helpers(this, report, names, types);
  }

  WordCalls calls() {
    return calls;
  }

  Expressions expressions() {
    return expressions;
  }

  public Helpers helpers() {
    return helpers;
  }

  /** The parameters that the script declares. */
  public List<WordCalls.Declared> params() {
    return calls.params();
  }

  /** The body of the plan itself. */
  public Statement plan(List<Statement> raw, Names.Block[] block) {
    block[0] = names.openBlock(PlanScope.class);
    BlockStatement made = new BlockStatement();
    raw.forEach(s -> made.addStatement(statement(s)));
    names.close();
    return made;
  }

  Statement body(Statement raw, ASTNode where) {
    return stepped(where, raw);
  }

  private Statement stepped(ASTNode where, Statement raw) {
    BlockStatement made = new BlockStatement();
    made.addStatement(call(where, "step"));
    if (raw instanceof BlockStatement block) {
      block.getStatements().forEach(s -> made.addStatement(statement(s)));
    } else if (raw != null) {
      made.addStatement(statement(raw));
    }
    return Tree.at(where, made);
  }

  Statement call(ASTNode where, String guard) {
    return Tree.at(
        where,
        new ExpressionStatement(Tree.host(where, Tree.method(host.guard(), guard), List.of())));
  }

  private Statement inFrame(Supplier<Statement> make) {
    names.open();
    Statement made = make.get();
    names.close();
    return made;
  }

  Statement statement(Statement raw) {
    if (raw.getStatementLabels() != null) {
      report.add(
          ProblemCode.SYNTAX,
          raw,
          "`"
              + raw.getStatementLabels().get(0)
              + ":` stands alone; is a comma missing at the end of the line before?");
    }
    Class<?> kind = raw.getClass();
    if (kind == ExpressionStatement.class) {
      return expression(raw, ((ExpressionStatement) raw).getExpression());
    } else if (kind == BlockStatement.class) {
      return inFrame(
          () -> {
            BlockStatement made = new BlockStatement();
            ((BlockStatement) raw).getStatements().forEach(s -> made.addStatement(statement(s)));
            return Tree.at(raw, made);
          });
    } else if (kind == IfStatement.class) {
      IfStatement s = (IfStatement) raw;
      return Tree.at(
          raw,
          new IfStatement(
              expressions.truth(s.getBooleanExpression()),
              inFrame(() -> statement(s.getIfBlock())),
              inFrame(() -> statement(s.getElseBlock()))));
    } else if (kind == ForStatement.class) {
      return inFrame(() -> loop((ForStatement) raw));
    } else if (kind == WhileStatement.class) {
      WhileStatement s = (WhileStatement) raw;
      return Tree.at(
          raw,
          new WhileStatement(
              expressions.truth(s.getBooleanExpression()),
              inFrame(() -> stepped(raw, s.getLoopBlock()))));
    } else if (kind == DoWhileStatement.class) {
      DoWhileStatement s = (DoWhileStatement) raw;
      Statement loop = inFrame(() -> stepped(raw, s.getLoopBlock()));
      return Tree.at(raw, new DoWhileStatement(expressions.truth(s.getBooleanExpression()), loop));
    } else if (kind == ReturnStatement.class) {
      Expression value = ((ReturnStatement) raw).getExpression();
      return Tree.at(raw, new ReturnStatement(expressions.translate(value)));
    } else if (kind == BreakStatement.class && ((BreakStatement) raw).getLabel() == null) {
      return Tree.at(raw, new BreakStatement());
    } else if (kind == ContinueStatement.class && ((ContinueStatement) raw).getLabel() == null) {
      return Tree.at(raw, new ContinueStatement());
    } else if (raw instanceof EmptyStatement) {
      return EmptyStatement.INSTANCE;
    }
    Forbidden.statement(raw, report);
    return EmptyStatement.INSTANCE;
  }

  private Statement loop(ForStatement raw) {
    Expression source = raw.getCollectionExpression();
    if (source instanceof ClosureListExpression parts) {
      List<Expression> made = new ArrayList<>();
      for (int i = 0; i < parts.getExpressions().size(); i++) {
        made.add(part(parts.getExpressions().get(i), i == 1));
      }
      Expression head = Tree.at(raw, new ClosureListExpression(made));
      return Tree.at(
          raw,
          new ForStatement(ForStatement.FOR_LOOP_DUMMY, head, stepped(raw, raw.getLoopBlock())));
    }
    Expression over = expressions.translate(source);
    Expression list = Tree.late(source, Planned.Late.OPERATOR, "loop", List.of(over));
    Parameter[] variable = expressions.parameters(new Parameter[] {raw.getVariable()}, false);
    return Tree.at(raw, new ForStatement(variable[0], list, stepped(raw, raw.getLoopBlock())));
  }

  private Expression part(Expression raw, boolean condition) {
    if (raw instanceof EmptyExpression) {
      return EmptyExpression.INSTANCE;
    }
    if (condition) {
      return expressions.truth(raw);
    }
    Statement made = expression(new ExpressionStatement(raw), raw);
    if (made instanceof ExpressionStatement single) {
      return single.getExpression();
    }
    report.add(ProblemCode.FORBIDDEN, raw, "a word cannot stand in the head of a loop");
    return expressions.hole(raw);
  }

  private Statement expression(Statement raw, Expression value) {
    ASTNode where = value;
    if (value instanceof DeclarationExpression declaration) {
      return Tree.at(where, new ExpressionStatement(assignments.declaration(declaration)));
    } else if (value instanceof MethodCallExpression call && call.isImplicitThis()) {
      return calls.statement(call);
    } else if (value instanceof VariableExpression name && !names.knows(name.getName())) {
      return calls.bareWord(name);
    } else if (value instanceof BinaryExpression binary && assignments.isAssignment(binary)) {
      return Tree.at(where, new ExpressionStatement(assignments.assignment(binary)));
    } else if (value instanceof PostfixExpression p) {
      return assignments.count(p, p.getExpression(), p.getOperation().getType());
    } else if (value instanceof PrefixExpression p) {
      return assignments.count(p, p.getExpression(), p.getOperation().getType());
    }
    return Tree.at(where, new ExpressionStatement(expressions.translate(value)));
  }
}
