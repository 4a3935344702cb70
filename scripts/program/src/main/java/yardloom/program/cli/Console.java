package yardloom.program.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.text.Hidden;

/** Where commands print. */
final class Console {
  private final InputStream in;
  private final PrintStream out;
  private final PrintStream err;
  private final boolean terminal;
  private int progressWidth;

  Console(PrintStream out, PrintStream err) {
    this(InputStream.nullInputStream(), out, err, false);
  }

  /**
   * @param terminal whether a person looks on, so that a line may be written over
   */
  Console(InputStream in, PrintStream out, PrintStream err, boolean terminal) {
    this.in = in;
    this.out = out;
    this.err = err;
    this.terminal = terminal;
  }

  /** The process's own streams, in UTF-8 on every machine. */
  static Console ofProcess() {
    return new Console(
        System.in,
        new PrintStream(System.out, true, StandardCharsets.UTF_8),
        new PrintStream(System.err, true, StandardCharsets.UTF_8),
        System.console() != null);
  }

  /** What a program at the other end says. */
  InputStream in() {
    return in;
  }

  /** Where a program at the other end is answered. */
  OutputStream out() {
    return out;
  }

  boolean isTerminal() {
    return terminal;
  }

  /** Writes a line over the one that the last call wrote. */
  void progress(String text) {
    out.print("\r" + inert(text) + " ".repeat(Math.max(0, progressWidth - text.length())));
    out.flush();
    progressWidth = text.length();
  }

  /** Leaves the last line of progress and goes on below it. */
  void endProgress() {
    if (progressWidth > 0) {
      out.println();
      progressWidth = 0;
    }
  }

  void say(String text) {
    out.print(inert(text));
    if (!text.endsWith("\n")) {
      out.print('\n');
    }
    out.flush();
  }

  void complain(String text) {
    err.print(inert(text));
    if (!text.endsWith("\n")) {
      err.print('\n');
    }
    err.flush();
  }

  /**
   * The text without what steers a terminal or turns the direction of writing: names of files, of
   * jars and what plugins say are not ours.
   */
  private static String inert(String text) {
    if (text.chars().noneMatch(c -> Hidden.is((char) c) || c == '\r')) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    for (char c : text.toCharArray()) {
      shown.append(Hidden.is(c) || c == '\r' ? String.format(Locale.ROOT, "\\u%04X", (int) c) : c);
    }
    return shown.toString();
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
