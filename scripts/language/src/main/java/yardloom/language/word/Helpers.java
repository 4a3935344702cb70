package yardloom.language.word;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.stmt.BlockStatement;
import org.codehaus.groovy.ast.stmt.Statement;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.language.text.Report;
import yardloom.language.tree.Tree;

/** Translates the methods that a script declares: heads first, so that they may call each other. */
public final class Helpers {
  private static final int NATIVE = java.lang.reflect.Modifier.NATIVE;
  private static final int SYNCHRONIZED = java.lang.reflect.Modifier.SYNCHRONIZED;

  private final Rewriter rewriter;
  private final Report report;
  private final Names names;
  private final DeclaredTypes types;
  private final Map<String, MethodNode> byName = new LinkedHashMap<>();

  Helpers(Rewriter rewriter, Report report, Names names, DeclaredTypes types) {
    this.rewriter = rewriter;
    this.report = report;
    this.names = names;
    this.types = types;
  }

  Map<String, MethodNode> byName() {
    return byName;
  }

  /** Makes the head of each helper, so that helpers may call each other in any order. */
  public void declare(List<MethodNode> raw) {
    for (MethodNode method : raw) {
      DeclaredTypes.checkName(report, method, method.getName());
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
      if (byName.containsKey(method.getName()) || rewriter.calls().isWord(method.getName())) {
        report.add(
            ProblemCode.DUPLICATE,
            method,
            "`" + method.getName() + "` is already taken; name the helper otherwise");
      }
      byName.put(method.getName(), null);
    }
  }

  public MethodNode head(MethodNode raw) {
    names.openHelper();
    Names.Block block = names.openBlock(PlanScope.class);
    List<Parameter> made = new ArrayList<>();
    made.add(Tree.at(raw, new Parameter(ClassHelper.make(PlanScope.class), block.variable())));
    made.addAll(List.of(rewriter.expressions().parameters(raw.getParameters(), true)));
    ClassNode type =
        ClassHelper.isDynamicTyped(raw.getReturnType())
            ? ClassHelper.dynamicType()
            : types.type(raw.getReturnType(), raw);
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
    byName.put(raw.getName(), head);
    head.setNodeMetaData(Names.Block.class, block);
    names.close();
    names.close();
    return head;
  }

  public Statement body(MethodNode raw, MethodNode head) {
    names.openHelper();
    names.reopen(head.getNodeMetaData(Names.Block.class));
    for (Parameter p : raw.getParameters()) {
      names.declare(p.getName());
    }
    Statement body = rewriter.body(raw.getCode(), raw);
    names.close();
    names.close();
    return body;
  }
}
