package yardloom.scripts.site;

import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * The corners of one polygon in GeoJSON text, in the order of the text: a Polygon, a Feature of
 * one, or a collection with one.
 *
 * <p>References: [1] RFC 7946, The GeoJSON Format, sections 3.1.6 and 4.
 */
public final class GeoJsonOutline {
  private GeoJsonOutline() {}

  /**
   * The corners in order, without repeating the first.
   *
   * @throws PlanException (SYNTAX) if the text is no such GeoJSON, (BAD_SHAPE) if the ring is open,
   *     has holes or too few positions
   */
  public static List<Point> read(String text, LocalPlane plane) {
    GeoJsonPolygon polygon = GeoJsonPolygon.read(text);
    if (polygon.rings().size() != 1) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "the polygon must be one ring without holes, it has "
              + polygon.rings().size()
              + " rings; take the holes out");
    }
    return polygon.corners(0, plane);
  }
}
