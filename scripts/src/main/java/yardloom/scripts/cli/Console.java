package yardloom.scripts.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;

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
    return ExitCode.PLAN;
  }

  /** Reports a fault of the program: a file with the details, one sentence on the console. */
  int fault(Throwable fault) {
    StringWriter details = new StringWriter();
    fault.printStackTrace(new PrintWriter(details));
    try {
      Path report = Files.createTempFile("yardloom-fault-", ".txt");
      Files.writeString(report, details.toString());
      complain(
          "This is a fault of yardloom, not of the plan. Please send "
              + report
              + " with the plan to the developers. [INTERNAL]");
    } catch (java.io.IOException e) {
      complain("This is a fault of yardloom, not of the plan: " + fault + " [INTERNAL]");
    }
    return ExitCode.FAULT;
  }
}
