package yardloom.program.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Plan;
import yardloom.program.output.FindingsText;

/** Reads plans and prints what is found, without writing anything. */
@Command(
    name = "check",
    description = "Read plans and print findings; write nothing.",
    footer = {"", "Example:", "  yardloom check yard.groovy --set bedWidth=3.5ft"})
final class CheckCommand implements Callable<Integer> {
  @ParentCommand private Main main;

  private final Console console;
  private final Path base;

  @Mixin private PlanArguments arguments;

  CheckCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    Toolkit toolkit = main.toolkit();
    boolean errors = false;
    for (Path file : arguments.plans()) {
      Plan plan = toolkit.read(base.resolve(file), arguments.settings());
      List<Finding> findings = toolkit.check(plan);
      console.say(file + ": " + FindingsText.summary(findings));
      console.say(FindingsText.of(findings, plan.info().units()));
      errors |= findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
    }
    return errors ? ExitCode.FINDINGS : ExitCode.FINE;
  }
}
