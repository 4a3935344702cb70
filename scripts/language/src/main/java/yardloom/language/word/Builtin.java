package yardloom.language.word;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.codehaus.groovy.ast.expr.CastExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MapExpression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;
import yardloom.language.text.Report;
import yardloom.language.tree.LateCast;
import yardloom.language.tree.Planned;
import yardloom.language.tree.Tree;
import yardloom.language.type.HostClasses;

/** The words that belong to the language itself. */
final class Builtin {
  private static final Set<String> OF_THE_PLAN = Set.of("param", "include");
  private static final String FILE_TEXT = "fileText";

  private final Rewriter rewriter;
  private final Report report;
  private final Names names;
  private final HostClasses host;
  private final ScriptSetting setting;
  private final List<WordCalls.Declared> params;

  Builtin(
      Rewriter rewriter,
      Report report,
      Names names,
      HostClasses host,
      ScriptSetting setting,
      List<WordCalls.Declared> params) {
    this.rewriter = rewriter;
    this.report = report;
    this.names = names;
    this.host = host;
    this.setting = setting;
    this.params = params;
  }

  static boolean is(String name) {
    return OF_THE_PLAN.contains(name) || name.equals(FILE_TEXT);
  }

  /** Those that may be written in a block of this name. */
  static Set<String> in(String block) {
    Set<String> known = new HashSet<>(block.equals("plan") ? OF_THE_PLAN : Set.of());
    known.add(FILE_TEXT);
    return known;
  }

  Expression translate(MethodCallExpression raw, String name, Arguments.Given given) {
    if (name.equals(FILE_TEXT)) {
      return fileText(raw, given);
    }
    String block = Scope.nameOf(names.innermost().type());
    if (!block.equals("plan")) {
      report.add(
          ProblemCode.MISPLACED_WORD,
          raw,
          "`" + name + "` belongs in the plan, not inside " + block);
    }
    return name.equals("param") ? param(raw, given) : include(raw, given);
  }

  private Expression param(MethodCallExpression raw, Arguments.Given given) {
    List<Expression> values = given.positional();
    boolean named =
        values.size() == 3 && given.named().isEmpty() && text(values.get(0)) && text(values.get(2));
    if (!named) {
      report.add(
          ProblemCode.MISSING_OPTION,
          raw,
          "`param` takes a name, a default and a help text, as in param 'bedWidth', 4.ft, 'width"
              + " of the beds'");
      return rewriter.expressions().hole(raw);
    }
    String name = (String) ((ConstantExpression) values.get(0)).getValue();
    SourceRef place = report.place(raw);
    for (WordCalls.Declared earlier : params) {
      if (earlier.name().equals(name)) {
        report.add(
            ProblemCode.DUPLICATE,
            raw,
            "the parameter `" + name + "` is already declared at " + earlier.place());
      }
    }
    params.add(new WordCalls.Declared(name, place));
    Expression fallback = rewriter.expressions().translate(values.get(1));
    List<Expression> arguments = place(raw);
    arguments.add(Tree.constant(raw, name));
    arguments.add(fallback);
    arguments.add(rewriter.expressions().translate(values.get(2)));
    Expression call = Tree.host(raw, Tree.method(host.builtins(), "param"), arguments);
    CastExpression made = Tree.at(raw, new LateCast(call));
    made.putNodeMetaData(Planned.class, new Planned.Param(fallback));
    return made;
  }

  private List<Expression> place(MethodCallExpression raw) {
    SourceRef place = report.place(raw);
    List<Expression> made = new ArrayList<>();
    made.add(Tree.constant(raw, place.file()));
    made.add(Tree.constant(raw, place.line()));
    made.add(Tree.constant(raw, place.column()));
    return made;
  }

  private Expression include(MethodCallExpression raw, Arguments.Given given) {
    if (given.positional().size() != 1 || !text(given.positional().get(0))) {
      report.add(
          ProblemCode.MISSING_OPTION,
          raw,
          "`include` takes the plain name of a file and named values, as in include 'herb-spiral',"
              + " radius: 5.ft");
      return rewriter.expressions().hole(raw);
    }
    MapExpression values = Tree.at(raw, new MapExpression());
    for (Arguments.Named named : given.named()) {
      values.addMapEntryExpression(
          Tree.constant(named.key(), named.name()),
          rewriter.expressions().translate(named.value()));
    }
    ScriptSetting.Included included;
    try {
      included =
          setting
              .includes()
              .read((String) ((ConstantExpression) given.positional().get(0)).getValue());
    } catch (PlanException e) {
      report.addAll(e.at(report.place(raw)).problems());
      return rewriter.expressions().hole(raw);
    }
    checkNames(given, included);
    List<Expression> arguments = place(raw);
    arguments.add(Tree.constant(raw, included.key()));
    arguments.add(values);
    return Tree.host(raw, Tree.method(host.builtins(), "include"), arguments);
  }

  private Expression fileText(MethodCallExpression raw, Arguments.Given given) {
    List<Expression> values = given.positional();
    if (values.size() != 1 || !given.named().isEmpty() || !text(values.get(0))) {
      report.add(
          ProblemCode.MISSING_OPTION,
          raw,
          "`fileText` takes the plain name of a data file, as in fileText('lot.geojson')");
      return rewriter.expressions().hole(raw);
    }
    try {
      String key =
          setting.includes().text((String) ((ConstantExpression) values.get(0)).getValue());
      return Tree.host(
          raw, Tree.method(host.builtins(), FILE_TEXT), List.of(Tree.constant(raw, key)));
    } catch (PlanException e) {
      report.addAll(e.at(report.place(raw)).problems());
      return rewriter.expressions().hole(raw);
    }
  }

  private void checkNames(Arguments.Given given, ScriptSetting.Included included) {
    Set<String> seen = new HashSet<>();
    for (Arguments.Named named : given.named()) {
      if (!included.parameters().contains(named.name())) {
        report.add(
            ProblemCode.UNKNOWN_WORD,
            named.key(),
            "the included file has no parameter `"
                + named.name()
                + "`."
                + Nearest.hint(named.name(), included.parameters())
                + " It has: "
                + String.join(", ", included.parameters()));
      } else if (!seen.add(named.name())) {
        report.add(
            ProblemCode.DUPLICATE, named.key(), "the value `" + named.name() + "` is given twice");
      }
    }
  }

  private static boolean text(Expression e) {
    return e instanceof ConstantExpression c && c.getValue() instanceof String;
  }
}
