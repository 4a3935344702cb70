package yardloom.sun.shade;

import java.util.Arrays;

/**
 * Cuts a column of a profile into pieces of even light: which share of direct light the obstacles
 * in front of a piece take, by month.
 *
 * <p>Pieces with the same set of schedules in front share one number; number 0 is full shade.
 * Numbers are given anew for each cell, in the order in which they are met, so that sums over them
 * do not depend on what a thread did before.
 *
 * <p>References: own construction.
 */
public final class LightSegments {
  private final ShadeScene scene;
  private final long[] keyOfSchedule;
  private long[] keys = new long[16];
  private double[][] loss = new double[16][12];
  private int known;

  public int count;
  public double[] low = new double[64];
  public double[] high = new double[64];
  public int[] kind = new int[64];
  private double[] bounds = new double[64];

  public LightSegments(ShadeScene scene) {
    this.scene = scene;
    keyOfSchedule = new long[scene.scheduleCount()];
    for (int s = 0; s < keyOfSchedule.length; s++) {
      keyOfSchedule[s] = mix(s);
    }
    Arrays.fill(loss[0], 1);
    reset();
  }

  /** SplitMix64's finishing step: sums of these tell sets of schedules apart. */
  private static long mix(long s) {
    long z = (s + 1) * 0x9e3779b97f4a7c15L;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  public void reset() {
    known = 1;
  }

  /** How many kinds of shade were met since {@link #reset}. */
  public int kinds() {
    return known;
  }

  /** The share of light that a kind of shade takes in a month. */
  public double loss(int kindOfShade, int month) {
    return loss[kindOfShade][month];
  }

  /** Fills {@link #low}, {@link #high} and {@link #kind} with the shaded pieces of a column. */
  public void cut(ColumnProfile profile, int j) {
    count = 0;
    int start = profile.start(j);
    int n = profile.count[j];
    if (n == 0) {
      return;
    }
    if (n == 1) {
      push(profile.low[start], profile.high[start], kindOf(profile, start, start));
      return;
    }
    int size = sortedBounds(profile, start, n);
    for (int i = 0; i + 1 < size; i++) {
      double a = bounds[i];
      double b = bounds[i + 1];
      if (a < b) {
        int shade = kindBetween(profile, start, n, a, b);
        if (shade >= 0) {
          push(a, b, shade);
        }
      }
    }
  }

  private int sortedBounds(ColumnProfile profile, int start, int n) {
    if (bounds.length < 2 * n) {
      bounds = new double[4 * n];
    }
    int size = 0;
    for (int i = start; i < start + n; i++) {
      size = insert(size, profile.low[i]);
      size = insert(size, profile.high[i]);
    }
    return size;
  }

  private int insert(int size, double value) {
    int i = size - 1;
    while (i >= 0 && bounds[i] > value) {
      bounds[i + 1] = bounds[i];
      i--;
    }
    bounds[i + 1] = value;
    return size + 1;
  }

  private int kindBetween(ColumnProfile profile, int start, int n, double a, double b) {
    long key = 0;
    boolean any = false;
    for (int i = start; i < start + n; i++) {
      if (profile.low[i] <= a && b <= profile.high[i]) {
        int schedule = scene.schedule(profile.who[i]);
        if (schedule == 0) {
          return 0;
        }
        key += keyOfSchedule[schedule];
        any = true;
      }
    }
    if (!any) {
      return -1;
    }
    for (int c = 1; c < known; c++) {
      if (keys[c] == key) {
        return c;
      }
    }
    int made = make(key);
    for (int i = start; i < start + n; i++) {
      if (profile.low[i] <= a && b <= profile.high[i]) {
        weaken(made, scene.schedule(profile.who[i]));
      }
    }
    return made;
  }

  private int kindOf(ColumnProfile profile, int start, int i) {
    return kindBetween(profile, start, 1, profile.low[i], profile.high[i]);
  }

  private int make(long key) {
    if (known == keys.length) {
      keys = Arrays.copyOf(keys, 2 * known);
      loss = Arrays.copyOf(loss, 2 * known);
      for (int i = known; i < loss.length; i++) {
        loss[i] = new double[12];
      }
    }
    keys[known] = key;
    Arrays.fill(loss[known], 0);
    return known++;
  }

  private void weaken(int made, int schedule) {
    for (int m = 0; m < 12; m++) {
      // What passes all: 1 - loss = Π passes.
      loss[made][m] = 1 - (1 - loss[made][m]) * scene.pass(schedule, m);
    }
  }

  private void push(double a, double b, int shade) {
    if (count > 0 && kind[count - 1] == shade && high[count - 1] == a) {
      high[count - 1] = b;
      return;
    }
    if (count == low.length) {
      low = Arrays.copyOf(low, 2 * count);
      high = Arrays.copyOf(high, 2 * count);
      kind = Arrays.copyOf(kind, 2 * count);
    }
    low[count] = a;
    high[count] = b;
    kind[count] = shade;
    count++;
  }
}
