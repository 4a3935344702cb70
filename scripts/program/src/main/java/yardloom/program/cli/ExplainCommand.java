package yardloom.program.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
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

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan script.")
  private Path plan;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "WHAT",
      description =
          "What to explain; without it all tables with their rows and columns are listed.")
  private List<String> what = List.of();

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "Give a parameter of the plan another value, such as --set bedWidth=3.5ft.")
  private List<String> settings = List.of();

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this help.")
  private boolean help;

  @Spec private CommandSpec command;

  ExplainCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    Toolkit toolkit = main.toolkit();
    Outcome outcome =
        toolkit.study(toolkit.read(base.resolve(plan), Settings.of(command, "--set", settings)));
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
