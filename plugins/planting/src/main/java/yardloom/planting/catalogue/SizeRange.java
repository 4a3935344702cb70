package yardloom.planting.catalogue;

import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/** A length that a source gives as a range; both ends are equal when it gives one figure. */
public record SizeRange(Length low, Length high, Source source) {
  public SizeRange {
    if (low.metres() <= 0 || low.compareTo(high) > 0) {
      throw new IllegalArgumentException("range from " + low + " to " + high);
    }
  }

  /** The middle, which calculations use. */
  public Length middle() {
    return low.plus(high).div(2);
  }
}
