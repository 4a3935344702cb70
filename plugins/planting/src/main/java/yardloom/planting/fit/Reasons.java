package yardloom.planting.fit;

import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.planting.suit.rule.Reason;

/** Reasons as findings say them. */
final class Reasons {
  private Reasons() {}

  static Finding finding(String rule, Severity severity, String plant, Reason reason) {
    return Finding.of(rule, severity, plant + " " + reason.text(), reason.todo(), reason.source());
  }
}
