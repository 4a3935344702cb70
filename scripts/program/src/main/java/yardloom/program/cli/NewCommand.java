package yardloom.program.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.UnitSystem;
import yardloom.program.starter.NewFiles;
import yardloom.program.starter.Starter;

/** Writes a plan to begin with. */
@Command(
    name = "new",
    description = "Write a plan to begin with, with comments that teach; never over another file.",
    footer = {
      "",
      "Examples:",
      "  yardloom new oak-street --like corner --units metric",
      "  yardloom new plugin county-soil",
      "  yardloom new regional river-flats"
    })
final class NewCommand implements Callable<Integer> {
  private static final String ENDING = ".groovy";

  private final Console console;
  private final Path base;

  @Parameters(
      arity = "0..1",
      paramLabel = "NAME",
      defaultValue = "my-yard",
      description = "What the plan and its file are called (default: ${DEFAULT-VALUE}).")
  private Path name;

  @Option(
      names = "--like",
      paramLabel = "KIND",
      defaultValue = "yard",
      description = "The kind of yard: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private Starter like;

  @Option(
      names = "--units",
      paramLabel = "SYSTEM",
      defaultValue = "us",
      description =
          "The units of its figures: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private UnitSystem units;

  @Mixin private HelpOption help;

  NewCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    String last = name.getFileName() == null ? "" : name.getFileName().toString();
    String bare = last.endsWith(ENDING) ? last.substring(0, last.length() - ENDING.length()) : last;
    if (!bare.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]*")) {
      console.complain(
          "a plan is called by letters, digits, spaces and hyphens, such as oak-street; got "
              + name
              + " [USE]");
      return ExitCode.USE;
    }
    Path file = name.resolveSibling(bare + ENDING);
    write(base.resolve(file), file, like.script(NewFiles.title(bare), file.toString(), units));
    console.say(file + ": a plan to begin with. Draw it: yardloom draw " + quoted(file));
    return ExitCode.FINE;
  }

  private static String quoted(Path file) {
    return file.toString().contains(" ") ? "\"" + file + "\"" : file.toString();
  }

  /** Whole or not at all, and never over what stands there. */
  static void write(Path target, Path shown, String script) {
    try {
      Path folder = Files.createDirectories(target.toAbsolutePath().getParent());
      Path part = Files.createTempFile(folder, ".new-", ".part");
      try {
        Files.writeString(part, script, StandardCharsets.UTF_8);
        Files.createLink(target, part);
      } catch (UnsupportedOperationException e) {
        Files.move(part, target);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (FileAlreadyExistsException e) {
      throw new PlanException(
          ProblemCode.FILE,
          new SourceRef(shown.toString(), 0, 0),
          "there is such a file already and it stays as it is; give another NAME");
    } catch (IOException e) {
      PlanException problem =
          new PlanException(
              ProblemCode.FILE,
              new SourceRef(shown.toString(), 0, 0),
              "cannot be written: " + e.getMessage());
      problem.initCause(e);
      throw problem;
    }
  }
}
