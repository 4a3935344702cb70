package yardloom.kernel.survey;

import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * One straight line of a traverse.
 *
 * <p>References: plane trigonometry; the parts are used by {@link Traverse}.
 */
public record Course(Angle azimuth, Length distance) {

  /** The course with these northward and eastward parts. */
  public static Course ofParts(Length latitude, Length departure) {
    double deg = Math.toDegrees(StrictMath.atan2(departure.metres(), latitude.metres()));
    return new Course(
        Angle.degrees(deg < 0 ? deg + 360 : deg),
        Length.metres(Math.hypot(latitude.metres(), departure.metres())));
  }

  /** The northward part. */
  public Length latitude() {
    return distance.times(StrictMath.cos(azimuth.radians()));
  }

  /** The eastward part. */
  public Length departure() {
    return distance.times(StrictMath.sin(azimuth.radians()));
  }
}
