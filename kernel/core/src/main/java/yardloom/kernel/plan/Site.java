package yardloom.kernel.plan;

import java.time.ZoneId;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Where on earth the yard lies.
 *
 * @param latitude north positive, -90° to 90°
 * @param longitude east positive, -180° to 180°
 * @param north the bearing of true north on the plan, clockwise from the plan's up direction
 */
public record Site(
    String name, Angle latitude, Angle longitude, Length elevation, ZoneId zone, Angle north) {
  public Site {
    if (Math.abs(latitude.degrees()) > 90) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "latitude must lie between -90 and 90 degrees, got " + latitude.degrees());
    }
    if (Math.abs(longitude.degrees()) > 180) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "longitude must lie between -180 and 180 degrees (east positive), got "
              + longitude.degrees());
    }
  }
}
