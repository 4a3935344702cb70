package yardloom.program.cli;

import picocli.CommandLine.Option;

/** What every command takes: a page of help instead of its work. */
final class HelpOption {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this help.")
  private boolean wanted;
}
