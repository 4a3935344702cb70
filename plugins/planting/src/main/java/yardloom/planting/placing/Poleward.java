package yardloom.planting.placing;

import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Angle;

/**
 * The way to the nearer pole on the plan: where shadows fall at noon.
 *
 * @param bearing clockwise from straight up
 */
record Poleward(Angle bearing) {
  /** Empty without a site. */
  static Optional<Poleward> of(Plan plan) {
    return plan.site()
        .map(s -> new Poleward(plan.isSouthern() ? s.north().plus(Angle.degrees(180)) : s.north()));
  }

  /** How far a point lies that way from the plan's origin. */
  double metres(Point at) {
    return at.x().metres() * StrictMath.sin(bearing.radians())
        + at.y().metres() * StrictMath.cos(bearing.radians());
  }
}
