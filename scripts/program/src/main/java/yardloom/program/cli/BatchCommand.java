package yardloom.program.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;
import yardloom.program.batch.Batch;
import yardloom.program.batch.Fingerprint;
import yardloom.program.batch.LotFigures;
import yardloom.program.batch.LotList;
import yardloom.program.batch.LotResult;
import yardloom.program.batch.LotRow;
import yardloom.program.batch.Part;
import yardloom.program.output.OutputFolder;
import yardloom.program.output.OutputKind;
import yardloom.program.output.PlanWriter;
import yardloom.program.output.SheetSet;
import yardloom.sheet.paper.Paper;

/** Draws one plan for every lot of a list. */
@Command(
    name = "batch",
    description = "Draw one plan for every lot of a list; run it again to go on where it stopped.",
    footer = {
      "",
      "LOTS is a CSV with a header of the plan's parameters and a column `lot` of names, or a",
      "GeoJSON whose polygons become the parameter `lot`. Examples:",
      "  yardloom batch yard.groovy lots.csv --out street",
      "  yardloom batch yard.groovy lots.csv --out street --part 1/3"
    })
final class BatchCommand implements Callable<Integer> {
  /** What the study of one large plan takes. */
  private static final long PLAN_BYTES = 160_000_000;

  @ParentCommand private Main main;

  private final Console console;
  private final Path base;

  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan script.")
  private Path plan;

  @Parameters(index = "1", paramLabel = "LOTS", description = "The list of lots.")
  private Path list;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "yardloom-batch",
      description = "Where a folder for each lot is written (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(
      names = "--as",
      paramLabel = "KIND",
      split = ",",
      defaultValue = "svg,csv,json",
      description = "What to write: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private List<OutputKind> kinds;

  @Option(names = "--sheet", paramLabel = "SIZE", description = "Paper, as for draw.")
  private String sheet;

  @Option(
      names = "--part",
      paramLabel = "i/n",
      defaultValue = "1/1",
      description = "Draw every n-th lot from the i-th on, so that n machines share the list.")
  private String part;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "How many lots at a time (default: one for each core, as memory allows).")
  private Integer jobs;

  @Option(names = "--again", description = "Draw lots again that are done.")
  private boolean again;

  @Mixin private HelpOption help;

  @Spec private CommandSpec command;

  BatchCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    Part wanted =
        Part.read(part)
            .orElseThrow(
                () ->
                    new ParameterException(
                        command.commandLine(), "--part needs i/n, such as 1/3; got " + part));
    if (jobs != null && jobs < 1) {
      throw new ParameterException(command.commandLine(), "--jobs needs 1 or more; got " + jobs);
    }
    Toolkit toolkit = main.toolkit();
    Set<OutputKind> wantedKinds = EnumSet.copyOf(kinds);
    // Once with its own values: a plan that is wrong is told at once, not for every lot.
    Plan own = toolkit.read(base.resolve(plan), Map.of());
    Papers.of(sheet, own);
    List<LotRow> lots = LotList.read(list.toString(), text(), own.parameters().keySet());
    Fingerprint fingerprint =
        Fingerprint.of(base.resolve(plan), base.resolve(out), base.resolve(list))
            .with(wantedKinds + " " + sheet + " " + Version.text());
    Batch batch = new Batch(base.resolve(out), workers(), this::tell);
    if (again) {
      batch.forget(lots, wanted);
    }
    List<LotResult> results =
        batch.run(lots, wanted, fingerprint::of, lot -> draw(toolkit, lot, wantedKinds));
    console.endProgress();
    long fine = results.stream().filter(LotResult::isFine).count();
    console.say(
        fine
            + " of "
            + results.size()
            + (results.size() == 1 ? " lot is" : " lots are")
            + " drawn without errors; "
            + out.resolve(wanted.summary()));
    return fine == results.size() ? ExitCode.FINE : ExitCode.FINDINGS;
  }

  private void tell(String line, String state) {
    if (console.isTerminal()) {
      console.progress(state);
    } else {
      console.say(line);
    }
  }

  private int workers() {
    if (jobs != null) {
      return jobs;
    }
    long room = Math.max(1, Runtime.getRuntime().maxMemory() / PLAN_BYTES);
    return (int) Math.min(Runtime.getRuntime().availableProcessors(), room);
  }

  private String text() {
    try {
      return Files.readString(base.resolve(list), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new PlanException(
          ProblemCode.FILE,
          new SourceRef(list.toString(), 0, 0),
          "the list of lots cannot be read; it is a CSV or GeoJSON in UTF-8");
    }
  }

  private LotResult draw(Toolkit toolkit, LotRow lot, Set<OutputKind> wanted) {
    Plan read = toolkit.read(base.resolve(plan), lot.settings());
    Paper paper = Papers.of(sheet, read);
    SheetSet.requireRoom(read, paper);
    Outcome outcome = toolkit.study(read, Hands.ONE);
    PlanWriter writer = new PlanWriter(outcome, paper, wanted);
    OutputFolder.write(base.resolve(out).resolve(lot.name()), writer::write);
    return LotFigures.of(lot, outcome);
  }
}
