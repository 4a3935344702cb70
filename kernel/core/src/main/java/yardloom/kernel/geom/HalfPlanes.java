package yardloom.kernel.geom;

import java.util.List;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Half planes as far as a figure reaches. */
public final class HalfPlanes {
  private HalfPlanes() {}

  /**
   * A square whose front edge runs through {@code at}, square to {@code facing}; it covers all that
   * lies behind within {@code reach}.
   *
   * @param facing bearing, clockwise from the plan's up direction
   */
  public static Shape behind(Point at, Angle facing, Length reach) {
    double dx = StrictMath.sin(facing.radians()) * reach.metres();
    double dy = StrictMath.cos(facing.radians()) * reach.metres();
    Point left = at.moved(Length.metres(-dy), Length.metres(dx));
    Point right = at.moved(Length.metres(dy), Length.metres(-dx));
    return Shape.polygon(
        List.of(
            left,
            right,
            right.moved(Length.metres(-2 * dx), Length.metres(-2 * dy)),
            left.moved(Length.metres(-2 * dx), Length.metres(-2 * dy))));
  }
}
