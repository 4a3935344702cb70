package yardloom.language.tree;

import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.ExpressionTransformer;

/** A strict cast whose type becomes known in the typed pass. */
public final class LateCast extends CastExpression {
  private ClassNode type = ClassHelper.OBJECT_TYPE;
  private Expression held;

  public LateCast(Expression inner) {
    super(ClassHelper.OBJECT_TYPE, inner);
    held = inner;
    setStrict(true);
  }

  /** Casts {@code inner} from now on. */
  void hold(Expression inner) {
    held = inner;
  }

  @Override
  public Expression getExpression() {
    return held == null ? super.getExpression() : held;
  }

  /** As its parent does, which would take the expression that it began with. */
  @Override
  public Expression transformExpression(ExpressionTransformer transformer) {
    CastExpression made =
        new CastExpression(
            getType(), transformer.transform(getExpression()), isIgnoringAutoboxing());
    made.setSourcePosition(this);
    made.setCoerce(isCoerce());
    made.setStrict(isStrict());
    made.copyNodeMetaData(this);
    return made;
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
