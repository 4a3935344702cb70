package yardloom.sun.shade;

import java.util.ArrayList;
import java.util.List;

/**
 * The distant horizon as stretches between given bearings.
 *
 * <p>Between two points the skyline is the great circle through them, which rises at most 0.4 % of
 * its height above a straight line for points 10° apart. Long stretches are cut into pieces of at
 * most {@link #PIECE_DEG}, the elevation running evenly between the points. Nothing for fewer than
 * two points: a single elevation all around is given as two.
 *
 * <p>References: own construction.
 */
final class Horizons {
  static final double PIECE_DEG = 5;
  private static final double BELOW_RAD = StrictMath.toRadians(-45);

  /** Pieces overlap by a hair, so that a celestial pole never lies on an edge of all of them. */
  private static final double LAP_RAD = 1e-6;

  private Horizons() {}

  static List<Body> of(EquatorialFrame frame, double northRad, List<double[]> points) {
    List<Body> stretches = new ArrayList<>();
    if (points.size() < 2) {
      return stretches;
    }
    for (int i = 0; i < points.size(); i++) {
      double[] a = points.get(i);
      double[] b = points.get((i + 1) % points.size());
      double turn = b[0] - a[0];
      if (turn <= 0) {
        turn += 2 * StrictMath.PI;
      }
      int pieces = (int) Math.ceil(StrictMath.toDegrees(turn) / PIECE_DEG);
      for (int p = 0; p < pieces; p++) {
        double from = (double) p / pieces;
        double to = (p + 1.0) / pieces;
        stretches.add(
            piece(
                frame,
                northRad,
                new double[] {a[0] + turn * from - LAP_RAD, a[1] + (b[1] - a[1]) * from},
                new double[] {a[0] + turn * to + LAP_RAD, a[1] + (b[1] - a[1]) * to}));
      }
    }
    return stretches;
  }

  private static Body piece(EquatorialFrame frame, double northRad, double[] left, double[] right) {
    double[] corners = new double[12];
    place(frame, northRad, right[0], BELOW_RAD, corners, 0);
    place(frame, northRad, left[0], BELOW_RAD, corners, 3);
    place(frame, northRad, left[0], left[1], corners, 6);
    place(frame, northRad, right[0], right[1], corners, 9);
    return new FarHorizon(corners);
  }

  private static void place(
      EquatorialFrame frame, double northRad, double bearing, double rise, double[] into, int at) {
    double flat = StrictMath.cos(rise);
    double x = flat * StrictMath.sin(bearing + northRad);
    double y = flat * StrictMath.cos(bearing + northRad);
    double z = StrictMath.sin(rise);
    into[at] = frame.x(x, y, z);
    into[at + 1] = frame.y(x, y, z);
    into[at + 2] = frame.z(x, y, z);
  }
}
