package yardloom.sun.shade;

import java.util.Arrays;

/**
 * What one cell sees: for each column of hour angle, the intervals of t = tan δ that obstacles
 * hide. Reused from cell to cell by one thread.
 *
 * <p>How an outline gets in. A body's outline, seen from the cell, is a ring of edges; each edge
 * lies in a plane through the eye, which cuts column j at one t. {@link #beginOutline} opens a
 * ring, {@link #arc} sweeps each edge over the columns between its ends, {@link #endOutline} hides,
 * in each column that was swept, what lies between the least and the greatest t. That is the whole
 * of the body's shadow in the column, because bodies are convex: a half-plane cuts the ring in two
 * points, or in one where the ring goes round a celestial pole, and then everything up to that pole
 * (t = ±∞) is hidden too.
 *
 * <p>What holds between calls, for the columns from {@code first} to {@code last}:
 *
 * <ol>
 *   <li>Interval i of column j stands at {@link #start}(j) + i, 0 ≤ i &lt; {@link #count}[j]; it is
 *       not empty and lies within the open sky of its column, {@code columns.low[j]} to {@code
 *       columns.high[j]}.
 *   <li>Intervals of one obstacle in one column are disjoint, so that an obstacle of several bodies
 *       weakens the light once. They are in no order.
 *   <li>Intervals of one obstacle stand together, because obstacles are marked one after the other:
 *       whatever {@link #hide} may have to join is at the end of the column. All solid obstacles
 *       count as one, {@link #SOLID}, and are marked first: they are at its beginning.
 *   <li>While a ring is open, {@code outlineLow} and {@code outlineHigh} mean something only where
 *       {@code outlineMark} bears the ring's number; the numbers save clearing them for each ring.
 *   <li>A column exactly at a vertex is swept by the edge that begins there in the direction of
 *       growing hour angle and not by the one that ends there, so each column between the ring's
 *       ends is swept by exactly two edges, or by one of a ring around a pole.
 * </ol>
 *
 * <p>References: own construction, from the plane geometry of {@link EquatorialFrame}; held against
 * rays in the tests and in the benchmark.
 */
public final class ColumnProfile {
  /** The number that all solid obstacles share. They are marked before all others. */
  static final int SOLID = 0;

  private static final int FIRST_ROOM = 6;

  /** No position is as low. */
  private static final double UNKNOWN = -2;

  private final HourColumns columns;
  private int room = FIRST_ROOM;
  public final int[] count;
  public double[] low;
  public double[] high;
  public int[] who;

  private final double[] outlineLow;
  private final double[] outlineHigh;
  private final int[] outlineMark;
  private final int[] touched;
  private int touchedCount;
  private int outline;

  private boolean[] facing = new boolean[32];
  private double[] seen = new double[32 * 4];

  /** An empty profile. */
  public ColumnProfile(HourColumns columns) {
    this.columns = columns;
    count = new int[columns.count];
    low = new double[columns.count * room];
    high = new double[columns.count * room];
    who = new int[columns.count * room];
    outlineLow = new double[columns.count];
    outlineHigh = new double[columns.count];
    outlineMark = new int[columns.count];
    touched = new int[columns.count];
  }

  HourColumns columns() {
    return columns;
  }

  /** Where the intervals of column {@code j} begin in {@link #low}, {@link #high}, {@link #who}. */
  public int start(int j) {
    return j * room;
  }

  void clear() {
    Arrays.fill(count, columns.first, columns.last + 1, 0);
  }

  boolean hidesAny() {
    for (int j = columns.first; j <= columns.last; j++) {
      if (count[j] > 0) {
        return true;
      }
    }
    return false;
  }

  boolean[] facing(int faces) {
    if (facing.length < faces) {
      facing = new boolean[faces];
    }
    return facing;
  }

  /**
   * The vertices seen from the eye: x, y, z and position in columns of each; the position is found
   * when it is asked for, since half of them lie on no outline.
   *
   * @return null if all of them lie beyond the greatest declination on the same side, within a cone
   *     that is convex: then all of the body does and hides no sky of interest. So does most of
   *     what is low, to the north and to the south.
   */
  double[] seen(double[] vertices, double eyeX, double eyeY, double eyeZ) {
    int n = vertices.length / 3;
    if (seen.length < n * 4) {
      seen = new double[n * 4];
    }
    int beyondNorth = 0;
    int beyondSouth = 0;
    for (int v = 0, s = 0; v < vertices.length; v += 3, s += 4) {
      double x = vertices[v] - eyeX;
      double y = vertices[v + 1] - eyeY;
      double z = vertices[v + 2] - eyeZ;
      seen[s] = x;
      seen[s + 1] = y;
      seen[s + 2] = z;
      seen[s + 3] = UNKNOWN;
      if (z * z > columns.reach * (x * x + y * y)) {
        beyondNorth += z > 0 ? 1 : 0;
        beyondSouth += z < 0 ? 1 : 0;
      }
    }
    return beyondNorth == n || beyondSouth == n ? null : seen;
  }

  void beginOutline() {
    outline++;
    touchedCount = 0;
  }

