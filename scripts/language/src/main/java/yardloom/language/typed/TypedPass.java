package yardloom.language.typed;

import java.util.ArrayList;
import java.util.List;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.expr.ArgumentListExpression;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.ListExpression;
import org.codehaus.groovy.ast.expr.MapExpression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.stmt.ReturnStatement;
import org.codehaus.groovy.control.SourceUnit;
import org.codehaus.groovy.transform.sc.StaticCompilationVisitor;
import org.codehaus.groovy.transform.stc.ExtensionMethodNode;
import org.codehaus.groovy.transform.stc.StaticTypesMarker;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.vocab.Word;
import yardloom.language.text.Report;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.ElementTypes;
import yardloom.language.type.Hole;
import yardloom.language.type.HostClasses;
import yardloom.language.type.LibraryLoops;
import yardloom.language.type.TypeWords;

/**
 * Groovy's static compiler, with the rewritten nodes resolved here and every error said in the
 * words of the language.
 */
public final class TypedPass extends StaticCompilationVisitor {
  private static final ClassNode HOLE = ClassHelper.make(Hole.class);

  private final Report report;
  private final LateCalls late;

  public TypedPass(SourceUnit source, ClassNode node, Report report, HostClasses host) {
    super(source, node);
    this.report = report;
    this.late = new LateCalls(report, host, this::getType);
  }

  @Override
  public void visitCastExpression(CastExpression cast) {
    Object planned = cast.getNodeMetaData(Planned.class);
    if (planned instanceof Planned.Fixed fixed) {
      cast.getExpression().visit(this);
      storeType(cast, fixed.type());
    } else if (planned instanceof Planned.Variable) {
      cast.getExpression().visit(this);
      ClassNode known = getType(cast.getExpression());
      Class<?> listed = late.classOf(cast.getExpression());
      cast.setType(ClassHelper.make(listed == Hole.class ? Object.class : listed));
      storeType(cast, listed == Object.class ? ClassHelper.OBJECT_TYPE : ElementTypes.plain(known));
    } else if (planned instanceof Planned.Held held) {
      cast.getExpression().visit(this);
      hold(cast, held);
    } else if (planned instanceof Planned.Param param) {
      cast.getExpression().visit(this);
      ClassNode type = late.paramType(param.fallback());
      cast.setType(type);
      storeType(cast, type);
    } else if (planned instanceof Planned.Part part) {
      cast.getExpression().visit(this);
      ClassNode type = ElementTypes.plain(getInferredReturnType(part.body()));
      cast.setType(TypeWords.boxed(type).getPlainNodeReference());
      storeType(cast, type);
    } else if (planned instanceof Planned.Late call) {
      call.operands().forEach(e -> e.visit(this));
      LateCalls.Found found = late.resolve(call);
      if (found == null) {
        storeType(cast, HOLE);
        return;
      }
      aim(call.call(), found);
      cast.setType(TypeWords.boxed(found.type()).getPlainNodeReference());
      storeType(cast, TypeWords.boxed(found.type()));
    } else {
      super.visitCastExpression(cast);
    }
  }

  private void hold(CastExpression cast, Planned.Held held) {
    Class<?> given = late.classOf(cast.getExpression());
    boolean unknown = given == Object.class;
    if (isMixed(given, held.declared())) {
      cast.setType(ClassHelper.make(held.declared()));
      storeType(cast, ClassHelper.make(held.declared()));
      return;
    }
    if (unknown || !TypeWords.fits(given, held.declared())) {
      report.add(
          ProblemCode.WRONG_TYPE,
          cast,
          "`"
              + held.name()
              + "` holds "
              + TypeWords.needed(held.declared())
              + "; got "
              + (given == Double.class ? "a decimal number" : TypeWords.a(given)));
      storeType(cast, HOLE);
      return;
    }
    cast.setType(ClassHelper.make(held.declared()));
    storeType(
        cast,
        given == Void.class
            ? ClassHelper.make(held.declared())
            : ElementTypes.plain(getType(cast.getExpression())));
  }

