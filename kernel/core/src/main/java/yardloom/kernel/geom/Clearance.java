package yardloom.kernel.geom;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import yardloom.kernel.unit.Length;

/**
 * How far points lie inside one shape; prepared once, asked for many points.
 *
 * <p>Unlike a shrunk shape, whose corners are chords, this is exact along the whole boundary.
 */
public final class Clearance {
  private final IndexedPointInAreaLocator locator;
  private final IndexedFacetDistance distance;

  private Clearance(Shape shape) {
    locator = new IndexedPointInAreaLocator(shape.jts());
    distance = new IndexedFacetDistance(shape.jts().getBoundary());
  }

  /**
   * Prepares {@code shape}.
   *
   * @throws IllegalStateException if the shape is empty
   */
  public static Clearance within(Shape shape) {
    if (shape.isEmpty()) {
      throw new IllegalStateException("an empty shape has no inside");
    }
    return new Clearance(shape);
  }

  /** The distance to the nearest boundary; negative outside. */
  public Length of(Point point) {
    Coordinate c = point.coordinate();
    double away = distance.distance(Overlay.FACTORY.createPoint(c));
    return Length.metres(locator.locate(c) == Location.EXTERIOR ? -away : away);
  }
}
