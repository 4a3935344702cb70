package yardloom.program.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;
import yardloom.language.compile.SourceFile;
import yardloom.language.run.ReadPlan;
import yardloom.program.cache.KeptDrawing;
import yardloom.program.cache.KeptDrawings;
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
  private final Supplier<KeptDrawings> memory;

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

  DrawCommand(Console console, Path base, Supplier<KeptDrawings> memory) {
    this.console = console;
    this.base = base;
    this.memory = memory;
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
    // All plans are worked out before the first file is written: one wrong plan writes nothing.
    KeptDrawings kept = drawings();
    List<Work> works = new ArrayList<>();
    for (Path plan : arguments.plans()) {
      works.add(begun(plan, kept));
    }
    refuseSameFolder(works);
    boolean errors = false;
    for (Work work : works) {
      KeptDrawing drawn = drawn(work, kept);
      console.say(work.plan() + " → " + out.resolve(drawn.id()) + ": " + drawn.told().get(0));
      drawn.told().stream().skip(1).forEach(console::say);
      errors |= drawn.errors();
    }
    return errors ? ExitCode.FINDINGS : ExitCode.FINE;
  }

  /**
   * A plan to be written.
   *
   * @param before how it was drawn before, if nothing changed since; else the next two are there
   */
  private record Work(
      Path plan, Optional<KeptDrawing> before, List<SourceFile> sources, Outcome outcome) {
    String id() {
      return before.map(KeptDrawing::id).orElseGet(() -> outcome.plan().info().id());
    }
  }

  /** With plugins from outside nothing is kept: they may read whatever they like. */
  private KeptDrawings drawings() {
    return main.ownPlugins().isPresent() ? memory.get() : KeptDrawings.OFF;
  }

  /** All that a drawing depends on beside the program and the files that the plan is read from. */
  private List<String> asked(Path plan) {
    return List.of(
        main.ownPlugins().orElse(""),
        base.resolve(plan).toString(),
        base.resolve(plan).toAbsolutePath().toString(),
        new TreeMap<>(arguments.settings()).toString(),
        EnumSet.copyOf(kinds).toString(),
        String.valueOf(sheet),
        String.valueOf(sheets),
        String.valueOf(dpi));
  }

  private Work begun(Path plan, KeptDrawings kept) {
    Optional<KeptDrawing> before = kept.find(asked(plan));
    return before.isPresent()
        ? new Work(plan, before, List.of(), null)
        : worked(main.toolkit(), plan);
  }

  private KeptDrawing drawn(Work work, KeptDrawings kept) {
    if (work.before().isPresent()) {
      write(work, work.before().get()::write);
      return work.before().get();
    }
    Outcome outcome = work.outcome();
    PlanWriter writer =
        new PlanWriter(
                outcome,
                Papers.of(sheet, outcome.plan()),
                EnumSet.copyOf(kinds),
                sheets == null ? List.of() : sheets,
                main.toolkit().hands())
            .withDpi(dpi);
    KeptDrawing told =
        new KeptDrawing(
            work.id(),
            List.of(
                writer.summary(),
                FindingsText.summary(outcome.findings()),
                FindingsText.of(outcome.findings(), outcome.plan().info().units())),
            outcome.hasErrors(),
            work.sources(),
            new TreeMap<>());
    write(
        work,
        folder -> {
          writer.write(folder);
          if (kept.isOn()) {
            KeptDrawing.filesOf(folder)
                .ifPresent(files -> kept.keep(asked(work.plan()), told.with(files)));
          }
        });
    return told;
  }

  private void write(Work work, OutputFolder.Filler filler) {
    try {
      OutputFolder.write(base.resolve(out).resolve(work.id()), filler);
    } catch (PlanException e) {
      throw placed(e, work.plan());
    }
  }

  /** What a sheet lacks stands on no line of the plan; then the plan's file is the place. */
  private Work worked(Toolkit toolkit, Path plan) {
    try {
      toolkit.loadAhead();
      ReadPlan read = toolkit.readFrom(base.resolve(plan), arguments.settings());
      SheetSet.requireRoom(read.plan(), Papers.of(sheet, read.plan()));
      return new Work(plan, Optional.empty(), read.sources(), toolkit.study(read.plan()));
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

  private static void refuseSameFolder(List<Work> works) {
    Map<String, Path> seen = new HashMap<>();
    for (Work work : works) {
      String id = work.id();
      Path earlier = seen.put(id, work.plan());
      if (earlier != null) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            new SourceRef(work.plan().toString(), 0, 0),
            "this plan and "
                + earlier
                + " are both called "
                + id
                + " and would be written to one folder; give one another title or --out");
      }
    }
  }
}
