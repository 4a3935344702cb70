package yardloom.water.lawn;

import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;

/**
 * The watered lawn that was there before.
 *
 * @param efficiency share of the water drawn that reached the roots, over 0 up to 1, where the plan
 *     gives it
 */
public record FormerLawn(Turf turf, Optional<Double> efficiency) {
  /** The lawn that the garden takes the place of. */
  public static final AttributeKey<FormerLawn> KEY =
      new AttributeKey<>("water.former-lawn", FormerLawn.class);

  /** Grass by when it grows. */
  public enum Turf {
    COOL_SEASON,
    WARM_SEASON
  }
}
