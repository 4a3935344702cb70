package yardloom.facts;

import java.util.Objects;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;

/**
 * The plant hardiness zone of the site.
 *
 * @param zone whole zone, 1 (coldest) to 13
 * @param warmerHalf whether it lies in the warmer half, b
 * @param meanLowest mean of the coldest temperature of each year, where known
 * @param source who says so
 */
public record Hardiness(
    int zone, boolean warmerHalf, Optional<Temperature> meanLowest, Source source) {
  public Hardiness {
    Objects.requireNonNull(meanLowest);
    Objects.requireNonNull(source);
    if (zone < 1 || zone > 13) {
      throw new IllegalArgumentException("zones run from 1 to 13, got " + zone);
    }
  }

  /** {@code 7b}. */
  public String text() {
    return zone + (warmerHalf ? "b" : "a");
  }
}
