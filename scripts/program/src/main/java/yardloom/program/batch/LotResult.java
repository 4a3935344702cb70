package yardloom.program.batch;

/**
 * What came of a lot, as the summary has it.
 *
 * @param result {@code drawn}, {@code findings} if some finding is an error, or {@code failed}
 * @param area of the lot with its unit; empty if it failed or the plan has no lot
 * @param hours likely hours of one person
 * @param cost likely cost
 * @param message why it failed, in one line
 */
public record LotResult(
    String lot,
    String result,
    int errors,
    int warnings,
    String area,
    String hours,
    String cost,
    String message) {
  static final String DRAWN = "drawn";
  static final String FINDINGS = "findings";
  static final String FAILED = "failed";

  /** A lot that was drawn. */
  public static LotResult drawn(
      String lot, int errors, int warnings, String area, String hours, String cost) {
    String result = errors > 0 ? FINDINGS : DRAWN;
    return new LotResult(lot, result, errors, warnings, area, hours, cost, "");
  }

  /** A lot that could not be drawn. */
  public static LotResult failed(String lot, String why) {
    String line = why.lines().findFirst().orElse("").strip();
    return new LotResult(lot, FAILED, 0, 0, "", "", "", line);
  }

  /** Whether it was drawn without a finding that is an error. */
  public boolean isFine() {
    return result.equals(DRAWN);
  }

  /** One line for the console. */
  String line() {
    if (result.equals(FAILED)) {
      return lot + ": failed: " + message;
    }
    String warned = warnings == 0 ? "" : ", " + warnings + " warning" + (warnings == 1 ? "" : "s");
    return lot
        + ": "
        + (errors == 0 ? "drawn" : errors + " error" + (errors == 1 ? "" : "s"))
        + warned;
  }
}
