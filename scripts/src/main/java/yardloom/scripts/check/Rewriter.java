package yardloom.scripts.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.expr.BinaryExpression;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.ClosureListExpression;
import org.codehaus.groovy.ast.expr.DeclarationExpression;
import org.codehaus.groovy.ast.expr.EmptyExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.PostfixExpression;
import org.codehaus.groovy.ast.expr.PrefixExpression;
import org.codehaus.groovy.ast.expr.PropertyExpression;
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
import org.codehaus.groovy.syntax.Token;
import org.codehaus.groovy.syntax.Types;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.words.PlanScope;

/** Translates raw statements and helpers into fresh ones, weaving in the step counter. */
final class Rewriter {
  private static final Map<Integer, String> COMPOUND =
      Map.of(
          Types.PLUS_EQUAL, "plus",
          Types.MINUS_EQUAL, "minus",
          Types.MULTIPLY_EQUAL, "multiply",
          Types.DIVIDE_EQUAL, "div");

  private final Report report;
  private final Names names = new Names();
  private final HostClasses host;
  private final Expressions expressions;
  private final WordCalls calls;
  private final Map<String, MethodNode> helpers = new LinkedHashMap<>();

  Rewriter(
      Report report,
      HostClasses host,
      ScriptSetting setting,
      ClassNode program,
      SourceText source) {
    this.report = report;
    this.host = host;
    this.expressions = new Expressions(this, report, names, host);
    this.calls = new WordCalls(this, report, names, host, setting, program, source);
  }

  WordCalls calls() {
    return calls;
  }

  Expressions expressions() {
    return expressions;
  }

  Map<String, MethodNode> helpers() {
    return helpers;
  }

  /** The parameters that the script declares. */
  List<WordCalls.Declared> params() {
    return calls.params();
  }

  /** Makes the head of each helper, so that helpers may call each other in any order. */
  void declareHelpers(List<MethodNode> raw) {
    for (MethodNode method : raw) {
      checkName(report, method, method.getName());
      if (method.isStatic()
          || method.isAbstract()
          || !method.getAnnotations().isEmpty()
          || method.getGenericsTypes() != null
          || method.getExceptions().length > 0
          || (method.getModifiers() & SYNCHRONIZED) != 0
          || (method.getModifiers() & NATIVE) != 0) {
        report.add(
            ProblemCode.FORBIDDEN,
            method,
            "a helper is plain: a type, a name and typed parameters, nothing more");
      }
      if (helpers.containsKey(method.getName()) || calls.isWord(method.getName())) {
        report.add(
            ProblemCode.DUPLICATE,
            method,
            "`" + method.getName() + "` is already taken; name the helper otherwise");
      }
      helpers.put(method.getName(), null);
    }
  }

  private static final int NATIVE = java.lang.reflect.Modifier.NATIVE;
  private static final int SYNCHRONIZED = java.lang.reflect.Modifier.SYNCHRONIZED;

  MethodNode helperHead(MethodNode raw) {
    names.openHelper();
    Names.Block block = names.openBlock(PlanScope.class);
    List<Parameter> made = new ArrayList<>();
    made.add(Tree.at(raw, new Parameter(ClassHelper.make(PlanScope.class), block.variable())));
    made.addAll(List.of(expressions.parameters(raw.getParameters(), true)));
    ClassNode type =
        ClassHelper.isDynamicTyped(raw.getReturnType())
            ? ClassHelper.dynamicType()
            : type(raw.getReturnType(), raw);
    if (type != ClassHelper.dynamicType() && type.getName().equals("java.lang.Object")) {
      type = ClassHelper.dynamicType();
    }
    MethodNode head =
        new MethodNode(
            "h$" + raw.getName(),
            java.lang.reflect.Modifier.PUBLIC | java.lang.reflect.Modifier.STATIC,
            type,
            made.toArray(new Parameter[0]),
            ClassNode.EMPTY_ARRAY,
            new BlockStatement());
    Tree.at(raw, head);
    helpers.put(raw.getName(), head);
    head.setNodeMetaData(Names.Block.class, block);
    names.close();
    names.close();
    return head;
  }

