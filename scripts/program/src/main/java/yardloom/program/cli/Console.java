package yardloom.program.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;

/** Where commands print. */
final class Console {
  private final PrintStream out;
  private final PrintStream err;

  Console(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /** The process's own streams, in UTF-8 on every machine. */
  static Console ofProcess() {
    return new Console(
        new PrintStream(System.out, true, StandardCharsets.UTF_8),
        new PrintStream(System.err, true, StandardCharsets.UTF_8));
  }

  void say(String text) {
    out.print(text);
    if (!text.endsWith("\n")) {
      out.print('\n');
    }
    out.flush();
  }

  void complain(String text) {
    err.print(text);
    if (!text.endsWith("\n")) {
      err.print('\n');
    }
    err.flush();
  }

  PrintWriter outWriter() {
    return new PrintWriter(out, true, StandardCharsets.UTF_8);
  }

  PrintWriter errWriter() {
    return new PrintWriter(err, true, StandardCharsets.UTF_8);
  }

  /** Prints the problems of a plan. */
  int problems(PlanException e) {
    List<Problem> problems = e.problems();
    problems.forEach(p -> complain(p.toString()));
    complain(
        problems.size() == 1
            ? "1 problem; nothing was written."
            : problems.size() + " problems; nothing was written.");
    boolean ours = problems.stream().anyMatch(p -> p.code() == ProblemCode.INTERNAL);
    return ours ? fault(e) : ExitCode.PLAN;
  }

  /**
   * Reports a fault of the program: a file with the details, one sentence on the console. A plan
   * may be too much for the machine; then the sentence says so.
   */
  int fault(Throwable fault) {
    String what =
        fault instanceof OutOfMemoryError
            ? "The plan needs more memory than yardloom may use; make it smaller."
            : "This is a fault of yardloom, not of the plan.";
    try {
      complain(
          what + " Please send " + report(fault) + " with the plan to the developers. [INTERNAL]");
    } catch (IOException | RuntimeException | Error e) {
      // Even the report failed, such as for want of memory or of a temporary folder.
      complain(what + " No report could be written: " + fault.getClass().getName() + " [INTERNAL]");
    }
    return ExitCode.FAULT;
  }

  private static Path report(Throwable fault) throws IOException {
    Path report = Files.createTempFile("yardloom-fault-", ".txt");
    try (PrintWriter details =
        new PrintWriter(Files.newBufferedWriter(report, StandardCharsets.UTF_8))) {
      fault.printStackTrace(details);
    }
    return report;
  }
}
