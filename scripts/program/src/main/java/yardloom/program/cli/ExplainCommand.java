package yardloom.program.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.study.Outcome;
import yardloom.program.explain.Explanation;
import yardloom.program.explain.ScriptLines;

/** Says why a printed number is what it is. */
@Command(
    name = "explain",
    description = "Say why a printed number is what it is: formula, values, script lines, sources.",
    footer = {
      "",
      "WHAT is a table, row and column (the names of the list that stands without WHAT), a number",
      "of calculations.txt, or words:",
      "  yardloom explain plan.groovy \"materials-take-off / bed kitchen bed / chips\"",
      "  yardloom explain plan.groovy 12",
      "  yardloom explain plan.groovy mulch of kitchen bed"
    })
final class ExplainCommand implements Callable<Integer> {
  private static final int INDENT = 11;

  @ParentCommand private Main main;

  private final Console console;
  private final Path base;

  @Mixin private PlanArgument argument;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "WHAT",
      description =
          "What to explain; without it all tables with their rows and columns are listed.")
  private List<String> what = List.of();

  ExplainCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    Outcome outcome = argument.study(main.toolkit(), base);
    Explanation explanation = new Explanation(outcome, new ScriptLines(base));
    String asked = String.join(" ", what).strip();
    if (asked.isEmpty()) {
      explanation
          .contents()
          .lines()
          .flatMap(l -> Wrapped.of(l, INDENT).stream())
          .forEach(console::say);
      return ExitCode.FINE;
    }
    Explanation.Answer answer = explanation.of(asked);
    if (!answer.found()) {
      // Not the plan is wrong but the question; its numbers could be read all the same.
      console.complain(answer.text());
      return ExitCode.PLAN;
    }
    console.say(answer.text());
    return ExitCode.FINE;
  }
}
