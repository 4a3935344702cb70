package yardloom.sun.shade;

import yardloom.sun.body.Ground;

/**
 * Hour angles at which the sky is looked at, and what part of each the open site sees.
 *
 * <p>Column j is the half-plane of hour angle H(j) = -π + (j + ½)·2π/n; a direction in it is (cos
 * H, sin H, t), t = tan δ. The open part of a column is an interval of t: above the level horizon,
 * above the sloping ground, and not beyond {@code limit}.
 *
 * <p>The sun passes a column at the same t every time it has the same declination, so whatever a
 * column holds serves every day of every year.
 *
 * <p>References: see {@link EquatorialFrame}.
 */
public final class HourColumns {
  public final int count;
  public final double stepHours;
  public final double[] cos;
  final double[] sin;
  public final double[] low;
  public final double[] high;

  /** The columns that see any sky lie between these two. */
  public final int first;

  public final int last;

  /**
   * Columns for the sun or for the whole sky.
   *
   * @param limit the greatest |tan δ| of interest; infinite for the whole sky
   */
  public HourColumns(EquatorialFrame frame, Ground ground, int count, double limit) {
    this.count = count;
    stepHours = 24.0 / count;
    cos = new double[count];
    sin = new double[count];
    low = new double[count];
    high = new double[count];
    double[] level = {frame.x(0, 0, 1), frame.y(0, 0, 1), frame.z(0, 0, 1)};
    double[] normal = {
      frame.x(-ground.riseX(), -ground.riseY(), 1),
      frame.y(-ground.riseX(), -ground.riseY(), 1),
      frame.z(-ground.riseX(), -ground.riseY(), 1)
    };
    int from = count;
    int to = -1;
    for (int j = 0; j < count; j++) {
      double hourAngle = -StrictMath.PI + (j + 0.5) * 2 * StrictMath.PI / count;
      cos[j] = StrictMath.cos(hourAngle);
      sin[j] = StrictMath.sin(hourAngle);
      low[j] = -limit;
      high[j] = limit;
      cut(j, level);
      cut(j, normal);
      if (low[j] < high[j]) {
        from = Math.min(from, j);
        to = j;
      }
    }
    first = from;
    last = to;
  }

  /** Keeps the part of column {@code j} on the side of {@code half} to which it points. */
  private void cut(int j, double[] half) {
    double base = half[0] * cos[j] + half[1] * sin[j];
    if (half[2] > 1e-12) {
      low[j] = Math.max(low[j], -base / half[2]);
    } else if (half[2] < -1e-12) {
      high[j] = Math.min(high[j], -base / half[2]);
    } else if (base <= 0) {
      high[j] = low[j];
    }
  }

  /** Where the hour angle of direction (x, y) falls, counted in columns. */
  double position(double x, double y) {
    return (StrictMath.atan2(y, x) + StrictMath.PI) * (count / (2 * StrictMath.PI)) - 0.5;
  }
}
