package yardloom.language.word;

import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.text.Report;
import yardloom.language.type.ScriptTypes;
import yardloom.language.type.TypeWords;

/** Names and types as scripts write them: only listed types, and no names that are doors. */
final class DeclaredTypes {
  private final Report report;

  DeclaredTypes(Report report) {
    this.report = report;
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
    if (!name.matches("[A-Za-z_\\p{L}][\\p{L}0-9_]*") || ScriptTypes.isDoor(name)) {
      report.add(ProblemCode.FORBIDDEN, where, "`" + name + "` cannot be used as a name in a plan");
    }
  }
}
