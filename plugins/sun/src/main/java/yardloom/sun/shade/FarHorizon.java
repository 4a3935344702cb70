package yardloom.sun.shade;

/**
 * One stretch of a distant horizon: everything below a line between two directions. It is the same
 * from every cell.
 *
 * <p>References: see {@link Horizons}.
 */
final class FarHorizon implements Body {
  private final double[] corners;

  /**
   * A stretch.
   *
   * @param corners directions in the equatorial frame: low right, low left, high left, high right
   *     as the eye sees them
   */
  FarHorizon(double[] corners) {
    this.corners = corners;
  }

  @Override
  public void mark(double eyeX, double eyeY, double eyeZ, ColumnProfile profile, int who) {
    double[] seen = profile.seen(corners, 0, 0, 0);
    if (seen == null) {
      return;
    }
    boolean holdsNorthPole = true;
    boolean holdsSouthPole = true;
    profile.beginOutline();
    for (int a = 0; a < 4; a++) {
      double poleSide = profile.arc(seen, a, (a + 1) % 4);
      holdsNorthPole &= poleSide < 0;
      holdsSouthPole &= poleSide > 0;
    }
    profile.endOutline(holdsNorthPole, holdsSouthPole, who);
  }
}
