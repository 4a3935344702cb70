package yardloom.program.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;
import yardloom.program.output.FindingsText;
import yardloom.program.output.OutputFolder;
import yardloom.program.output.OutputKind;
import yardloom.program.output.PlanWriter;
import yardloom.program.output.SheetSet;
import yardloom.sheet.paper.Paper;

/** Draws plans: sheets, tables, results and findings, one folder a plan. */
@Command(
    name = "draw",
    description = "Draw plans: sheets, tables, results and findings.",
    footer = {"", "Example:", "  yardloom draw yard.groovy --as svg,pdf --out drawings"})
final class DrawCommand implements Callable<Integer> {
  @ParentCommand private Main main;

  private final Console console;
  private final Path base;

  @Mixin private PlanArguments arguments;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "yardloom-out",
      description = "Where a folder for each plan is written (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(
      names = "--as",
      paramLabel = "KIND",
      split = ",",
      defaultValue = "svg,csv,json",
      description = "What to write: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private List<OutputKind> kinds;

  @Option(
      names = "--sheet",
      paramLabel = "SIZE",
      description =
          "Paper, such as arch-c, ansi-b or a3 (default: the plan's units decide, arch-c or a2).")
  private String sheet;

  @Option(
      names = "--sheets",
      paramLabel = "NAME",
      split = ",",
      description = "Which sheets, such as cover,planting,crew (default: what the plan says).")
  private List<String> sheets;

  @Option(
      names = "--dpi",
      paramLabel = "N",
      defaultValue = "150",
      description = "Dots per inch of PNG pictures (default: ${DEFAULT-VALUE}).")
  private int dpi;

  DrawCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    if (sheet != null) {
      try {
        Paper.named(sheet);
      } catch (PlanException e) {
        console.complain(e.problems().get(0).toString());
        return ExitCode.USE;
      }
    }
    Toolkit toolkit = main.toolkit();
    Set<OutputKind> wanted = EnumSet.copyOf(kinds);
    // All plans are worked out before the first file is written: one wrong plan writes nothing.
    List<Outcome> outcomes = new ArrayList<>();
    for (Path plan : arguments.plans()) {
      outcomes.add(worked(toolkit, plan));
    }
    refuseSameFolder(outcomes);
    boolean errors = false;
    for (int i = 0; i < outcomes.size(); i++) {
      Outcome outcome = outcomes.get(i);
      Path folder = base.resolve(out).resolve(outcome.plan().info().id());
      PlanWriter writer =
          new PlanWriter(
                  outcome,
                  Papers.of(sheet, outcome.plan()),
                  wanted,
                  sheets == null ? List.of() : sheets)
              .withDpi(dpi);
      try {
        OutputFolder.write(folder, writer::write);
      } catch (PlanException e) {
        throw placed(e, arguments.plans().get(i));
      }
      console.say(
          arguments.plans().get(i)
              + " → "
              + out.resolve(outcome.plan().info().id())
              + ": "
              + writer.summary());
      console.say(FindingsText.summary(outcome.findings()));
      console.say(FindingsText.of(outcome.findings(), outcome.plan().info().units()));
      errors |= outcome.hasErrors();
    }
    return errors ? ExitCode.FINDINGS : ExitCode.FINE;
  }

  /** What a sheet lacks stands on no line of the plan; then the plan's file is the place. */
  private Outcome worked(Toolkit toolkit, Path plan) {
    try {
      Plan read = toolkit.read(base.resolve(plan), arguments.settings());
      SheetSet.requireRoom(read, Papers.of(sheet, read));
      return toolkit.study(read);
    } catch (PlanException e) {
      throw placed(e, plan);
    }
  }

  private static PlanException placed(PlanException thrown, Path plan) {
    SourceRef file = new SourceRef(plan.toString(), 0, 0);
    PlanException placed =
        new PlanException(
            thrown.problems().stream()
                .map(p -> p.place().equals(SourceRef.NONE) ? p.at(file) : p)
                .toList());
    placed.initCause(thrown);
    return placed;
  }

  private void refuseSameFolder(List<Outcome> outcomes) {
    Map<String, Path> seen = new HashMap<>();
    for (int i = 0; i < outcomes.size(); i++) {
      String id = outcomes.get(i).plan().info().id();
      Path earlier = seen.put(id, arguments.plans().get(i));
      if (earlier != null) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            new SourceRef(arguments.plans().get(i).toString(), 0, 0),
            "this plan and "
                + earlier
                + " are both called "
                + id
                + " and would be written to one folder; give one another title or --out");
      }
    }
  }
}
