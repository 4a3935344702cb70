package yardloom.kernel.check;

/** How much a finding matters. */
public enum Severity {
  /** The plan must not be built so. */
  ERROR,
  /** Something to change or to decide knowingly. */
  WARNING,
  /** Worth knowing. */
  NOTE,
  /** Found, and accepted by the plan's author with a reason. */
  ACCEPTED
}
