package yardloom.water.model;

import java.util.Optional;

/**
 * The watered lawn that was there before.
 *
 * @param efficiency share of the water drawn that reached the roots, over 0 up to 1, where the plan
 *     gives it
 */
public record FormerLawn(Turf turf, Optional<Double> efficiency) {

  /** Grass by when it grows. */
  public enum Turf {
    COOL_SEASON,
    WARM_SEASON
  }
}
