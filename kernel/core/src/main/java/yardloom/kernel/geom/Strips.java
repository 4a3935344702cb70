package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Fills a region with parallel strips of one width, gaps between them, clipped to the region.
 *
 * <p>Only whole strips are laid: what is left at the far edge is narrower than a strip and stays
 * free. Where a slanting boundary cuts a strip, pieces narrower than {@code least} at their widest
 * are dropped. On a rectangle of breadth B there are ⌊(B + gap) / (width + gap)⌋ strips.
 */
public final class Strips {
  /** More than any garden has; a guard against a width given in the wrong unit. */
  static final int MAX_STRIPS = 5_000;

  private static final double EDGE_M = 1e-6;

  /**
   * How the strips lie.
   *
   * @param width of one strip
   * @param gap between two strips, zero or more
   * @param bearing of their length, clockwise from the plan's up direction
   * @param phase how far the first strip stands off the region's edge; seen along the bearing, the
   *     strips count from left to right
   * @param least the width below which a clipped piece is not worth keeping
   */
  public record Layout(Length width, Length gap, Angle bearing, Length phase, Length least) {
    public Layout {
      if (width.metres() <= 0 || gap.metres() < 0 || phase.metres() < 0 || least.metres() < 0) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "strips need a positive width and no negative gap, got a width of "
                + width
                + " and a gap of "
                + gap);
      }
    }

    /** Strips from the very edge; pieces narrower than half a strip are dropped. */
    public static Layout of(Length width, Length gap, Angle bearing) {
      return new Layout(width, gap, bearing, Length.ZERO, width.times(0.5));
    }
  }

  private Strips() {}

  /**
   * The strips from left to right as seen along the bearing; a strip that the region cuts comes in
   * pieces, each a shape of its own in one part.
   *
   * @throws PlanException (LIMIT) if there would be more than {@value #MAX_STRIPS} strips
   */
  public static List<Shape> fill(Shape region, Layout layout) {
    if (region.isEmpty()) {
      return List.of();
    }
    // Turned so that the strips run up the page and count to the right.
    AffineTransformation upright =
        AffineTransformation.rotationInstance(layout.bearing().radians());
    AffineTransformation back = AffineTransformation.rotationInstance(-layout.bearing().radians());
    Geometry turned = upright.transform(region.jts());
    Envelope box = turned.getEnvelopeInternal();
    double widthM = layout.width().metres();
    double stepM = widthM + layout.gap().metres();
    double leftM = box.getMinX() + layout.phase().metres();
    int count = count(box.getMaxX() - leftM, widthM, stepM);
    List<Shape> strips = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      double x = leftM + k * stepM;
      Geometry slab = slab(x, x + widthM, box);
      for (Shape piece : Shape.of(Overlay.intersection(turned, slab)).parts()) {
        if (isWideEnough(piece, layout.least())) {
          strips.add(Shape.of(back.transform(piece.jts())));
        }
      }
    }
    return List.copyOf(strips);
  }

  /**
   * What lies between two neighbouring strips, with its middle line; the ground to walk on.
   *
   * @param line runs along the bearing
   */
  public record Gap(Shape ground, Line line) {}

  /** The gaps between the strips of {@link #fill}, in the same order; none if the gap is zero. */
  public static List<Gap> gaps(Shape region, Layout layout) {
    if (layout.gap().metres() <= EDGE_M) {
      return List.of();
    }
    Layout between =
        new Layout(
            layout.gap(),
            layout.width(),
            layout.bearing(),
            layout.phase().plus(layout.width()),
            layout.gap().times(0.5));
    AffineTransformation upright =
        AffineTransformation.rotationInstance(layout.bearing().radians());
    AffineTransformation back = AffineTransformation.rotationInstance(-layout.bearing().radians());
    double lastM = upright.transform(region.jts()).getEnvelopeInternal().getMaxX();
    List<Gap> gaps = new ArrayList<>();
    for (Shape ground : fill(region, between)) {
      Envelope box = upright.transform(ground.jts()).getEnvelopeInternal();
      // A gap beyond the last whole strip leads nowhere.
      if (box.getMaxX() + layout.width().metres() <= lastM + EDGE_M) {
        double x = (box.getMinX() + box.getMaxX()) / 2;
        LineString middle =
            Overlay.FACTORY.createLineString(
                new Coordinate[] {
                  new Coordinate(x, box.getMinY()), new Coordinate(x, box.getMaxY())
                });
        gaps.add(new Gap(ground, new Line((LineString) back.transform(middle))));
      }
    }
    return List.copyOf(gaps);
  }

  /**
   * The bearing of the longest straight edge of the region, 0° to below 180°; of equal edges the
   * one with the smallest bearing.
   */
  public static Angle longestEdge(Shape region) {
    double bestM = -1;
    double bestDeg = 0;
    for (Polygon polygon : region.polygons()) {
      Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < ring.length; i++) {
        double lengthM = ring[i].distance(ring[i + 1]);
        double deg = bearingDeg(ring[i], ring[i + 1]);
        if (lengthM > bestM + EDGE_M || (lengthM > bestM - EDGE_M && deg < bestDeg - 1e-9)) {
          bestM = lengthM;
          bestDeg = deg;
        }
      }
    }
    return Angle.degrees(bestDeg);
  }

  static double bearingDeg(Coordinate a, Coordinate b) {
    double deg = Math.toDegrees(StrictMath.atan2(b.x - a.x, b.y - a.y));
    double half = ((deg % 180) + 180) % 180;
    return half > 180 - 1e-9 ? 0 : half;
  }

  private static int count(double breadthM, double widthM, double stepM) {
    double count = Math.floor((breadthM - widthM + EDGE_M) / stepM) + 1;
    if (count > MAX_STRIPS) {
      throw new PlanException(
          ProblemCode.LIMIT,
          "the region would take "
              + (long) count
              + " strips; at most "
              + MAX_STRIPS
              + " are laid. Give a greater width, or a smaller region");
    }
    return Math.max(0, (int) count);
  }

  private static Geometry slab(double fromX, double toX, Envelope box) {
    return Overlay.FACTORY.toGeometry(
        new Envelope(fromX, toX, box.getMinY() - 1, box.getMaxY() + 1));
  }

  /** Whether a disc of diameter {@code least} fits, to a grid step. */
  private static boolean isWideEnough(Shape piece, Length least) {
    if (least.metres() <= EDGE_M) {
      return true;
    }
    return !RoundBuffer.plain(piece.jts(), EDGE_M - least.metres() / 2, 4).isEmpty();
  }
}
