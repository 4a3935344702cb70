package yardloom.scripts.check;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.Parameter;
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
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;

/** Resolves calls by lexical scope: words, helpers, closures, built-ins. */
final class WordCalls {
  /** A parameter that the script declares. */
  record Declared(String name, SourceRef place) {}

  /** Library loops that Groovy's checker resolves, because it infers their closures' parameters. */
  static final Set<String> LIBRARY =
      Set.of(
          "each",
          "eachWithIndex",
          "collect",
          "findAll",
          "find",
          "any",
          "every",
          "times",
          "upto",
          "downto");

  private final Rewriter rewriter;
  private final Report report;
  private final Names names;
  private final HostClasses host;
  private final ScriptSetting setting;
  private final ClassNode program;
  private final List<Declared> params = new ArrayList<>();
  private final Arguments arguments;

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
  }

  List<Declared> params() {
    return params;
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
          word(raw, word.get(), new Arguments.Given(List.of(), List.of(), List.of()), true);
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
        || Expressions.DOORS.contains(name) && !isPlainWord(raw, name)
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
    if (LIBRARY.contains(name)) {
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
      return word(raw, word.get(), given, statement);
    }
    if (rewriter.helpers().containsKey(name)) {
      return helper(raw, name, given);
    }
    List<Expression> positional = rewriter.expressions().all(given.positional());
    if (names.knows(name)) {
      Expression closure = Tree.at(raw, new VariableExpression(name));
      MethodCallExpression made = Tree.call(raw, closure, "call", positional);
      made.putNodeMetaData(Planned.class, new Planned.ClosureCall(name));
      return made;
    }
    given.named().forEach(n -> rewriter.expressions().translate(n.value()));
    unknownWord(raw, name);
    return rewriter.expressions().hole(raw);
  }

  private Expression helper(MethodCallExpression raw, String name, Arguments.Given given) {
    MethodNode head = rewriter.helpers().get(name);
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
    positional.add(0, planBlock(raw));
    MethodCallExpression made =
        Tree.call(raw, Tree.at(raw, new ClassExpression(program)), head.getName(), positional);
    made.putNodeMetaData(Planned.class, new Planned.HelperCall(name, head));
    return made;
  }

  /** The plan around us: helpers draw into it wherever they are called. */
  private Expression planBlock(ASTNode raw) {
    Names.Block plan = names.innermost();
    for (Iterator<Names.Block> i = names.blocks(); i.hasNext(); ) {
      plan = i.next();
    }
    return blockVariable(raw, plan);
  }

  private static Expression blockVariable(ASTNode raw, Names.Block block) {
    return Tree.cast(
        raw,
        ClassHelper.make(block.type()),
        Tree.at(raw, new VariableExpression(block.variable())));
  }

  private Expression word(ASTNode raw, Word word, Arguments.Given given, boolean statement) {
    List<Expression> ordered = new Arguments.Matcher(report, rewriter).match(raw, word, given);
    List<Expression> all = new ArrayList<>();
    all.add(placed(raw, word));
    List<Expression> passed = new ArrayList<>();
    for (Expression e : ordered) {
      passed.add(e == null ? Tree.constant(raw, null) : e);
    }
    all.addAll(passed);
    word.inner().ifPresent(inner -> all.add(block(raw, word, inner, given)));
    MethodCallExpression call =
        Tree.call(
            raw, Tree.type(raw, word.method().getDeclaringClass()), word.method().getName(), all);
    call.putNodeMetaData(Planned.class, new Planned.WordCall(word, ordered));
    if (word.method().getReturnType() == void.class) {
      if (!statement) {
        report.add(
            ProblemCode.WRONG_TYPE,
            raw,
            "`" + word.name() + "` gives no value; write it on its own");
        return rewriter.expressions().hole((Expression) raw);
      }
      return call;
    }
    Expression left = Tree.host(raw, Tree.method(host.guard(), "leave"), List.of(call));
    return Tree.cast(raw, Tree.node(word.method()).getReturnType(), left);
  }

  private Expression placed(ASTNode raw, Word word) {
    SourceRef place = report.place(raw);
    Expression at =
        Tree.host(
            raw,
            Tree.method(host.guard(), "at"),
            List.of(
                blockVariable(raw, names.innermost()),
                Tree.constant(raw, place.file()),
                Tree.constant(raw, place.line()),
                Tree.constant(raw, place.column())));
    return Tree.cast(raw, ClassHelper.make(word.method().getParameterTypes()[0]), at);
  }

  private Expression block(
      ASTNode raw, Word word, Class<? extends Scope> inner, Arguments.Given given) {
    if (given.block().isEmpty()) {
      return Tree.constant(raw, null);
    }
    ClosureExpression body = given.block().get(0);
    if (body.getParameters() != null && body.getParameters().length > 0) {
      report.add(
          ProblemCode.FORBIDDEN, body, "the block of `" + word.name() + "` takes no parameters");
    }
    Names.Block block = names.openBlock(inner);
    Parameter self = Tree.at(body, new Parameter(ClassHelper.make(inner), block.variable()));
    Expression closure =
        Tree.at(
            body,
            new ClosureExpression(new Parameter[] {self}, rewriter.body(body.getCode(), body)));
    names.close();
    return Tree.host(body, Tree.method(host.guard(), "block"), List.of(closure));
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

  private void unknownWord(ASTNode where, String name) {
    Class<? extends Scope> scope = names.innermost().type();
    String block = Scope.nameOf(scope);
    List<Word> elsewhere =
        setting.lexicon().all().stream().filter(w -> w.name().equals(name)).toList();
    if (!elsewhere.isEmpty()) {
      String homes =
          elsewhere.stream()
              .map(w -> Scope.nameOf(w.scope()))
              .map(s -> s.equals("plan") ? "the plan" : s)
              .distinct()
              .collect(Collectors.joining(" or "));
      report.add(
          ProblemCode.MISPLACED_WORD,
          where,
          "`"
              + name
              + "` belongs in "
              + homes
              + ", not "
              + (block.equals("plan") ? "in the plan itself" : "inside " + block));
      return;
    }
    Optional<String> plugin = setting.missing().apply(block, name);
    if (plugin.isPresent()) {
      report.add(
          ProblemCode.MISSING_PLUGIN,
          where,
          "`"
              + name
              + "` in "
              + block
              + " belongs to the plugin "
              + plugin.get()
              + ", which is not loaded");
      return;
    }
    TreeSet<String> known = new TreeSet<>();
    setting.lexicon().words(scope).forEach(w -> known.add(w.name()));
    setting.lexicon().words(Scope.class).forEach(w -> known.add(w.name()));
    known.addAll(Builtin.in(block));
    TreeSet<String> near = new TreeSet<>(known);
    near.addAll(rewriter.helpers().keySet());
    String forbidden =
        Character.isUpperCase(name.charAt(0)) ? "" : " It knows: " + String.join(", ", known);
    report.add(
        ProblemCode.UNKNOWN_WORD,
        where,
        block + " has no `" + name + "`." + Nearest.hint(name, near) + forbidden);
  }

  /** Reports a name that stands for no variable. */
  void unknownName(ASTNode where, String name) {
    if (isWord(name)) {
      report.add(
          ProblemCode.UNKNOWN_WORD,
          where,
          "`" + name + "` is a word; put what belongs to it in brackets, as in " + name + "(…)");
    } else if (names.hiddenByHelper(name)) {
      report.add(
          ProblemCode.UNKNOWN_WORD,
          where,
          "a helper does not see the script's `" + name + "`; give it as a parameter");
    } else if (Character.isUpperCase(name.charAt(0))) {
      report.add(ProblemCode.FORBIDDEN, where, "`" + name + "` is not part of the plan language");
    } else {
      report.add(
          ProblemCode.UNKNOWN_WORD,
          where,
          "`"
              + name
              + "` is not known here."
              + rewriter.expressions().nearestName(name, setting.lexicon().names()));
    }
  }
}
