package yardloom.program.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import yardloom.kernel.check.Finding;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.unit.OwnMeasures;
import yardloom.kernel.unit.UnitSystem;
import yardloom.program.editor.EditorMark;
import yardloom.program.editor.PlanHelp;
import yardloom.program.editor.PlanServer;

/** Serves one editor over standard input and output until it leaves. */
final class EditorSession {
  /**
   * A message that cannot be read is answered as the protocol says, and not told to anyone else.
   */
  private static final Logger QUIET = Logger.getLogger("org.eclipse.lsp4j");

  private EditorSession() {}

  /** Serves; gives the exit code. */
  static int run(Console console, Toolkit toolkit) throws InterruptedException, IOException {
    QUIET.setLevel(Level.OFF);
    PlanServer server =
        new PlanServer(new PlanHelp(toolkit.plugins()), new PlanReader(toolkit), Version.text());
    Launcher<LanguageClient> launcher =
        LSPLauncher.createServerLauncher(server, console.in(), console.out());
    server.connect(launcher.getRemoteProxy());
    try {
      launcher.startListening().get();
    } catch (ExecutionException e) {
      return ExitCode.FAULT;
    }
    return server.isShutDown() ? ExitCode.FINE : ExitCode.FINDINGS;
  }

  /** Reads as {@code check} does. */
  private record PlanReader(Toolkit toolkit) implements PlanServer.Reader {
    @Override
    public List<EditorMark> written(Path file, String text) {
      return of(file, toolkit.problems(file, text));
    }

    @Override
    public List<EditorMark> saved(Path file) {
      try {
        Plan plan = toolkit.read(file, Map.of());
        return toolkit.check(plan).stream().map(f -> of(file, f, plan.info().units())).toList();
      } catch (PlanException e) {
        return of(file, e.problems());
      } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
        return List.of(
            new EditorMark(
                EditorMark.Weight.ERROR,
                0,
                0,
                "This plan cannot be checked here; run `yardloom check` on it.",
                "INTERNAL"));
      }
    }

    private static List<EditorMark> of(Path file, List<Problem> problems) {
      List<EditorMark> remarks = new ArrayList<>();
      for (Problem problem : problems) {
        boolean here = problem.place().file().equals(file.toString());
        remarks.add(
            new EditorMark(
                EditorMark.Weight.ERROR,
                here ? problem.place().line() : 0,
                here ? problem.place().column() : 0,
                here ? problem.message() : problem.place().before() + problem.message(),
                problem.code().toString()));
      }
      return remarks;
    }

    private static EditorMark of(Path file, Finding finding, UnitSystem units) {
      boolean here = finding.place().file().equals(file.toString());
      String text =
          finding.text() + (finding.advice().isBlank() ? "" : "\ndo: " + finding.advice());
      return new EditorMark(
          switch (finding.severity()) {
            case ERROR -> EditorMark.Weight.ERROR;
            case WARNING -> EditorMark.Weight.WARNING;
            case NOTE, ACCEPTED -> EditorMark.Weight.NOTE;
          },
          here ? finding.place().line() : 0,
          here ? finding.place().column() : 0,
          OwnMeasures.of(here ? text : finding.place().before() + text, units),
          finding.rule());
    }
  }
}
