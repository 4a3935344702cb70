package yardloom.kernel.ground;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * The steepest running and cross slope along a path, without sign.
 *
 * <p>Read at the middle of pieces of at most {@code step}; running slope from the levels at the
 * piece's ends, cross slope from the surface at its middle.
 *
 * <p>References: plane geometry.
 *
 * @param running rise over run along the path
 * @param cross rise over run across it
 */
public record PathSlope(double running, double cross) {
  private static final double STEP_M = 1;

  /** Empty if no part of the path lies on measured ground. */
  public static Optional<PathSlope> of(Surface surface, Line path) {
    double running = -1;
    double cross = 0;
    List<Point> corners = path.points();
    for (int i = 0; i + 1 < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get(i + 1);
      int pieces = (int) Math.max(1, Math.ceil(a.distance(b).metres() / STEP_M));
      for (int k = 0; k < pieces; k++) {
        Point from = between(a, b, (double) k / pieces);
        Point to = between(a, b, (k + 1.0) / pieces);
        Optional<Length> low = surface.levelAt(from);
        Optional<Length> high = surface.levelAt(to);
        Optional<Slope> middle = surface.slopeAt(between(from, to, 0.5));
        if (low.isPresent() && high.isPresent() && middle.isPresent()) {
          double rise = high.get().minus(low.get()).ratioTo(from.distance(to));
          running = Math.max(running, Math.abs(rise));
          cross = Math.max(cross, Math.abs(middle.get().along(square(from, to))));
        }
      }
    }
    return running < 0 ? Optional.empty() : Optional.of(new PathSlope(running, cross));
  }

  private static Point between(Point a, Point b, double share) {
    return a.moved(b.x().minus(a.x()).times(share), b.y().minus(a.y()).times(share));
  }

  private static Angle square(Point from, Point to) {
    double bearing =
        StrictMath.atan2(to.x().minus(from.x()).metres(), to.y().minus(from.y()).metres());
    return Angle.radians(bearing + Math.PI / 2);
  }
}
