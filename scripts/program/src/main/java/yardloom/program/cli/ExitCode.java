package yardloom.program.cli;

/** What the process tells whoever started it. */
public final class ExitCode {
  /** Everything is fine; there may be warnings and notes. */
  public static final int FINE = 0;

  /** The plan was read and drawn, and some finding is an error. */
  public static final int FINDINGS = 1;

  /** The plan or its data are wrong; nothing was written. */
  public static final int PLAN = 2;

  /** The command line is wrong. */
  public static final int USE = 3;

  /** A fault of the program. */
  public static final int FAULT = 4;

  private ExitCode() {}
}
