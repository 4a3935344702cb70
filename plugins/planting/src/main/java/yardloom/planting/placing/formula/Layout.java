package yardloom.planting.placing.formula;

/**
 * How plants stand in a bed.
 *
 * <p>References: common practice, no source.
 */
public enum Layout {
  /** In rows and columns at right angles. */
  SQUARE,
  /** Every other row shifted by half a spacing. */
  STAGGERED
}
