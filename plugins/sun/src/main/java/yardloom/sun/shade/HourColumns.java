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
 * <p>References: [1] see {@link EquatorialFrame}. [2] M. Abramowitz, I. A. Stegun, Handbook of
 * Mathematical Functions, 1964, 4.4.49, after C. Hastings (from memory; held against the library in
 * the tests).
 */
public final class HourColumns {
  /** In columns; far more than the error of [2] at a column a minute. */
  static final double NEAR = 1e-3;

  public final int count;
  public final double stepHours;
  public final double[] cos;
  final double[] sin;
  public final double[] low;
  public final double[] high;

  /** The square of the greatest |tan δ| of interest, and a hair more. */
  final double reach;

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
    reach = limit * limit * (1 + 1e-9);
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

  /**
   * The same within {@link #NEAR}, and exactly where a column is as near as that: between which
   * columns the direction lies is told as {@link #position} tells it, in a tenth of the time. Every
   * corner of every body is asked for from every cell.
   */
  double between(double x, double y) {
    double about = (arcTangent(y, x) + StrictMath.PI) * (count / (2 * StrictMath.PI)) - 0.5;
    // None is as low as -1, so that a cast cuts towards the column below.
    double past = about + 1 - (int) (about + 1);
    boolean clear = y != 0 && past >= NEAR && past <= 1 - NEAR;
    return clear ? about : position(x, y);
  }

  /** By [2], within 2e-8; of no direction at all it is not a number. */
  static double arcTangent(double y, double x) {
    double along = Math.abs(x);
    double across = Math.abs(y);
    boolean steep = across > along;
    double r = steep ? along / across : across / along;
    double q = r * r;
    double sum = 0.0028662257;
    sum = sum * q - 0.0161657367;
    sum = sum * q + 0.0429096138;
    sum = sum * q - 0.0752896400;
    sum = sum * q + 0.1065626393;
    sum = sum * q - 0.1420889944;
    sum = sum * q + 0.1999355085;
    sum = sum * q - 0.3333314528;
    double angle = r + r * q * sum;
    angle = steep ? StrictMath.PI / 2 - angle : angle;
    angle = x < 0 ? StrictMath.PI - angle : angle;
    return y < 0 ? -angle : angle;
  }
}
