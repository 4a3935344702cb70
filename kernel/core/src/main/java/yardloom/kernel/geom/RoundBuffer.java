package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * All within a distance of a geometry, or with a negative distance what of an area lies further
 * inside; corners are rounded by chords that lie no more than a stated sagitta inside the arc.
 *
 * <p>{@code BufferOp} alone does not keep to a sagitta. It fills a corner with the rounded number
 * of chords, so that one may span one and a half steps; hence the finer step here. And where the
 * offsets of two edges end nearer than {@value #UNFILLED} of the distance it drops one of the two
 * ends, and with it a sliver of ground along the whole edge; hence the patches. Nothing is added
 * that lies beyond the distance.
 */
final class RoundBuffer {
  /** The share of the distance below which a corner is not filled, as of JTS 1.20. */
  private static final double UNFILLED = 0.05;

  private static final double MOST_SPAN = 1.5;

  /** A patch turns no further than this, so that its outline cannot cross itself. */
  private static final double MOST_TURN = 1;

  private final double distanceM;
  private final Length sagitta;
  private final List<Geometry> patches = new ArrayList<>();

  private RoundBuffer(double distanceM, Length sagitta) {
    this.distanceM = Math.abs(distanceM);
    this.sagitta = sagitta;
  }

  /** With at least {@code least} chords to the quarter turn, and as many as the sagitta takes. */
  static Geometry of(Geometry g, double distanceM, int least, Length sagitta) {
    RoundBuffer buffer = new RoundBuffer(distanceM, sagitta);
    Geometry plain = plain(g, distanceM, Math.max(least, buffer.chords()));
    buffer.patch(g, distanceM < 0);
    if (buffer.patches.isEmpty()) {
      return plain;
    }
    if (distanceM < 0) {
      return Overlay.difference(plain, Overlay.unionAll(buffer.patches));
    }
    buffer.patches.add(plain);
    return Overlay.unionAll(buffer.patches);
  }

  /** What lies around a line in overlapping pieces, for those who unite more of them. */
  static List<Geometry> pieces(LineString line, double distanceM, Length sagitta) {
    RoundBuffer buffer = new RoundBuffer(distanceM, sagitta);
    buffer.patches.add(plain(line, distanceM, buffer.chords()));
    buffer.patch(line, false);
    return buffer.patches;
  }

  private int chords() {
    Angle quarter = Angle.radians(MOST_SPAN * Math.PI / 2);
    return Math.max(2, Arc.chordCount(Length.metres(distanceM), quarter, sagitta));
  }

  /** What {@code BufferOp} makes of it, its simplification of the outline switched off. */
  static Geometry plain(Geometry g, double distanceM, int chordsPerQuarter) {
    BufferParameters parameters = new BufferParameters(chordsPerQuarter);
    // The default simplification moves edges by up to 1 % of the distance.
    parameters.setSimplifyFactor(0);
    return Overlay.polygonal(BufferOp.bufferOp(g, distanceM, parameters));
  }

  private void patch(Geometry g, boolean inwards) {
    if (distanceM * (1 - Math.cos(UNFILLED)) <= sagitta.metres()) {
      return;
    }
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon polygon) {
        for (LinearRing ring : Inset.rings(polygon)) {
          boolean hole = ring != polygon.getExteriorRing();
          boolean areaOnLeft = Orientation.isCCW(ring.getCoordinates()) != hole;
          patchSide(ring, areaOnLeft == inwards ? 1 : -1);
        }
      } else if (g.getGeometryN(i) instanceof LineString line) {
        patchSide(line, 1);
        patchSide(line, -1);
      }
    }
  }

  /**
   * Patches the unfilled bends that open to one side of a line, neighbouring bends together.
   *
   * @param side 1 for its left, -1 for its right
   */
  private void patchSide(LineString line, int side) {
    CoordinateList c = new CoordinateList(line.getCoordinates(), false);
    boolean closed = line.isClosed();
    if (c.size() < 3) {
      return;
    }
    if (closed) {
      c.add(c.getCoordinate(1).copy());
    }
    double[] turns = new double[c.size() - 2];
    for (int i = 0; i < turns.length; i++) {
      turns[i] = -side * turn(c.getCoordinate(i), c.getCoordinate(i + 1), c.getCoordinate(i + 2));
    }
    int first = -1;
    double turned = 0;
    for (int i = 0; i <= turns.length; i++) {
      boolean patched = i < turns.length && isPatched(turns, i, closed);
      if (first >= 0 && (!patched || turned + turns[i] > MOST_TURN)) {
        patches.add(strip(c.subList(first, i + 2), side));
        first = -1;
        turned = 0;
      }
      if (patched) {
        first = first < 0 ? i : first;
        turned += turns[i];
      }
    }
  }

  /** Whether what is missing at this bend, alone or with the bend before or after, would show. */
  private boolean isPatched(double[] turns, int i, boolean closed) {
    if (!isUnfilled(turns[i])) {
      return false;
    }
    int n = turns.length;
    return shows(turns[i])
        || ((closed || i > 0) && shows(turns[(i + n - 1) % n]))
        || ((closed || i + 1 < n) && shows(turns[(i + 1) % n]));
  }

  private static boolean isUnfilled(double turn) {
    return turn > 0 && 2 * Math.sin(turn / 2) < UNFILLED * (1 + 1e-9);
  }

  /**
   * The chord past one unfilled bend lies d (1 - cos t) inside, and so does the chord past two that
   * turn by t each; next to a sharper bend it lies further inside, so that both are patched.
   */
  private boolean shows(double turn) {
    return isUnfilled(turn) && distanceM * (1 - Math.cos(turn)) > sagitta.metres();
  }

  private static double turn(Coordinate before, Coordinate at, Coordinate after) {
    double ax = at.x - before.x;
    double ay = at.y - before.y;
    double bx = after.x - at.x;
    double by = after.y - at.y;
    return StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  /** The ground between a gently bent line and its parallel on the outer side of the bends. */
  private Geometry strip(List<Coordinate> c, int side) {
    double by = side * distanceM;
    CoordinateList outline = new CoordinateList();
    c.forEach(at -> outline.add(at.copy(), false));
    for (int i = c.size() - 1; i > 0; i--) {
      Coordinate from = c.get(i - 1);
      outline.add(Quads.left(c.get(i), from, c.get(i), by), false);
      Coordinate end = Quads.left(from, from, c.get(i), by);
      outline.add(end, false);
      if (i > 1) {
        // The middle of the arc between the parallels of two edges quarters its sagitta.
        Coordinate next = Quads.left(from, c.get(i - 2), from, by);
        double x = end.x + next.x - 2 * from.x;
        double y = end.y + next.y - 2 * from.y;
        double scale = distanceM / Math.hypot(x, y);
        outline.add(new Coordinate(from.x + x * scale, from.y + y * scale), false);
      }
    }
    outline.closeRing();
    return Overlay.FACTORY.createPolygon(outline.toCoordinateArray());
  }
}
