package yardloom.program.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.language.form.FormWriter;
import yardloom.language.form.Step;
import yardloom.language.run.PlanRunner;
import yardloom.program.export.WholeFile;

/** Writes plans in their JSON form, which every command reads like a script. */
@Command(
    name = "convert",
    description =
        "Write a plan as JSON: each word that it speaks, loops and helpers worked out. Every"
            + " command takes NAME.plan.json like a script.",
    footer = {
      "",
      "Examples:",
      "  yardloom convert yard.groovy",
      "  yardloom convert yard.groovy --set bedWidth=3.5ft --out narrow.plan.json",
      "  yardloom draw narrow.plan.json",
      "`yardloom words --as schema` prints the JSON Schema of the form."
    })
final class ConvertCommand implements Callable<Integer> {
  private static final String ENDING = ".plan.json";

  @ParentCommand private Main main;

  private final Console console;
  private final Path base;

  @Mixin private PlanArguments arguments;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The file to write (default: the plan's name with .plan.json).")
  private Path out;

  @Option(
      names = "--places",
      description =
          "Say with each word where in the script it stands; findings then name the script.")
  private boolean places;

  ConvertCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    if (out != null && arguments.plans().size() > 1) {
      console.complain("--out takes the file of one plan; got several plans. [USE]");
      return ExitCode.USE;
    }
    for (Path plan : arguments.plans()) {
      Path file = out == null ? beside(plan) : out;
      if (!file.toString().endsWith(ENDING)) {
        throw new PlanException(
            ProblemCode.FILE,
            new SourceRef(file.toString(), 0, 0),
            "a plan in JSON form is called NAME" + ENDING);
      }
      List<Step> steps = main.toolkit().record(base.resolve(plan), arguments.settings());
      Path folder = base.resolve(plan).resolveSibling("");
      String text = places ? FormWriter.write(steps, folder) : FormWriter.write(steps);
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      WholeFile.write(base.resolve(file), to -> to.write(bytes));
      console.say(plan + " → " + file + ": " + count(steps) + " words");
    }
    return ExitCode.FINE;
  }

  private static Path beside(Path plan) {
    return plan.resolveSibling(PlanRunner.bareName(plan) + ENDING);
  }

  private static int count(List<Step> steps) {
    int count = 0;
    for (Step step : steps) {
      count++;
      if (step instanceof Step.Call call) {
        for (List<Step> block : call.blocks()) {
          count += count(block);
        }
      } else if (step instanceof Step.Include include) {
        count += count(include.block());
      }
    }
    return count;
  }
}
