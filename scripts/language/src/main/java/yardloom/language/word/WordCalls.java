package yardloom.language.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.expr.ClassExpression;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.PropertyExpression;
import org.codehaus.groovy.ast.expr.VariableExpression;
import org.codehaus.groovy.ast.stmt.BlockStatement;
import org.codehaus.groovy.ast.stmt.ExpressionStatement;
import org.codehaus.groovy.ast.stmt.Statement;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.text.Report;
import yardloom.language.text.SourceText;
import yardloom.language.text.SyntaxWords;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.HostClasses;
import yardloom.language.type.LibraryLoops;
import yardloom.language.type.ScriptTypes;

/** Resolves calls by lexical scope: words, helpers, closures, built-ins. */
public final class WordCalls {
  /** A parameter that the script declares. */
  public record Declared(String name, SourceRef place) {}

  private final Rewriter rewriter;
  private final Report report;
  private final Names names;
  private final HostClasses host;
  private final ScriptSetting setting;
  private final ClassNode program;
  private final List<Declared> params = new ArrayList<>();
  private final Arguments arguments;
  private final WordNodes nodes;
  private final UnknownWords unknown;

  WordCalls(
      Rewriter rewriter,
      Report report,
      Names names,
      HostClasses host,
      ScriptSetting setting,
      ClassNode program,
      SourceText source) {
    this.rewriter = rewriter;
    this.report = report;
    this.names = names;
    this.host = host;
    this.setting = setting;
    this.program = program;
    this.arguments = new Arguments(report, source);
    this.nodes = new WordNodes(rewriter, report, names, host);
    this.unknown = new UnknownWords(rewriter, this, report, names, setting);
  }

  List<Declared> params() {
    return params;
  }

  UnknownWords unknown() {
    return unknown;
  }

  SourceText source() {
    return arguments.source();
  }

  boolean isWord(String name) {
    return setting.lexicon().names().contains(name) || Builtin.is(name);
  }

  Optional<Word> word(Class<? extends Scope> scope, String name) {
    return setting.lexicon().word(scope, name).or(() -> setting.lexicon().word(Scope.class, name));
  }

  /** A call that stands as a statement. */
  Statement statement(MethodCallExpression raw) {
    Expression made = translate(raw, true);
    return finish(raw, made);
  }

  private Statement finish(ASTNode raw, Expression made) {
    Statement call = Tree.at(raw, new ExpressionStatement(made));
    if (made.getNodeMetaData(Planned.class) instanceof Planned.WordCall) {
      BlockStatement both = new BlockStatement();
      both.addStatement(call);
      both.addStatement(rewriter.call(raw, "left"));
      return Tree.at(raw, both);
    }
    return call;
  }

  /** A name that stands alone as a statement: a word without arguments, or a mistake. */
  Statement bareWord(VariableExpression raw) {
    Optional<Word> word = word(names.innermost().type(), raw.getName());
    if (word.isPresent()) {
      Expression made =
          nodes.of(raw, word.get(), new Arguments.Given(List.of(), List.of(), List.of()), true);
      return finish(raw, made);
    }
    return Tree.at(raw, new ExpressionStatement(rewriter.expressions().translate(raw)));
  }

  Expression translate(MethodCallExpression raw, boolean statement) {
    Expression receiver = raw.getObjectExpression();
    if (receiver instanceof ConstantExpression number
        && number.getValue() instanceof Number
        && raw.getMethod().getLineNumber() < 1) {
      report.add(
          ProblemCode.SYNTAX, raw, "a unit follows its number after a dot, as in 40.ft or 2.5.m");
      return rewriter.expressions().hole(raw);
    }
    if (receiver instanceof ClosureExpression && raw.getMethod().getLineNumber() < 1) {
      // Groovy's parser makes a called closure of a switch that is used as a value.
      report.add(
          ProblemCode.FORBIDDEN,
          raw,
          "`switch`, or a closure called at once, is not part of the plan language");
      return rewriter.expressions().hole(raw);
    }
    String name = raw.getMethodAsString();
    if (name == null
        || raw.isSafe()
        || raw.isSpreadSafe()
        || raw.getGenericsTypes() != null
        || ScriptTypes.isDoor(name) && !isPlainWord(raw, name)
        || name.contains("$")
        || !(raw.getMethod().getClass() == ConstantExpression.class)) {
      report.add(
          ProblemCode.FORBIDDEN,
          raw.getMethod().getLineNumber() > 0 ? raw.getMethod() : raw,
          (name == null
                  ? "a computed name of a call"
                  : raw.isSpreadSafe() ? "`*.`" : raw.isSafe() ? "`?.`" : "`" + name + "`")
              + " is not part of the plan language");
      return rewriter.expressions().hole(raw);
    }
    Arguments.Given given = arguments.read(raw);
    return raw.isImplicitThis() ? plain(raw, name, given, statement) : received(raw, name, given);
  }

  /** A trade's word may be named like a door, such as the calls of a deed. */
  private boolean isPlainWord(MethodCallExpression raw, String name) {
    return raw.isImplicitThis() && word(names.innermost().type(), name).isPresent();
  }