  /** Groovy lets anything be returned as a text; here a text is a text. */
  @Override
  protected ClassNode checkReturnType(ReturnStatement statement) {
    MethodNode method = typeCheckingContext.getEnclosingMethod();
    boolean text =
        method != null
            && typeCheckingContext.getEnclosingClosure() == null
            && method.getReturnType().equals(ClassHelper.STRING_TYPE);
    Class<?> given = late.classOf(statement.getExpression());
    if (text && !TypeWords.fits(given, String.class)) {
      report.add(
          ProblemCode.WRONG_TYPE,
          statement.getExpression(),
          "the helper returns a text; got " + TypeWords.a(given));
      return null;
    }
    return super.checkReturnType(statement);
  }

  @Override
  public void visitListExpression(ListExpression list) {
    super.visitListExpression(list);
    storeType(list, getType(list));
  }

  @Override
  public void visitMapExpression(MapExpression map) {
    super.visitMapExpression(map);
    storeType(map, getType(map));
  }

  /** Literals are plain lists and maps; an empty one fits any declared element type. */
  @Override
  protected ClassNode getType(ASTNode node) {
    ClassNode type = super.getType(node);
    if (node instanceof ListExpression list) {
      return list.getExpressions().isEmpty()
          ? ClassHelper.LIST_TYPE.getPlainNodeReference()
          : ElementTypes.plain(type);
    } else if (node instanceof MapExpression map) {
      return map.getMapEntryExpressions().isEmpty()
          ? ClassHelper.MAP_TYPE.getPlainNodeReference()
          : ElementTypes.plain(type);
    }
    return type;
  }

  private void aim(MethodCallExpression call, LateCalls.Found found) {
    call.setObjectExpression(found.receiver());
    call.setMethod(Tree.constant(call, found.target().getName()));
    call.setArguments(
        Tree.at(call, new ArgumentListExpression(new ArrayList<>(found.arguments()))));
    target(call, found.target(), found.target().getReturnType());
  }

  private void target(MethodCallExpression call, MethodNode target, ClassNode type) {
    call.putNodeMetaData(StaticTypesMarker.DIRECT_METHOD_CALL_TARGET, target);
    call.setMethodTarget(target);
    storeType(call, type);
  }

  @Override
  public void visitMethodCallExpression(MethodCallExpression call) {
    Object planned = call.getNodeMetaData(Planned.class);
    if (planned instanceof Planned.Host host) {
      visitArguments(call);
      MethodNode target = Tree.node(host.target());
      boolean hole = host.target().getName().equals("hole");
      target(call, target, hole ? HOLE : target.getReturnType());
    } else if (planned instanceof Planned.WordCall word) {
      visitArguments(call);
      check(word, call);
      MethodNode target = Tree.node(word.word().method());
      target(call, target, target.getReturnType());
    } else {
      super.visitMethodCallExpression(call);
      if (planned != null) {
        checkTarget(call, planned);
      }
      // Calls without a plan are the compiler's own questions; the class gate judges what it keeps.
    }
  }

  private void visitArguments(MethodCallExpression call) {
    for (Expression e : (ArgumentListExpression) call.getArguments()) {
      e.visit(this);
    }
  }

  private void check(Planned.WordCall call, MethodCallExpression made) {
    List<Word.Parameter> parameters = call.word().parameters();
    for (int i = 0; i < parameters.size(); i++) {
      Expression given = call.given().get(i);
      if (given == null) {
        continue;
      }
      Word.Parameter p = parameters.get(i);
      Class<?> type = late.classOf(given);
      boolean nothing = type == Void.class && p.required();
      if (isMixed(type, p.type()) && narrowed(made, given, p.type())) {
        continue;
      }
      if (nothing || !TypeWords.fits(type, p.type())) {
        report.add(
            ProblemCode.WRONG_TYPE,
            given,
            "`"
                + call.word().name()
                + "`: "
                + p.name()
                + " needs "
                + TypeWords.needed(p.type())
                + "; got "
                + TypeWords.a(type)
                + (type == Handle.class && p.type() == Shape.class
                    ? "; write .shape behind it"
                    : ""));
      }
    }
  }

  /**
   * Whether a value comes from a row or list of several kinds, of which the wanted one may be one:
   * which it is shows when the script runs.
   */
  private static boolean isMixed(Class<?> given, Class<?> wanted) {
    return given.isInterface()
        && !TypeWords.fits(given, wanted)
        && (given.isAssignableFrom(wanted) || wanted == Number.class && given == Comparable.class);
  }

