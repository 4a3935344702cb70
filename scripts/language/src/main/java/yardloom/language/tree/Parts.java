package yardloom.language.tree;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.CodeVisitorSupport;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.DeclarationExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.ListExpression;
import org.codehaus.groovy.ast.stmt.BlockStatement;
import org.codehaus.groovy.ast.stmt.ExpressionStatement;
import org.codehaus.groovy.ast.stmt.ReturnStatement;
import org.codehaus.groovy.ast.stmt.Statement;

/**
 * Cuts long bodies into closures that run one after the other, since a method of the Java machine
 * holds 64 KB and a plan of hundreds of beds needs more.
 *
 * <p>A statement moves into a closure only where that changes nothing: it ends nothing around it
 * and touches no variable that is given a value more than once, because the types of such variables
 * are followed from line to line, which stops at a closure. A declaration stays and its value
 * moves. Lists are cut by their items. Bodies below {@link #METHOD} nodes are left as they are.
 */
public final class Parts extends CodeVisitorSupport {
  /** Nodes that a method may hold; one takes about 6 bytes, word calls the most. */
  static final int METHOD = 2_000;

  /** Nodes after which a part is full. */
  private static final int PART = 500;

  /** What is below this stays where it is alone: the call of a closure takes as much room. */
  private static final int SMALL = 20;

  private final Method part;
  private final Set<String> changed;

  private Parts(Method part, Set<String> changed) {
    this.part = part;
    this.changed = changed;
  }

  /**
   * Cuts the body of a method where it is too long.
   *
   * @param part the host method that calls a closure and gives what it gives
   */
  public static void cut(Statement body, Method part) {
    body.visit(new Parts(part, Uses.of(body).changed()));
  }

  /** The statement that takes the most room in its own method, for the message when all fails. */
  public static ASTNode longest(Collection<Statement> bodies) {
    Statement[] found = {bodies.iterator().next()};
    int[] most = {-1};
    CodeVisitorSupport search =
        new CodeVisitorSupport() {
          @Override
          public void visitBlockStatement(BlockStatement block) {
            int nodes = Uses.of(block).nodes();
            if (nodes > most[0] && !block.getStatements().isEmpty()) {
              most[0] = nodes;
              found[0] =
                  block.getStatements().stream()
                      .max(Comparator.comparingInt(s -> Uses.of(s).nodes()))
                      .orElseThrow();
            }
            super.visitBlockStatement(block);
          }
        };
    bodies.forEach(b -> b.visit(search));
    return found[0];
  }

  @Override
  public void visitCastExpression(CastExpression cast) {
    super.visitCastExpression(cast);
    if (cast instanceof LateCast late
        && cast.getExpression() instanceof ListExpression list
        && Uses.of(list).nodes() > PART
        && Uses.of(list).movesWithout(changed)) {
      late.hold(halves(list.getExpressions(), list));
    }
  }

  /** The items as a sum of lists, each in a closure of its own. */
  private Expression halves(List<Expression> items, ListExpression where) {
    ListExpression all = new ListExpression(new ArrayList<>(items));
    if (items.size() == 1 || Uses.of(all).nodes() <= PART) {
      return value(known(all, where));
    }
    int half = items.size() / 2;
    List<Expression> both =
        List.of(
            halves(items.subList(0, half), where),
            halves(items.subList(half, items.size()), where));
    return value(Tree.late(where, Planned.Late.OPERATOR, "plus", both));
  }

  private static Expression known(ListExpression made, Expression where) {
    LateCast cast = Tree.at(where, new LateCast(Tree.at(where, made)));
    cast.putNodeMetaData(Planned.class, new Planned.Variable());
    return cast;
  }

  @Override
  public void visitBlockStatement(BlockStatement block) {
    super.visitBlockStatement(block);
    List<Statement> all = block.getStatements();
    if (Uses.of(block).nodes() <= METHOD) {
      return;
    }
    all.forEach(this::shorten);
    int before = Integer.MAX_VALUE;
    while (Uses.of(block).nodes() > METHOD && all.size() < before) {
      before = all.size();
      List<Statement> fewer = grouped(all);
      all.clear();
      all.addAll(fewer);
    }
  }

  /** The statements with neighbours put together; as many as before if none can be. */
  private List<Statement> grouped(List<Statement> all) {
    List<Statement> made = new ArrayList<>();
    List<Statement> open = new ArrayList<>();
    int nodes = 0;
    for (Statement each : all) {
      Uses uses = Uses.of(each);
      if (!uses.movesWithout(changed) || isDeclaration(each)) {
        close(open, made);
        nodes = 0;
        made.add(each);
        continue;
      }
      open.add(each);
      nodes += uses.nodes();
      if (nodes > PART) {
        close(open, made);
        nodes = 0;
      }
    }
    close(open, made);
    return made;
  }

  private static boolean isDeclaration(Statement statement) {
    return statement instanceof ExpressionStatement s
        && s.getExpression() instanceof DeclarationExpression;
  }

  private void shorten(Statement statement) {
    if (isDeclaration(statement) && Uses.of(statement).nodes() > SMALL) {
      DeclarationExpression declared =
          (DeclarationExpression) ((ExpressionStatement) statement).getExpression();
      if (Uses.of(declared.getRightExpression()).movesWithout(changed)) {
        declared.setRightExpression(value(declared.getRightExpression()));
      }
    }
  }

  private void close(List<Statement> open, List<Statement> made) {
    if (open.size() == 1 && Uses.of(open.get(0)).nodes() <= SMALL) {
      made.add(open.get(0));
    } else if (!open.isEmpty()) {
      BlockStatement body = new BlockStatement();
      open.forEach(body::addStatement);
      Statement where = open.get(0);
      ClosureExpression closure = closure(where, Tree.at(where, body));
      made.add(Tree.at(where, new ExpressionStatement(Tree.host(where, part, List.of(closure)))));
    }
    open.clear();
  }

  /** The expression as a closure gives it, cast to what the typed pass finds. */
  private Expression value(Expression inner) {
    BlockStatement body = new BlockStatement();
    body.addStatement(Tree.at(inner, new ReturnStatement(inner)));
    ClosureExpression closure = closure(inner, Tree.at(inner, body));
    LateCast made = Tree.at(inner, new LateCast(Tree.host(inner, part, List.of(closure))));
    made.putNodeMetaData(Planned.class, new Planned.Part(closure));
    return made;
  }

  private static ClosureExpression closure(ASTNode where, BlockStatement body) {
    return Tree.at(where, new ClosureExpression(Parameter.EMPTY_ARRAY, body));
  }
}
