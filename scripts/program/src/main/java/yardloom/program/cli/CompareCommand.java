package yardloom.program.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.TableFormat;
import yardloom.program.compare.ChangeFiles;
import yardloom.program.compare.ChangeText;
import yardloom.program.compare.Comparison;
import yardloom.program.compare.Snapshot;
import yardloom.program.output.OutputFolder;
import yardloom.program.output.ResultsJson;
import yardloom.sheet.paper.Paper;

/** Says what is other in a new plan than in an old one. */
@Command(
    name = "compare",
    description = "Say what is other in a new plan: elements, orders, hours, cost, findings.",
    footer = {
      "",
      "Each of OLD and NEW is a script, or a folder that draw has written. Examples:",
      "  yardloom compare yard.groovy yard-2.groovy --out changes",
      "  yardloom compare yard.groovy --old bedWidth=4ft --new bedWidth=3.5ft"
    })
final class CompareCommand implements Callable<Integer> {
  @ParentCommand private Main main;

  private final Console console;
  private final Path base;

  @Parameters(
      arity = "1..2",
      paramLabel = "PLAN",
      description = "The old plan and the new one; one alone with --old or --new.")
  private List<Path> plans;

  @Option(
      names = "--old",
      paramLabel = "NAME=VALUE",
      description = "Give a parameter of the old plan another value.")
  private List<String> oldSettings = List.of();

  @Option(
      names = "--new",
      paramLabel = "NAME=VALUE",
      description = "Give a parameter of the new plan another value.")
  private List<String> newSettings = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Write a sheet that shows both, a change order and all differences.")
  private Path out;

  @Option(names = "--png", description = "Write the sheets as pictures too.")
  private boolean png;

  @Option(names = "--all", description = "List every figure that is other.")
  private boolean all;

  @Mixin private HelpOption help;

  @Spec private CommandSpec command;

  CompareCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    Map<String, String> was = Settings.of(command, "--old", oldSettings);
    Map<String, String> is = Settings.of(command, "--new", newSettings);
    if (plans.size() == 1 && was.isEmpty() && is.isEmpty()) {
      throw new ParameterException(
          command.commandLine(), "name a second plan, or give parameters with --old or --new");
    }
    Comparison comparison =
        new Comparison(read(plans.get(0), was), read(plans.get(plans.size() - 1), is));
    if (out != null) {
      Paper paper = Paper.usual(comparison.now().info().units());
      ChangeFiles files = new ChangeFiles(comparison, paper);
      OutputFolder.write(
          base.resolve(out),
          folder -> {
            files.write(folder);
            if (png) {
              files.writePictures(folder);
            }
          });
    }
    console.say(ChangeText.of(comparison, all));
    return comparison.bringsErrors() ? ExitCode.FINDINGS : ExitCode.FINE;
  }

  private Snapshot read(Path plan, Map<String, String> settings) {
    Path file = base.resolve(plan);
    Path results = Files.isDirectory(file) ? file.resolve("results.json") : file;
    if (!results.toString().endsWith(".json") || results.toString().endsWith(".plan.json")) {
      return drawn(file, settings);
    }
    SourceRef place = new SourceRef(plan.toString(), 0, 0);
    if (!settings.isEmpty()) {
      throw new PlanException(
          ProblemCode.FILE,
          place,
          "what is drawn already has no parameters to set; name its script");
    }
    try {
      return Snapshot.of(new ObjectMapper().readTree(results.toFile()));
    } catch (PlanException e) {
      throw e.at(place);
    } catch (JsonProcessingException e) {
      throw new PlanException(
          ProblemCode.SYNTAX, place, "this is no results.json; draw the plan again");
    } catch (IOException e) {
      throw new PlanException(
          ProblemCode.FILE,
          place,
          "there is no results.json here; draw the plan with --as json or name its script");
    }
  }

  private Snapshot drawn(Path script, Map<String, String> settings) {
    Toolkit toolkit = main.toolkit();
    Outcome outcome = toolkit.study(toolkit.read(script, settings));
    JsonNode tree = ResultsJson.tree(outcome, TableFormat.of(outcome.plan().info()));
    return Snapshot.of(tree);
  }
}
