package yardloom.language.word;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.codehaus.groovy.ast.ASTNode;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.text.Report;

/** Says what is wrong with a word or name that means nothing where it stands. */
final class UnknownWords {
  private static final int MOST_SHOWN = 20;

  private final Rewriter rewriter;
  private final WordCalls calls;
  private final Report report;
  private final Names names;
  private final ScriptSetting setting;

  UnknownWords(
      Rewriter rewriter, WordCalls calls, Report report, Names names, ScriptSetting setting) {
    this.rewriter = rewriter;
    this.calls = calls;
    this.report = report;
    this.names = names;
    this.setting = setting;
  }

  void word(ASTNode where, String name) {
    Class<? extends Scope> scope = names.innermost().type();
    String block = Scope.nameOf(scope);
    List<Word> elsewhere =
        setting.lexicon().all().stream().filter(w -> w.name().equals(name)).toList();
    if (!elsewhere.isEmpty()) {
      String homes =
          elsewhere.stream()
              .map(w -> Scope.nameOf(w.scope()))
              .map(s -> s.equals("plan") ? "the plan" : s)
              .distinct()
              .collect(Collectors.joining(" or "));
      report.add(
          ProblemCode.MISPLACED_WORD,
          where,
          "`"
              + name
              + "` belongs in "
              + homes
              + ", not "
              + (block.equals("plan") ? "in the plan itself" : "inside " + block));
      return;
    }
    Optional<String> plugin = setting.missing().apply(block, name);
    if (plugin.isPresent()) {
      report.add(
          ProblemCode.MISSING_PLUGIN,
          where,
          "`"
              + name
              + "` in "
              + block
              + " belongs to the plugin "
              + plugin.get()
              + ", which is not loaded");
      return;
    }
    TreeSet<String> known = new TreeSet<>();
    setting.lexicon().words(scope).forEach(w -> known.add(w.name()));
    setting.lexicon().words(Scope.class).forEach(w -> known.add(w.name()));
    known.addAll(Builtin.in(block));
    TreeSet<String> near = new TreeSet<>(known);
    near.addAll(rewriter.helpers().byName().keySet());
    String hint = Nearest.hint(name, near);
    report.add(
        ProblemCode.UNKNOWN_WORD,
        where,
        block + " has no `" + name + "`." + hint + known(name, known));
  }

  /** What a block knows, where the list is short enough to be read. */
  private static String known(String name, TreeSet<String> known) {
    if (Character.isUpperCase(name.charAt(0))) {
      return "";
    }
    return known.size() > MOST_SHOWN
        ? " `yardloom words` lists all its words"
        : " It knows: " + String.join(", ", known);
  }

  /** Reports a name that stands for no variable. */
  void name(ASTNode where, String name) {
    if (calls.isWord(name)) {
      report.add(
          ProblemCode.UNKNOWN_WORD,
          where,
          "`" + name + "` is a word; put what belongs to it in brackets, as in " + name + "(…)");
    } else if (names.hiddenByHelper(name)) {
      report.add(
          ProblemCode.UNKNOWN_WORD,
          where,
          "a helper does not see the script's `" + name + "`; give it as a parameter");
    } else if (Character.isUpperCase(name.charAt(0))) {
      report.add(ProblemCode.FORBIDDEN, where, "`" + name + "` is not part of the plan language");
    } else {
      report.add(
          ProblemCode.UNKNOWN_WORD,
          where,
          "`"
              + name
              + "` is not known here."
              + rewriter.expressions().nearestName(name, setting.lexicon().names()));
    }
  }
}
