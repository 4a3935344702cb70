package yardloom.facts;

import java.util.List;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Length;

/**
 * Something that casts shade.
 *
 * @param base height of its underside above ground; a crown does not reach the ground
 * @param top height of its highest part
 * @param passes share of direct light that passes it, January to December, 0 (solid) to 1
 */
public record Obstacle(
    ElementId of, Form form, Shape footprint, Length base, Length top, List<Double> passes) {
  public Obstacle {
    passes = List.copyOf(passes);
    if (passes.size() != 12) {
      throw new IllegalArgumentException("an obstacle needs 12 monthly shares");
    }
  }

  /** How it fills the space between base and top over its footprint. */
  public enum Form {
    /** Straight sides and a flat top. */
    PRISM,
    /** An ellipsoid inside the footprint's circle. */
    ELLIPSOID
  }
}