  /**
   * Puts a strict cast around an argument, or finds it there, since the body of a loop is read
   * twice; false if it does not stand there as it is.
   */
  private boolean narrowed(MethodCallExpression call, Expression given, Class<?> wanted) {
    List<Expression> arguments = ((ArgumentListExpression) call.getArguments()).getExpressions();
    for (int i = 0; i < arguments.size(); i++) {
      if (arguments.get(i) instanceof CastExpression cast && cast.getExpression() == given) {
        return true;
      }
      if (arguments.get(i) == given) {
        ClassNode type = ClassHelper.make(wanted);
        CastExpression cast = Tree.cast(given, type, given);
        storeType(cast, type);
        arguments.set(i, cast);
        return true;
      }
    }
    return false;
  }

  /** Only library loops on lists, maps and numbers, helpers, and closures may be left over. */
  private void checkTarget(MethodCallExpression call, Object planned) {
    MethodNode target = call.getNodeMetaData(StaticTypesMarker.DIRECT_METHOD_CALL_TARGET);
    if (planned instanceof Planned.HelperCall helper) {
      if (target != helper.head()) {
        wrongHelper(call, helper);
      }
      return;
    }
    if (target == null) {
      if (!report.knows(call) && !report.knows(call.getMethod())) {
        noMethod(call, late.classOf(call.getObjectExpression()));
      }
      return;
    }
    boolean fine =
        planned instanceof Planned.Library
                && target instanceof ExtensionMethodNode extension
                && LibraryLoops.allows(extension.getExtensionMethodNode())
            || planned instanceof Planned.ClosureCall
                && target.getDeclaringClass().equals(ClassHelper.CLOSURE_TYPE);
    if (!fine) {
      noMethod(call, late.classOf(call.getObjectExpression()));
    }
  }

  private void wrongHelper(MethodCallExpression call, Planned.HelperCall helper) {
    List<Expression> given = ((ArgumentListExpression) call.getArguments()).getExpressions();
    for (int i = 1; i < given.size(); i++) {
      Class<?> wanted = TypeWords.classOf(helper.head().getParameters()[i].getType());
      Class<?> type = late.classOf(given.get(i));
      if (wanted != Hole.class && !TypeWords.fits(type, wanted)) {
        report.add(
            ProblemCode.WRONG_TYPE,
            given.get(i),
            "`"
                + helper.name()
                + "`: "
                + helper.head().getParameters()[i].getName()
                + " needs "
                + TypeWords.needed(wanted)
                + "; got "
                + TypeWords.a(type));
      }
    }
  }

  private void noMethod(MethodCallExpression call, Class<?> receiver) {
    if (receiver != Hole.class) {
      String name = call.getMethodAsString();
      boolean closure = call.getNodeMetaData(Planned.class) instanceof Planned.ClosureCall;
      report.add(
          ProblemCode.WRONG_TYPE,
          call,
          closure
              ? "`"
                  + ((Planned.ClosureCall) call.getNodeMetaData(Planned.class)).name()
                  + "` holds "
                  + TypeWords.a(receiver)
                  + " and cannot be called like this"
              : "`" + name + "` cannot be used on " + TypeWords.a(receiver) + " in this way");
    }
  }

  @Override
  protected void addStaticTypeError(String message, ASTNode node) {
    if (typeCheckingContext.getErrorCollector() != getSourceUnit().getErrorCollector()) {
      // The compiler only tries something out.
      super.addStaticTypeError(message, node);
      return;
    }
    if (message.contains(Hole.class.getSimpleName()) || message.contains("#h$")) {
      // Already reported, or about to be, in our words.
      return;
    }
    if (node.getNodeMetaData(Planned.class) instanceof Planned.HelperCall) {
      return;
    }
    ASTNode place = node;
    if (node.getLineNumber() < 1 && node instanceof ConstantExpression) {
      place = typeCheckingContext.getEnclosingClassNode();
    }
    if (!report.knows(place)) {
      report.add(ProblemCode.WRONG_TYPE, place, CompilerWords.reword(message, node));
    }
  }

  @Override
  public void addError(String message, ASTNode node) {
    addStaticTypeError(message, node);
  }
}
