package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.relateng.RelateNG;
import org.locationtech.jts.operation.relateng.RelatePredicate;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * A region of the plane: nothing, one polygon, or several, holes allowed. Immutable and always
 * valid.
 *
 * <p>Set operations accept any shapes, also empty ones, and never fail on valid input. Curved
 * boundaries are chords: a circle within {@link Arc#SAGITTA} and of its true area, the corners of a
 * grown shape within {@link #GROWN_WITHIN}.
 */
public final class Shape {
  /** No area at all. */
  public static final Shape EMPTY = new Shape(Overlay.FACTORY.createPolygon());

  /** Chords to the quarter turn at least, for the eye. */
  static final int ARC_CHORDS = 24;

  /** How far the chords of a grown shape's corners may lie inside the true arc. */
  static final Length GROWN_WITHIN = Length.millimetres(1);

  private final Geometry geometry;

  /** Asked for by many and dear to find; found once, and the same whichever thread finds it. */
  private Point heart;

  Shape(Geometry geometry) {
    this.geometry = geometry;
  }

  /** A shape from any JTS geometry; its valid polygonal part is kept. */
  public static Shape of(Geometry geometry) {
    return new Shape(Overlay.polygonal(geometry));
  }

  /**
   * The polygon with these corners, in either direction, without repeating the first.
   *
   * @throws PlanException (BAD_SHAPE) if there are fewer than three corners, the outline crosses or
   *     touches itself, or it encloses no more than 1 mm²; (OUT_OF_RANGE) if a corner lies further
   *     out than {@link Outlines#FURTHEST_M}
   */
  public static Shape polygon(List<Point> corners) {
    if (corners.size() < 3) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "an outline needs at least three corners, got " + corners.size());
    }
    Polygon ring = Overlay.ring(corners);
    Outlines.requireExtent(ring);
    TopologyValidationError error = new IsValidOp(ring).getValidationError();
    if (error != null) {
      Coordinate c = error.getCoordinate();
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "the outline crosses or touches itself near "
              + Coordinates.describe(c)
              + "; give the corners in order around the outline");
    }
    return of(ring);
  }

  /** An upright rectangle; {@code corner} is its lower left. */
  public static Shape rectangle(Point corner, Length width, Length depth) {
    if (width.metres() <= 0 || depth.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a rectangle needs a positive width and depth, got " + width + " by " + depth);
    }
    return polygon(
        List.of(
            corner,
            corner.moved(width, Length.ZERO),
            corner.moved(width, depth),
            corner.moved(Length.ZERO, depth)));
  }

  /**
   * A disc as a regular figure of the true circle's area: its corners lie outside the circle by two
   * thirds of {@link Arc#SAGITTA} at most, the middles of its sides inside by one third.
   *
   * <p>A regular figure of n corners on the radius ρ has the area n/2 ρ² sin(2π/n), hence ρ = r
   * √(2π / (n sin(2π/n))).
   */
  public static Shape circle(Point centre, Length radius) {
    if (radius.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a circle needs a positive radius, got " + radius);
    }
    int quarter = Math.max(ARC_CHORDS, Arc.chordCount(radius, Angle.degrees(90), Arc.SAGITTA));
    int corners = 4 * quarter;
    double step = 2 * Math.PI / corners;
    double outM = radius.metres() * Math.sqrt(step / StrictMath.sin(step));
    Coordinate[] ring = new Coordinate[corners + 1];
    for (int i = 0; i < corners; i++) {
      double x = centre.x().metres() + outM * StrictMath.cos(i * step);
      double y = centre.y().metres() + outM * StrictMath.sin(i * step);
      ring[i] = new Coordinate(x, y);
    }
    ring[corners] = ring[0].copy();
    return of(Overlay.FACTORY.createPolygon(ring));
  }

  /** All of {@code shapes} together; overlaps count once. */
  public static Shape union(List<Shape> shapes) {
    return new Shape(Overlay.unionAll(shapes.stream().map(s -> s.geometry).toList()));
  }

  public Area area() {
    return Area.squareMetres(geometry.getArea());
  }

  /** The length of all boundaries, holes included. */
  public Length perimeter() {
    return Length.metres(geometry.getLength());
  }

  /** The length of the boundaries that lie in {@code area} and are not of {@code taken}. */
  public Length perimeterIn(Shape area, Shape taken) {
    return Length.metres(
        Overlay.lineInside(
                area.geometry, Overlay.linesOutside(geometry.getBoundary(), taken.geometry))
            .getLength());
  }

  public boolean isEmpty() {
    return geometry.isEmpty();
  }

  /** The polygons of this shape, from left to right. */
  public List<Polygon> polygons() {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (!geometry.getGeometryN(i).isEmpty()) {
        polygons.add((Polygon) geometry.getGeometryN(i));
      }
    }
    return List.copyOf(polygons);
  }

  /** The connected parts as shapes of their own, from left to right. */
  public List<Shape> parts() {
    return polygons().stream().map(Shape::new).toList();
  }

  /**
   * The corners of the outer boundary, counter-clockwise, without repeating the first.
   *
   * @throws PlanException (BAD_SHAPE) if the shape is empty or in several parts
   */
  public List<Point> corners() {
    List<Polygon> polygons = polygons();
    if (polygons.size() != 1) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "only a shape in one part has one row of corners; this one has "
              + polygons.size()
              + " parts");
    }
    Coordinate[] ring = polygons.get(0).getExteriorRing().getCoordinates();
    List<Point> corners = new ArrayList<>();
    // The normal form of JTS runs clockwise.
    for (int i = ring.length - 1; i > 0; i--) {
      corners.add(Point.of(ring[i]));
    }
    return List.copyOf(corners);
  }

  /** The JTS form, for reading only. */
  public Geometry jts() {
    return geometry;
  }

  public Envelope bounds() {
    return new Envelope(geometry.getEnvelopeInternal());
  }

  /**
   * The point of the shape furthest from its boundary (to 1 cm), where a label fits best.
   *
   * @throws IllegalStateException if the shape is empty
   */
  public Point heart() {
    if (heart == null) {
      requireArea();
      heart = Hearts.of(geometry);
    }
    return heart;
  }

  /** The radius of the largest circle that fits inside, to 1 mm. */
  public Length inside() {
    requireArea();
    return polygons().size() == 1
        ? InnerCircle.radius(polygons().get(0))
        : Length.metres(InnerCircle.searched(geometry));
  }

  public Point centroid() {
    requireArea();
    return Point.of(geometry.getCentroid().getCoordinate());
  }

  /** Whether the point lies inside or on the boundary. */
  public boolean contains(Point point) {
    return !isEmpty()
        && new IndexedPointInAreaLocator(geometry).locate(point.coordinate()) != Location.EXTERIOR;
  }

  /** Whether the point lies inside, or in a hole: within the outer boundary of a part. */
  public boolean surrounds(Point point) {
    return polygons().stream()
        .map(p -> of(Overlay.FACTORY.createPolygon(p.getExteriorRing())))
        .anyMatch(filled -> filled.contains(point));
  }

  /** The same test as {@link #contains}, prepared once for many points. */
  public Predicate<Point> insideTest() {
    if (isEmpty()) {
      return point -> false;
    }
    IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(geometry);
    return point -> locator.locate(point.coordinate()) != Location.EXTERIOR;
  }

  /** Whether nothing of {@code other} above a sliver lies outside this shape. */
  public boolean covers(Shape other) {
    return other.minus(this).isEmpty();
  }

  /** Whether the two share more than a sliver of area. */
  public boolean overlaps(Shape other) {
    return !and(other).isEmpty();
  }

  /** The shortest distance between the two; zero if they touch, or if either is empty. */
  public Length distance(Shape other) {
    return Length.metres(geometry.distance(other.geometry));
  }

  public Length distance(Point point) {
    return Length.metres(geometry.distance(Overlay.FACTORY.createPoint(point.coordinate())));
  }

  /** This shape and the other; the plan language's {@code +} arrives here. */
  public Shape plus(Shape other) {
    return new Shape(Overlay.union(geometry, other.geometry));
  }

  /** This shape without the other; the plan language's {@code -} arrives here. */
  public Shape minus(Shape other) {
    return new Shape(Overlay.difference(geometry, other.geometry));
  }

  /** Whether they share a point, found without working out what they share. */
  boolean meets(Shape other) {
    return geometry.getEnvelopeInternal().intersects(other.geometry.getEnvelopeInternal())
        && RelateNG.relate(geometry, other.geometry, RelatePredicate.intersects());
  }

  /** What both share; the plan language's {@code &} arrives here. */
  public Shape and(Shape other) {
    return new Shape(Overlay.intersection(geometry, other.geometry));
  }

  /**
   * Everything within {@code distance}, corners rounded; a negative distance shrinks.
   *
   * <p>The rounded corners are chords inside the true arc, by up to 1 mm.
   */
  public Shape grown(Length distance) {
    if (distance.metres() < 0) {
      return shrunk(distance.negative());
    }
    return distance.metres() == 0 || isEmpty()
        ? this
        : new Shape(RoundBuffer.of(geometry, distance.metres(), ARC_CHORDS, GROWN_WITHIN));
  }

  /**
   * Everything within {@code distance}, corners kept as corners where they are not sharper than
   * about 60 degrees: fewer bends than {@link #grown}, for ways round things. Above zero, else the
   * shape itself.
   */
  public Shape grownWithCorners(Length distance) {
    return distance.metres() <= 0 || isEmpty()
        ? this
        : new Shape(Overlay.polygonal(Overlay.mitred(geometry, distance.metres())));
  }

  /** The part that is at least {@code distance} from the boundary; may be empty or in parts. */
  public Shape shrunk(Length distance) {
    return distance.metres() <= 0 ? grown(distance.negative()) : union(Inset.of(this, distance));
  }

  public Shape moved(Length right, Length up) {
    return transformed(AffineTransformation.translationInstance(right.metres(), up.metres()));
  }

  /** Turned counter-clockwise about {@code centre}. */
  public Shape turned(Angle by, Point centre) {
    return transformed(
        AffineTransformation.rotationInstance(
            by.radians(), centre.x().metres(), centre.y().metres()));
  }

  /** Mirrored in the straight line through two points. */
  public Shape mirrored(Point from, Point to) {
    return transformed(
        AffineTransformation.reflectionInstance(
            from.x().metres(), from.y().metres(), to.x().metres(), to.y().metres()));
  }

  /**
   * The same with every corner rounded to {@code radius}, outer and inner alike; parts narrower
   * than twice the radius vanish.
   *
   * @throws PlanException (OUT_OF_RANGE) if nothing would be left
   */
  public Shape rounded(Length radius) {
    Length twice = radius.times(2);
    Shape round = shrunk(radius).grown(twice).shrunk(radius);
    if (round.isEmpty()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a corner radius of " + radius + " leaves nothing; the shape is too narrow for it");
    }
    return round;
  }

  /** Its size from left to right. */
  public Length width() {
    return Length.metres(geometry.getEnvelopeInternal().getWidth());
  }

  /** Its size up the plan. */
  public Length depth() {
    return Length.metres(geometry.getEnvelopeInternal().getHeight());
  }

  /** The outer boundary as a closed line, counter-clockwise. */
  public Line outline() {
    List<Point> points = new ArrayList<>(corners());
    points.add(points.get(0));
    return Line.through(points);
  }

  /** The point of this shape nearest to {@code to}; itself if it lies inside. */
  public Point nearest(Point to) {
    requireArea();
    return Point.of(
        DistanceOp.nearestPoints(geometry, Overlay.FACTORY.createPoint(to.coordinate()))[0]);
  }

  public Line north() {
    return side(Sides.Compass.NORTH);
  }

  public Line south() {
    return side(Sides.Compass.SOUTH);
  }

  public Line east() {
    return side(Sides.Compass.EAST);
  }

  public Line west() {
    return side(Sides.Compass.WEST);
  }

  /** The side by the plan's compass, outside on its left. */
  private Line side(Sides.Compass direction) {
    return Sides.facing(this, direction)
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.UNKNOWN_WORD,
                    "the shape has no edge that faces " + direction.word() + " (north is up)"));
  }

  /**
   * The side that faces north, south, east or west, by name.
   *
   * @throws PlanException (UNKNOWN_WORD) if that is no direction, or no edge faces so
   */
  public Line side(String direction) {
    return side(
        Sides.Compass.named(direction)
            .orElseThrow(
                () ->
                    new PlanException(
                        ProblemCode.UNKNOWN_WORD,
                        "a shape has no side '"
                            + direction
                            + "'; it has north, south, east and west")));
  }

  private Shape transformed(AffineTransformation transformation) {
    return of(transformation.transform(geometry));
  }

  private void requireArea() {
    if (isEmpty()) {
      throw new IllegalStateException("an empty shape has no inner point");
    }
  }

  /** Equal vertex by vertex, after normal form. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Shape shape && shape.geometry.equalsExact(geometry);
  }

  @Override
  public int hashCode() {
    return geometry.hashCode();
  }

  @Override
  public String toString() {
    return geometry.toText();
  }
}
