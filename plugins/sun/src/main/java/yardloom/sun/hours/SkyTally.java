package yardloom.sun.hours;

import java.util.Arrays;
import yardloom.sun.shade.ColumnProfile;
import yardloom.sun.shade.HourColumns;
import yardloom.sun.shade.LightSegments;
import yardloom.sun.shade.ShadeScene;

/**
 * The share of an evenly bright sky that a level surface sees, by month.
 *
 * <p>Over each column the integral of sin(elevation) over the sky is closed: with the zenith at
 * (cos φ, 0, sin φ), F(t) = sin φ · sin²δ / 2 + cos φ cos H · (δ + sin δ cos δ) / 2. Columns are
 * summed by the midpoint rule; with 240 of them the open sky comes out within 0.0002. Shade with
 * light passing counts by the share that passes. 0 where everything is hidden, 1 in the open.
 *
 * <p>References: [1] H. C. Hottel, A. F. Sarofim, Radiative Transfer, McGraw-Hill, 1967 (view
 * factors by projected solid angle; from memory).
 */
final class SkyTally {
  private final HourColumns columns;
  private final LightSegments segments;
  private final double level;
  private final double[] tilt;
  private double open;

  SkyTally(ShadeScene scene, HourColumns columns) {
    this.columns = columns;
    segments = new LightSegments(scene);
    level = scene.frame().z(0, 0, 1);
    double towardsEquator = scene.frame().x(0, 0, 1);
    tilt = new double[columns.count];
    for (int j = columns.first; j <= columns.last; j++) {
      tilt[j] = towardsEquator * columns.cos[j];
      open += between(j, columns.low[j], columns.high[j]);
    }
  }

  private double between(int j, double from, double to) {
    return to > from ? upTo(j, to) - upTo(j, from) : 0;
  }

  private double upTo(int j, double t) {
    if (Double.isInfinite(t)) {
      return level / 2 + tilt[j] * Math.copySign(StrictMath.PI / 4, t);
    }
    double cos2 = 1 / (1 + t * t);
    return level * (1 - cos2) / 2 + tilt[j] * (StrictMath.atan(t) + t * cos2) / 2;
  }

  /** Fills {@code months} with the share seen in each month. */
  void of(ColumnProfile profile, double[] months) {
    Arrays.fill(months, open);
    segments.reset();
    for (int j = columns.first; j <= columns.last; j++) {
      if (profile.count[j] == 0) {
        continue;
      }
      segments.cut(profile, j);
      for (int i = 0; i < segments.count; i++) {
        double hidden = between(j, segments.low[i], segments.high[i]);
        for (int m = 0; m < 12; m++) {
          months[m] -= hidden * segments.loss(segments.kind[i], m);
        }
      }
    }
    // The whole upper hemisphere weighs π.
    double scale = 2 * StrictMath.PI / columns.count / StrictMath.PI;
    for (int m = 0; m < 12; m++) {
      months[m] = Math.max(0, Math.min(1, months[m] * scale));
    }
  }
}
