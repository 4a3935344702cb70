package yardloom.kernel.geom;

import java.util.Locale;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/** What an outline must satisfy before its shape is looked at: a place and a size on the plan. */
final class Outlines {
  /** Further out the grid of the overlays, 0.1 µm, is finer than numbers are. */
  static final double FURTHEST_M = 1e8;

  private static final double STRAIGHT_M = 1e-6;

  private Outlines() {}

  static void requireExtent(Polygon ring) {
    for (Coordinate c : ring.getCoordinates()) {
      if (!(Math.abs(c.x) <= FURTHEST_M && Math.abs(c.y) <= FURTHEST_M)) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "the corner "
                + Coordinates.describe(c)
                + " lies more than 100,000 km from the plan's origin; check its unit");
      }
    }
    if (new MinimumDiameter(ring).getLength() <= STRAIGHT_M) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "the outline has no area; its corners lie on one line");
    }
    Envelope box = ring.getEnvelopeInternal();
    // Of a figure of eight the areas of both lobes may cancel; its hull is no less large.
    if (ring.convexHull().getArea() <= Overlay.SLIVER_M2) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          String.format(
              Locale.ROOT,
              "the outline is %s by %s and encloses no more than 1 mm²; check its unit",
              size(box.getWidth()),
              size(box.getHeight())));
    }
  }

  private static String size(double metres) {
    return String.format(Locale.ROOT, "%.3g mm (%.3g in)", metres * 1e3, metres / 0.0254);
  }
}
