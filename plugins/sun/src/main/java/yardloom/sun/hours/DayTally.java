package yardloom.sun.hours;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import yardloom.sun.hours.DayLight.Spell;
import yardloom.sun.shade.ColumnProfile;
import yardloom.sun.shade.HourColumns;
import yardloom.sun.shade.ShadeScene;

/**
 * The course of single days at one cell: direct hours, the morning's part, first and last sun,
 * longest unbroken spell.
 *
 * <p>Behind a crown or a fence that lets light pass, hours count by the share that passes; for
 * first, last and unbroken sun a column is sunny if at least {@link #SUNNY} passes. An unbroken
 * spell counts by the share that passes too, so that it never exceeds the day's direct hours. Each
 * change between sun and shade is placed to half a step.
 *
 * <p>References: own construction.
 */
public final class DayTally {
  static final double SUNNY = 0.5;

  private final ShadeScene scene;
  private final HourColumns columns;
  private final double[] tan;
  private final int[] month;
  private final double[] light;

  /**
   * A tally.
   *
   * @param tan tan δ of each day
   * @param month the month of each day, 0 to 11
   */
  public DayTally(ShadeScene scene, HourColumns columns, double[] tan, int[] month) {
    this.scene = scene;
    this.columns = columns;
    this.tan = tan.clone();
    this.month = month.clone();
    light = new double[columns.count];
  }

  /** The direct hours of day {@code d}, as {@link #of} gives them with all the rest. */
  double directHours(ColumnProfile profile, int d) {
    double t = tan[d];
    double sum = 0;
    for (int j = columns.first; j <= columns.last; j++) {
      if (t >= columns.low[j] && t < columns.high[j]) {
        sum += profile.count[j] == 0 ? 1 : passing(profile, j, d);
      }
    }
    return sum * columns.stepHours;
  }

  /** What passes all that stands in column {@code j} on day {@code d}. */
  private double passing(ColumnProfile profile, int j, int d) {
    double t = tan[d];
    double passes = 1;
    int start = profile.start(j);
    for (int i = start; i < start + profile.count[j] && passes > 0; i++) {
      if (profile.low[i] <= t && t < profile.high[i]) {
        passes *= scene.pass(scene.schedule(profile.who[i]), month[d]);
      }
    }
    return passes;
  }

  /** The share of direct light in each column on day {@code d}; negative where the sun is down. */
  double[] light(ColumnProfile profile, int d) {
    Arrays.fill(light, -1);
    for (int j = columns.first; j <= columns.last; j++) {
      double t = tan[d];
      if (t < columns.low[j] || t >= columns.high[j]) {
        continue;
      }
      light[j] = passing(profile, j, d);
    }
    return light;
  }

  public DayLight of(ColumnProfile profile, int d) {
    light(profile, d);
    double sum = 0;
    double beforeNoon = 0;
    int first = -1;
    int last = -1;
    double run = 0;
    int runFrom = 0;
    double longest = 0;
    int longestFrom = 0;
    int longestEnd = 0;
    for (int j = columns.first; j <= columns.last; j++) {
      if (light[j] > 0) {
        sum += light[j];
        beforeNoon += 2 * j < columns.count ? light[j] : 0;
      }
      if (light[j] >= SUNNY) {
        first = first < 0 ? j : first;
        last = j;
        runFrom = run == 0 ? j : runFrom;
        run += light[j];
        longestFrom = run > longest ? runFrom : longestFrom;
        longestEnd = run > longest ? j + 1 : longestEnd;
        longest = Math.max(longest, run);
      } else {
        run = 0;
      }
    }
    double step = columns.stepHours;
    return new DayLight(
        sum * step,
        beforeNoon * step,
        first < 0 ? 0 : first * step - 12,
        first < 0 ? 0 : (last + 1) * step - 12,
        spells(longestFrom, longestEnd),
        spells(columns.first, columns.last + 1));
  }

  /** The runs of columns before {@code end} in which the same share passes, cut at noon. */
  private List<Spell> spells(int start, int end) {
    List<Spell> spells = new ArrayList<>();
    int from = start;
    for (int j = start; j < end; j++) {
      boolean ends = j == end - 1 || light[j + 1] != light[j] || 2 * (j + 1) == columns.count;
      if (ends) {
        if (light[j] > 0) {
          double step = columns.stepHours;
          spells.add(new Spell(from * step - 12, (j + 1) * step - 12, light[j]));
        }
        from = j + 1;
      }
    }
    return spells;
  }
}
