package yardloom.program.sitefile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * An outline read from well-known text: one POLYGON in a flat local system, x to the right and y up
 * the plan. Holes are kept; a lot refuses them.
 *
 * <p>Errors: PlanException (SYNTAX, BAD_SHAPE, OUT_OF_RANGE) without a place.
 *
 * <p>References: OGC 06-103r4, Simple Feature Access, Part 1, Open Geospatial Consortium, 2011,
 * section 7.2.
 */
public final class WktOutline {
  private static final double REACH_M = 10_000;

  private WktOutline() {}

  /** The shape of {@code text}, one step of which is {@code unit} long. */
  public static Shape read(String text, Length unit) {
    String bare = text.strip();
    // Looked at first: the reader descends without limit into collections of collections.
    if (!bare.toUpperCase(Locale.ROOT).startsWith("POLYGON")) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "well-known text of an outline starts with POLYGON, as in POLYGON ((0 0, 20 0, 20 30, 0"
              + " 0)); got '"
              + (bare.length() <= 20 ? bare : bare.substring(0, 20) + "…")
              + "'");
    }
    Geometry read;
    try {
      read = new WKTReader().read(bare);
    } catch (ParseException | IllegalArgumentException e) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          "the well-known text cannot be read: a ring has four or more corners \"x y\" with commas"
              + " between, the last like the first, and two brackets on either side");
    }
    requireFinite(read, unit);
    if (!(read instanceof Polygon polygon) || read.isEmpty()) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "the polygon of the well-known text is empty; give it corners");
    }
    Shape shape = ring(polygon.getExteriorRing(), unit);
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      shape = shape.minus(ring(polygon.getInteriorRingN(i), unit));
    }
    return shape;
  }

  private static Shape ring(LinearRing ring, Length unit) {
    List<Point> closed =
        Arrays.stream(ring.getCoordinates())
            .map(c -> new Point(unit.times(c.x), unit.times(c.y)))
            .toList();
    return Shape.polygon(closed.subList(0, closed.size() - 1));
  }

  private static void requireFinite(Geometry read, Length unit) {
    for (Coordinate c : read.getCoordinates()) {
      if (!(Math.max(Math.abs(c.x), Math.abs(c.y)) * unit.metres() <= REACH_M)) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "the corner "
                + c.x
                + " "
                + c.y
                + " lies more than 10 km from the plan's origin; subtract the corner that is to be the"
                + " origin from all corners");
      }
    }
  }
}