  /**
   * Follows the edge from vertex {@code a} to {@code b} of an outline through the columns.
   *
   * @return on which side of the edge's plane the north pole lies: negative on the body's side
   */
  double arc(double[] vertex, int a, int b) {
    int i = a * 4;
    int k = b * 4;
    double nx = vertex[i + 1] * vertex[k + 2] - vertex[i + 2] * vertex[k + 1];
    double ny = vertex[i + 2] * vertex[k] - vertex[i] * vertex[k + 2];
    double nz = vertex[i] * vertex[k + 1] - vertex[i + 1] * vertex[k];
    // The plane through the eye and the edge is n · s = 0. A direction in column H is
    // s = (cos H, sin H, t), so it meets the plane at t = -(nx cos H + ny sin H) / nz.
    if (nz == 0) {
      // The edge lies in a column's plane or has no length: its neighbours say it all.
      return nz;
    }
    double c = -nx / nz;
    double s = -ny / nz;
    double from = Math.min(position(vertex, i), position(vertex, k));
    double to = Math.max(position(vertex, i), position(vertex, k));
    double half = columns.count / 2.0;
    if (Math.abs(to - from - half) < 2 * HourColumns.NEAR) {
      vertex[i + 3] = columns.position(vertex[i], vertex[i + 1]);
      vertex[k + 3] = columns.position(vertex[k], vertex[k + 1]);
      from = Math.min(vertex[i + 3], vertex[k + 3]);
      to = Math.max(vertex[i + 3], vertex[k + 3]);
    }
    // An edge seen from outside a convex body spans less than half a turn.
    if (to - from <= half) {
      sweep(from, to, c, s);
    } else {
      // The short way between the two runs across midnight.
      sweep(to, columns.count, c, s);
      sweep(-1, from, c, s);
    }
    return nz;
  }

  private double position(double[] vertex, int i) {
    if (vertex[i + 3] == UNKNOWN) {
      vertex[i + 3] = columns.between(vertex[i], vertex[i + 1]);
    }
    return vertex[i + 3];
  }

  private void sweep(double from, double to, double c, double s) {
    // A column exactly at a vertex belongs to the edge that begins there.
    int end = Math.min(columns.last, ceil(to) - 1);
    for (int j = Math.max(columns.first, ceil(from)); j <= end; j++) {
      double t = c * columns.cos[j] + s * columns.sin[j];
      if (outlineMark[j] != outline) {
        outlineMark[j] = outline;
        outlineLow[j] = t;
        outlineHigh[j] = t;
        touched[touchedCount++] = j;
      } else if (t < outlineLow[j]) {
        outlineLow[j] = t;
      } else if (t > outlineHigh[j]) {
        outlineHigh[j] = t;
      }
    }
  }

  /** The library's takes as long as the rest of a short sweep. */
  private static int ceil(double position) {
    int cut = (int) position;
    return position > cut ? cut + 1 : cut;
  }

  void endOutline(boolean holdsNorthPole, boolean holdsSouthPole, int obstacle) {
    for (int i = 0; i < touchedCount; i++) {
      int j = touched[i];
      hide(
          j,
          holdsSouthPole ? Double.NEGATIVE_INFINITY : outlineLow[j],
          holdsNorthPole ? Double.POSITIVE_INFINITY : outlineHigh[j],
          obstacle);
    }
  }

  void hideAll(int obstacle) {
    for (int j = columns.first; j <= columns.last; j++) {
      hide(j, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, obstacle);
    }
  }

  /** Hides t from {@code from} to {@code to} in column {@code j}, as far as it is open sky. */
  void hide(int j, double from, double to, int obstacle) {
    double lo = Math.max(from, columns.low[j]);
    double hi = Math.min(to, columns.high[j]);
    int n = count[j];
    int base = j * room;
    if (obstacle != SOLID) {
      // What full shade already covers need not be looked at again.
      for (int i = base; i < base + n && who[i] == SOLID; i++) {
        if (low[i] <= lo && lo < high[i]) {
          lo = high[i];
        }
        if (low[i] < hi && hi <= high[i]) {
          hi = low[i];
        }
      }
    }
    if (!(lo < hi)) {
      return;
    }
    for (int i = n - 1; i >= 0 && who[base + i] == obstacle; i--) {
      if (low[base + i] <= hi && lo <= high[base + i]) {
        lo = Math.min(lo, low[base + i]);
        hi = Math.max(hi, high[base + i]);
        n--;
        low[base + i] = low[base + n];
        high[base + i] = high[base + n];
        // What was grown may now touch one that was passed over.
        i = n;
      }
    }
    if (n == room) {
      widen();
      base = j * room;
    }
    low[base + n] = lo;
    high[base + n] = hi;
    who[base + n] = obstacle;
    count[j] = n + 1;
  }

  private void widen() {
    int wider = 2 * room;
    double[] newLow = new double[columns.count * wider];
    double[] newHigh = new double[columns.count * wider];
    int[] newWho = new int[columns.count * wider];
    for (int j = 0; j < columns.count; j++) {
      System.arraycopy(low, j * room, newLow, j * wider, count[j]);
      System.arraycopy(high, j * room, newHigh, j * wider, count[j]);
      System.arraycopy(who, j * room, newWho, j * wider, count[j]);
    }
    low = newLow;
    high = newHigh;
    who = newWho;
    room = wider;
  }
}
