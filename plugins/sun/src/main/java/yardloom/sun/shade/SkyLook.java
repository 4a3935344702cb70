package yardloom.sun.shade;

import java.util.ArrayList;
import java.util.List;

/**
 * What obstacles hide of the sky at one place, by bearing and elevation.
 *
 * <p>Read from columns of hour angle 1° apart; borders are placed to half a degree.
 *
 * <p>References: own construction.
 */
public final class SkyLook {
  private static final int COLUMNS = 360;

  /** Half a degree: columns do not tell the ground from what stands on it more finely. */
  private static final double GROUND_DUST = 0.009;

  private final ShadeScene scene;
  private final HourColumns columns;
  private final ColumnProfile profile;
  private final double northRad;

  /**
   * A look from a place on the ground.
   *
   * @param northRad bearing of true north on the plan, as of the scene
   * @param without whose own shade is left out, see {@link ShadeScene#shadeOf}
   */
  public SkyLook(ShadeScene scene, double northRad, double x, double y, int without) {
    this.scene = scene;
    this.northRad = northRad;
    columns = new HourColumns(scene.frame(), scene.ground(), COLUMNS, Double.POSITIVE_INFINITY);
    profile = new ColumnProfile(columns);
    scene.mark(x, y, scene.ground().heightM(x, y), without, profile);
  }

  /** Whether something solid or thin, or rising ground, stands in a direction. */
  public boolean isHidden(double bearingRad, double elevationRad) {
    double flat = StrictMath.cos(elevationRad);
    double x = flat * StrictMath.sin(bearingRad + northRad);
    double y = flat * StrictMath.cos(bearingRad + northRad);
    double z = StrictMath.sin(elevationRad);
    double dust = scene.ground().steepest() > 0 ? GROUND_DUST : 0;
    if (z < scene.ground().heightM(x, y) + dust) {
      return true;
    }
    EquatorialFrame frame = scene.frame();
    double ex = frame.x(x, y, z);
    double ey = frame.y(x, y, z);
    double t = frame.z(x, y, z) / StrictMath.hypot(ex, ey);
    int j = (int) Math.floor(columns.position(ex, ey) + 0.5);
    j = Math.floorMod(j, COLUMNS);
    int start = profile.start(j);
    for (int i = start; i < start + profile.count[j]; i++) {
      if (profile.low[i] <= t && t <= profile.high[i]) {
        return true;
      }
    }
    return false;
  }

  /** The hidden stretches of elevation at a bearing, as pairs in whole steps of {@code stepRad}. */
  public List<double[]> hidden(double bearingRad, double stepRad) {
    List<double[]> stretches = new ArrayList<>();
    int steps = (int) Math.round(StrictMath.PI / 2 / stepRad);
    double from = -1;
    for (int s = 0; s <= steps; s++) {
      boolean hides = s < steps && isHidden(bearingRad, (s + 0.5) * stepRad);
      if (hides && from < 0) {
        from = s * stepRad;
      } else if (!hides && from >= 0) {
        stretches.add(new double[] {from, s * stepRad});
        from = -1;
      }
    }
    return stretches;
  }
}