  private Expression received(MethodCallExpression raw, String name, Arguments.Given given) {
    Expressions expressions = rewriter.expressions();
    if (arguments.isApart(raw)) {
      if (!SyntaxWords.bareUnit(raw.getLineNumber(), arguments.source(), report)) {
        report.add(ProblemCode.SYNTAX, raw.getMethod(), "a comma is missing near `" + name + "`");
      }
      return expressions.hole(raw);
    }
    if (!given.named().isEmpty()) {
      report.add(ProblemCode.FORBIDDEN, raw, "`" + name + "` takes no named values");
    }
    List<Expression> positional = new ArrayList<>(expressions.all(given.positional()));
    if (expressions.isMath(raw.getObjectExpression())) {
      return math(raw, name, positional);
    }
    Expression receiver = expressions.translate(raw.getObjectExpression());
    if (LibraryLoops.isNamed(name)) {
      MethodCallExpression made = Tree.call(raw, receiver, name, positional);
      made.putNodeMetaData(Planned.class, new Planned.Library(name));
      return made;
    }
    positional.add(0, receiver);
    return Tree.late(raw.getMethod(), Planned.Late.METHOD, name, positional);
  }

  private Expression math(MethodCallExpression raw, String name, List<Expression> positional) {
    String method = "math" + Character.toUpperCase(name.charAt(0)) + name.substring(1);
    boolean known =
        java.util.Arrays.stream(host.values().getMethods())
            .anyMatch(
                m -> m.getName().equals(method) && m.getParameterCount() == positional.size());
    if (!known || positional.isEmpty()) {
      report.add(
          ProblemCode.FORBIDDEN,
          raw.getMethod(),
          "`Math." + name + "` is not part of the plan language");
      return rewriter.expressions().hole(raw);
    }
    return Tree.late(raw, Planned.Late.METHOD, method, positional);
  }

  private Expression plain(
      MethodCallExpression raw, String name, Arguments.Given given, boolean statement) {
    if (Builtin.is(name)) {
      return new Builtin(rewriter, report, names, host, setting, params)
          .translate(raw, name, given);
    }
    Optional<Word> word = word(names.innermost().type(), name);
    if (word.isPresent()) {
      return nodes.of(raw, word.get(), given, statement);
    }
    if (rewriter.helpers().byName().containsKey(name)) {
      return helper(raw, name, given);
    }
    if (!statement && arguments.isBlockOfValue(raw, given)) {
      report.add(ProblemCode.SYNTAX, raw, Arguments.BRACKETS);
      return rewriter.expressions().hole(raw);
    }
    List<Expression> positional = rewriter.expressions().all(given.positional());
    if (names.knows(name)) {
      Expression closure = Tree.at(raw, new VariableExpression(name));
      MethodCallExpression made = Tree.call(raw, closure, "call", positional);
      made.putNodeMetaData(Planned.class, new Planned.ClosureCall(name));
      return made;
    }
    given.named().forEach(n -> rewriter.expressions().translate(n.value()));
    unknown.word(raw, name);
    return rewriter.expressions().hole(raw);
  }

  private Expression helper(MethodCallExpression raw, String name, Arguments.Given given) {
    MethodNode head = rewriter.helpers().byName().get(name);
    List<Expression> positional = new ArrayList<>(rewriter.expressions().all(given.positional()));
    if (head == null) {
      return rewriter.expressions().hole(raw);
    }
    int wanted = head.getParameters().length - 1;
    if (!given.named().isEmpty() || positional.size() != wanted) {
      report.add(
          ProblemCode.MISSING_OPTION,
          raw,
          "the helper `"
              + name
              + "` takes "
              + wanted
              + (wanted == 1 ? " value" : " values")
              + " by position; got "
              + (positional.size() + given.named().size()));
      return rewriter.expressions().hole(raw);
    }
    for (int i = 0; i < wanted; i++) {
      if (head.getParameters()[i + 1].getType().equals(ClassHelper.Double_TYPE)) {
        Expression number = positional.get(i);
        positional.set(i, Tree.late(number, Planned.Late.OPERATOR, "decimal", List.of(number)));
      }
    }
    positional.add(0, nodes.planBlock(raw));
    MethodCallExpression made =
        Tree.call(raw, Tree.at(raw, new ClassExpression(program)), head.getName(), positional);
    made.putNodeMetaData(Planned.class, new Planned.HelperCall(name, head));
    return made;
  }

  /** {@code bed 'a' shape} parses as a property of a call: a comma is missing. */
  boolean lacksComma(PropertyExpression raw) {
    if (raw.getObjectExpression() instanceof MethodCallExpression call
        && call.isImplicitThis()
        && arguments.isApart(raw)) {
      if (SyntaxWords.bareUnit(raw.getLineNumber(), arguments.source(), report)) {
        return true;
      }
      report.add(
          ProblemCode.SYNTAX,
          raw.getProperty(),
          "a comma is missing before `" + raw.getPropertyAsString() + "`");
      return true;
    }
    return false;
  }
}