  Statement helperBody(MethodNode raw, MethodNode head) {
    names.openHelper();
    names.reopen(head.getNodeMetaData(Names.Block.class));
    for (Parameter p : raw.getParameters()) {
      names.declare(p.getName());
    }
    Statement body = stepped(raw, raw.getCode());
    names.close();
    names.close();
    return body;
  }

  /** The body of the plan itself. */
  Statement plan(List<Statement> raw, Names.Block[] block) {
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
      return Tree.at(where, new ExpressionStatement(declaration(declaration)));
    } else if (value instanceof MethodCallExpression call && call.isImplicitThis()) {
      return calls.statement(call);
    } else if (value instanceof VariableExpression name && !names.knows(name.getName())) {
      return calls.bareWord(name);
    } else if (value instanceof BinaryExpression binary
        && (binary.getOperation().getType() == Types.ASSIGN
            || COMPOUND.containsKey(binary.getOperation().getType()))) {
      return Tree.at(where, new ExpressionStatement(assignment(binary)));
    } else if (value instanceof PostfixExpression p) {
      return count(p, p.getExpression(), p.getOperation().getType());
    } else if (value instanceof PrefixExpression p) {
      return count(p, p.getExpression(), p.getOperation().getType());
    }
    return Tree.at(where, new ExpressionStatement(expressions.translate(value)));
  }

  private Statement count(Expression raw, Expression target, int sign) {
    Expression one = Tree.constant(raw, 1);
    Expression next =
        Tree.late(
            raw,
            Planned.Late.OPERATOR,
            sign == Types.PLUS_PLUS ? "plus" : "minus",
            List.of(expressions.translate(target), one));
    return Tree.at(raw, new ExpressionStatement(store(raw, target, next)));
  }

  private Expression assignment(BinaryExpression raw) {
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
          Expressions.DOORS.contains(name) ? ProblemCode.FORBIDDEN : ProblemCode.UNKNOWN_WORD,
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
        && !Expressions.DOORS.contains(((PropertyExpression) target).getPropertyAsString())
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

  private Expression declaration(DeclarationExpression raw) {
    if (raw.isMultipleAssignmentDeclaration() || !raw.getAnnotations().isEmpty()) {
      report.add(
          ProblemCode.FORBIDDEN,
          raw,
          "declare one name at a time, as in def a = …, and without annotations");
      return expressions.hole(raw);
    }
    VariableExpression variable = raw.getVariableExpression();
    String name = variable.getName();
    checkName(report, variable, name);
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
            : type(variable.getOriginType(), variable);
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

  /** The listed type that a raw type name means. */
  ClassNode type(ClassNode raw, ASTNode where) {
    String name = raw.isPrimaryClassNode() ? "" : raw.getUnresolvedName();
    name = name.startsWith("java.") ? raw.getNameWithoutPackage() : name;
    var known = ScriptTypes.named(name);
    if (known.isEmpty() || raw.isArray()) {
      if (raw.getName().equals("java.lang.Object") && !raw.isArray()) {
        return ClassHelper.dynamicType();
      }
      report.add(
          ProblemCode.FORBIDDEN,
          raw.getLineNumber() > 0 ? raw : where,
          "the plan language has no type `"
              + raw.toString(false).replace(" -> ", "")
              + "`. It has: "
              + String.join(", ", ScriptTypes.names()));
      return ClassHelper.dynamicType();
    }
    ClassNode made = ClassHelper.make(known.get());
    if (raw.getGenericsTypes() == null) {
      return made;
    }
    made = made.getPlainNodeReference();
    var generics = new org.codehaus.groovy.ast.GenericsType[raw.getGenericsTypes().length];
    for (int i = 0; i < generics.length; i++) {
      ClassNode inner = raw.getGenericsTypes()[i].getType();
      generics[i] = new org.codehaus.groovy.ast.GenericsType(TypeWords.boxed(type(inner, where)));
    }
    made.setGenericsTypes(generics);
    return made;
  }

  static void checkName(Report report, ASTNode where, String name) {
    if (!name.matches("[A-Za-z_\\p{L}][\\p{L}0-9_]*") || Expressions.DOORS.contains(name)) {
      report.add(ProblemCode.FORBIDDEN, where, "`" + name + "` cannot be used as a name in a plan");
    }
  }
}
