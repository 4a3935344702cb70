package yardloom.sun.shade;

/**
 * An upright ellipsoid of revolution, in equatorial metres.
 *
 * <p>With Q the ellipsoid's quadratic form and c its centre seen from the eye, direction s meets it
 * if (sᵀQc)² ≥ (sᵀQs)(cᵀQc - 1) and sᵀQc &gt; 0. In a column s is linear in t, so the limits are
 * the roots of a quadratic: exact. From a point inside, everything is hidden.
 *
 * <p>References: own derivation: s meets the surface where (us - c)ᵀQ(us - c) = 1 has a real root u
 * &gt; 0; the inequality is its discriminant.
 */
public final class CrownBody implements Body {
  private final double centreX;
  private final double centreY;
  private final double centreZ;
  private final double reachM;
  private final double q11;
  private final double q12;
  private final double q13;
  private final double q22;
  private final double q23;
  private final double q33;

  /**
   * A crown.
   *
   * @param centre in equatorial metres
   * @param zenith unit vector upwards in the equatorial frame
   */
  CrownBody(double[] centre, double[] zenith, double radiusM, double halfHeightM) {
    centreX = centre[0];
    centreY = centre[1];
    centreZ = centre[2];
    reachM = Math.max(radiusM, halfHeightM);
    // Q = I/a² + (1/c² - 1/a²) u uᵀ, u the zenith.
    double across = 1 / (radiusM * radiusM);
    double along = 1 / (halfHeightM * halfHeightM) - across;
    q11 = across + along * zenith[0] * zenith[0];
    q12 = along * zenith[0] * zenith[1];
    q13 = along * zenith[0] * zenith[2];
    q22 = across + along * zenith[1] * zenith[1];
    q23 = along * zenith[1] * zenith[2];
    q33 = across + along * zenith[2] * zenith[2];
  }

  @Override
  public void mark(double eyeX, double eyeY, double eyeZ, ColumnProfile profile, int who) {
    double x = centreX - eyeX;
    double y = centreY - eyeY;
    double z = centreZ - eyeZ;
    double w1 = q11 * x + q12 * y + q13 * z;
    double w2 = q12 * x + q22 * y + q23 * z;
    double w3 = q13 * x + q23 * y + q33 * z;
    double k = w1 * x + w2 * y + w3 * z - 1;
    if (k <= 0) {
      profile.hideAll(who);
      return;
    }
    double r33 = w3 * w3 - k * q33;
    double r13 = w1 * w3 - k * q13;
    double r23 = w2 * w3 - k * q23;
    double r11 = w1 * w1 - k * q11;
    double r12 = w1 * w2 - k * q12;
    double r22 = w2 * w2 - k * q22;
    HourColumns columns = profile.columns();
    double flat2 = x * x + y * y;
    double reach2 = reachM * reachM;
    double middle = columns.position(x, y);
    double half = columns.count;
    if (flat2 > reach2) {
      // A ball around the crown spans this hour angle to either side.
      half = StrictMath.asin(reachM / StrictMath.sqrt(flat2)) * columns.count / (2 * Math.PI);
    }
    int from = (int) Math.max(columns.first - columns.count, Math.ceil(middle - half));
    int to = (int) Math.min(columns.last + (double) columns.count, Math.floor(middle + half));
    if (to - from >= columns.count) {
      from = columns.first;
      to = columns.last;
    }
    for (int i = from; i <= to; i++) {
      int j = i < 0 ? i + columns.count : i >= columns.count ? i - columns.count : i;
      if (j < columns.first || j > columns.last) {
        continue;
      }
      double c = columns.cos[j];
      double s = columns.sin[j];
      double b = r13 * c + r23 * s;
      double disc = b * b - r33 * (r11 * c * c + 2 * r12 * c * s + r22 * s * s);
      if (disc > 0) {
        roots(profile, j, w1 * c + w2 * s, w3, -b, StrictMath.sqrt(disc), r33, who);
      }
    }
  }

  private static void roots(
      ColumnProfile profile,
      int j,
      double ahead,
      double aheadPole,
      double minusB,
      double root,
      double a,
      int who) {
    double t1 = (minusB - root) / a;
    double t2 = (minusB + root) / a;
    if (a < 0) {
      // Between the roots, if that lies ahead of the eye and not behind it.
      if (ahead + aheadPole * (minusB / a) > 0) {
        profile.hide(j, t2, t1, who);
      }
    } else if (aheadPole > 0) {
      profile.hide(j, t2, Double.POSITIVE_INFINITY, who);
    } else {
      profile.hide(j, Double.NEGATIVE_INFINITY, t1, who);
    }
  }
}
