package yardloom.program.batch;

import java.time.Duration;

/** How far a batch is, in words. Not thread-safe. */
final class Progress {
  private final int all;
  private final int before;
  private int done;
  private int failed;

  /**
   * @param all how many lots there are
   * @param before how many of them were done in an earlier run
   */
  Progress(int all, int before) {
    this.all = all;
    this.before = before;
  }

  void add(LotResult result) {
    done++;
    failed += result.result().equals(LotResult.FAILED) ? 1 : 0;
  }

  /** The line for a pipe: how many of how many, and the lot. */
  String line(LotResult result) {
    return (before + done) + "/" + all + " " + result.line();
  }

  /** The line for a terminal, with an estimate from the lots of this run. */
  String state(Duration elapsed) {
    String text = (before + done) + " of " + all + (failed > 0 ? ", " + failed + " failed" : "");
    int left = all - before - done;
    if (done == 0 || left == 0) {
      return text;
    }
    return text + ", about " + words(elapsed.toMillis() * left / done / 1000) + " left";
  }

  private static String words(long seconds) {
    if (seconds < 90) {
      return seconds + " s";
    }
    long minutes = Math.round(seconds / 60.0);
    return minutes < 90 ? minutes + " min" : Math.round(minutes / 60.0) + " h";
  }
}
