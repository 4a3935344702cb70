package yardloom.facts;

import java.util.List;
import java.util.Objects;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Length;

/**
 * Something that casts shade.
 *
 * @param base height of its underside above ground; zero when it stands on the ground
 * @param top height of its highest part
 * @param passes share of direct light that passes it, January to December, 0 (solid) to 1
 * @param stage from when on it stands there
 */
public record Obstacle(
    ElementId of,
    Form form,
    Shape footprint,
    Length base,
    Length top,
    List<Double> passes,
    Stage stage) {
  public Obstacle {
    Objects.requireNonNull(of);
    Objects.requireNonNull(form);
    Objects.requireNonNull(footprint);
    Objects.requireNonNull(stage);
    passes = List.copyOf(passes);
    if (passes.size() != 12) {
      throw new IllegalArgumentException("an obstacle needs 12 monthly shares");
    }
    if (!passes.stream().allMatch(p -> p >= 0 && p <= 1)) {
      throw new IllegalArgumentException(of + " passes shares outside 0 to 1: " + passes);
    }
    if (base.compareTo(top) > 0 || base.metres() < 0) {
      throw new IllegalArgumentException(of + " reaches from " + base + " to " + top);
    }
  }

  /** An obstacle that stands there from the beginning. */
  public Obstacle(
      ElementId of, Form form, Shape footprint, Length base, Length top, List<Double> passes) {
    this(of, form, footprint, base, top, passes, Stage.STANDING);
  }

  /** How it fills the space between base and top over its footprint. */
  public enum Form {
    /** Straight sides and a flat top. */
    PRISM,
    /** An ellipsoid inside the footprint's circle. */
    ELLIPSOID,
    /** An upright cylinder on the circle of the footprint's area. */
    CYLINDER,
    /** A roof with two slopes and a ridge along the footprint's longer side. */
    GABLE,
    /** A roof with four equal slopes. */
    HIP,
    /** A roof with one slope that rises to the side furthest up the plan. */
    SHED
  }

  /** Which year of the plan's growth it belongs to. */
  public enum Stage {
    /** There at all times: buildings, fences, standing trees. */
    STANDING,
    YEAR_1,
    YEAR_5,
    MATURE
  }
}
