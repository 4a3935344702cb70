package yardloom.materials.model;

import yardloom.kernel.source.Source;

/**
 * A number of which only low, likely and high are known.
 *
 * @param cause why it spreads
 */
public record Spread(double low, double likely, double high, String cause, Source source) {
  public Spread {
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(
          "low, likely and high must rise, got " + low + ", " + likely + ", " + high);
    }
  }
}
