package yardloom.soil.texture.formula;

import yardloom.kernel.source.Source;

/**
 * A published range with its source; the unit stands with whoever gives it.
 *
 * <p>References: the source that each range names.
 */
public record Range(double low, double high, Source source) {
  public Range {
    if (!(low <= high)) {
      throw new IllegalArgumentException("a range rises, got " + low + " to " + high);
    }
  }

  public double middle() {
    return (low + high) / 2;
  }
}
