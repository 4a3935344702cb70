package yardloom.kernel.plan;

/** The role of a lot side in a setback rule. It is always given, never guessed from the shape. */
public enum EdgeRole {
  FRONT,
  SIDE,
  CORNER_SIDE,
  REAR,
  /** The plan does not say; no setback rule applies, and a finding says so. */
  UNSTATED;
}
