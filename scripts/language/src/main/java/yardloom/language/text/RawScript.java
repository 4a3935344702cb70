package yardloom.language.text;

import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.ImportNode;
import org.codehaus.groovy.ast.ModuleNode;
import org.codehaus.groovy.control.CompilerConfiguration;
import org.codehaus.groovy.control.ErrorCollector;
import org.codehaus.groovy.control.MultipleCompilationErrorsException;
import org.codehaus.groovy.control.SourceUnit;
import org.codehaus.groovy.control.messages.SyntaxErrorMessage;
import org.codehaus.groovy.syntax.SyntaxException;
import yardloom.kernel.problem.ProblemCode;

/**
 * Parses a script to Groovy's raw tree and no further. Nothing of Groovy that acts while compiling
 * (annotations, imports, transformations) has run when this returns, and the raw tree itself is
 * never compiled.
 */
public final class RawScript {
  private RawScript() {}

  /** The raw tree, or null after reporting why there is none. */
  public static ModuleNode parse(String text, SourceText source, Report report) {
    CompilerConfiguration configuration = new CompilerConfiguration();
    SourceUnit unit =
        new SourceUnit("plan", text, configuration, null, new ErrorCollector(configuration));
    try {
      unit.parse();
      unit.completePhase();
      unit.nextPhase();
      unit.convert();
      return unit.getAST();
    } catch (MultipleCompilationErrorsException e) {
      for (Object message : e.getErrorCollector().getErrors()) {
        if (message instanceof SyntaxErrorMessage syntax) {
          SyntaxException cause = syntax.getCause();
          SyntaxWords.report(
              cause.getLine(), cause.getStartColumn(), cause.getOriginalMessage(), source, report);
        }
      }
      if (report.isEmpty()) {
        report.add(ProblemCode.SYNTAX, 1, 1, "this is not a well-formed script");
      }
      return null;
    }
  }

  /** Reports imports, packages and classes. */
  public static void checkShell(ModuleNode raw, Report report) {
    if (raw.getPackage() != null) {
      report.add(
          ProblemCode.FORBIDDEN, raw.getPackage(), "`package` is not part of the plan language");
    }
    for (ImportNode i : raw.getImports()) {
      forbidImport(i, report);
    }
    raw.getStarImports().forEach(i -> forbidImport(i, report));
    raw.getStaticImports().values().forEach(i -> forbidImport(i, report));
    raw.getStaticStarImports().values().forEach(i -> forbidImport(i, report));
    for (ClassNode c : raw.getClasses()) {
      if (!c.isScript() && c.getOuterClass() == null) {
        String kind = c.isInterface() ? "an interface" : c.isEnum() ? "an enum" : "a class";
        report.add(ProblemCode.FORBIDDEN, c, kind + " is not part of the plan language");
      }
    }
  }

  private static void forbidImport(ImportNode node, Report report) {
    if (node.getLineNumber() < 1) {
      return;
    }
    report.add(ProblemCode.FORBIDDEN, node, "`import` is not part of the plan language");
  }
}
