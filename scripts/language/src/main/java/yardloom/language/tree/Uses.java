package yardloom.language.tree;

import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.CodeVisitorSupport;
import org.codehaus.groovy.ast.expr.BinaryExpression;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.DeclarationExpression;
import org.codehaus.groovy.ast.expr.ListExpression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.VariableExpression;
import org.codehaus.groovy.ast.stmt.BreakStatement;
import org.codehaus.groovy.ast.stmt.ContinueStatement;
import org.codehaus.groovy.ast.stmt.ForStatement;
import org.codehaus.groovy.ast.stmt.ReturnStatement;
import org.codehaus.groovy.syntax.Types;

/** How much room rewritten code takes in its method, and which variables it touches. */
final class Uses extends CodeVisitorSupport {
  /** What a closure takes where it stands; its own code lies in a method of its own. */
  static final int CLOSURE = 6;

  private final Set<String> touched = new HashSet<>();
  private final Set<String> changed = new HashSet<>();
  private int nodes;
  private int closures;
  private boolean leaves;

  private Uses() {}

  static Uses of(ASTNode code) {
    Uses uses = new Uses();
    code.visit(uses);
    return uses;
  }

  int nodes() {
    return nodes;
  }

  /** The variables that are given a value other than where they are declared. */
  Set<String> changed() {
    return changed;
  }

  /** Whether it does the same in a closure: it ends nothing around it and touches none of those. */
  boolean movesWithout(Set<String> variables) {
    return !leaves && Collections.disjoint(touched, variables);
  }

  private void node() {
    if (closures == 0) {
      nodes++;
    }
  }

  @Override
  public void visitClosureExpression(ClosureExpression closure) {
    nodes += closures == 0 ? CLOSURE : 0;
    closures++;
    super.visitClosureExpression(closure);
    closures--;
  }

  @Override
  public void visitConstantExpression(ConstantExpression constant) {
    node();
  }

  @Override
  public void visitMethodCallExpression(MethodCallExpression call) {
    node();
    super.visitMethodCallExpression(call);
  }

  @Override
  public void visitCastExpression(CastExpression cast) {
    node();
    super.visitCastExpression(cast);
  }

  @Override
  public void visitListExpression(ListExpression list) {
    node();
    super.visitListExpression(list);
  }

  @Override
  public void visitVariableExpression(VariableExpression variable) {
    node();
    touched.add(variable.getName());
  }

  @Override
  public void visitDeclarationExpression(DeclarationExpression declaration) {
    super.visitBinaryExpression(declaration);
  }

  @Override
  public void visitBinaryExpression(BinaryExpression binary) {
    if (binary.getOperation().getType() == Types.ASSIGN
        && binary.getLeftExpression() instanceof VariableExpression variable) {
      changed.add(variable.getName());
    }
    super.visitBinaryExpression(binary);
  }

  @Override
  public void visitForLoop(ForStatement loop) {
    node();
    super.visitForLoop(loop);
  }

  @Override
  public void visitReturnStatement(ReturnStatement end) {
    leaves |= closures == 0;
    super.visitReturnStatement(end);
  }

  @Override
  public void visitBreakStatement(BreakStatement end) {
    leaves |= closures == 0;
  }

  @Override
  public void visitContinueStatement(ContinueStatement end) {
    leaves |= closures == 0;
  }
}
