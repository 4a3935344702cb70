package yardloom.language.tree;

import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.Expression;

/** A strict cast whose type becomes known in the typed pass. */
public final class LateCast extends CastExpression {
  private ClassNode type = ClassHelper.OBJECT_TYPE;

  public LateCast(Expression inner) {
    super(ClassHelper.OBJECT_TYPE, inner);
    setStrict(true);
  }

  @Override
  public ClassNode getType() {
    return type == null ? super.getType() : type;
  }

  @Override
  public void setType(ClassNode newType) {
    type = newType;
  }
}
