package yardloom.language.word;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.VariableExpression;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.text.Report;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.HostClasses;

/** Makes the call of a word: its place, its values in their declared order, its block. */
final class WordNodes {
  private final Rewriter rewriter;
  private final Report report;
  private final Names names;
  private final HostClasses host;

  WordNodes(Rewriter rewriter, Report report, Names names, HostClasses host) {
    this.rewriter = rewriter;
    this.report = report;
    this.names = names;
    this.host = host;
  }

  /** The plan around us: helpers draw into it wherever they are called. */
  Expression planBlock(ASTNode raw) {
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

  Expression of(ASTNode raw, Word word, Arguments.Given given, boolean statement) {
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
}
