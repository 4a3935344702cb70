package yardloom.kernel.ground;

import yardloom.kernel.unit.Angle;

/**
 * How steep the ground is, and where water runs.
 *
 * <p>References: plane geometry.
 *
 * @param ratio rise over run along the steepest way; 0.05 is 5 %
 * @param downhill bearing on the plan, clockwise from up; 0° on level ground
 */
public record Slope(double ratio, Angle downhill) {

  /** Rise over run along a bearing; positive uphill. */
  public double along(Angle bearing) {
    return -ratio * StrictMath.cos(bearing.minus(downhill).radians());
  }

  /** The bearing of the contour through the point, 0° to below 180°; meaningless when level. */
  public Angle contourBearing() {
    return Angle.degrees((downhill.degrees() + 90) % 180);
  }
}
