package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.distance.DistanceOp;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** A polyline of at least two different points, in drawing order. Immutable. */
public final class Line {
  private static final double END_M = 1e-6;

  private final LineString string;

  Line(LineString string) {
    this.string = string;
  }

  /**
   * The polyline through {@code points}; repeated neighbours are merged.
   *
   * @throws PlanException (BAD_SHAPE) if fewer than two different points remain
   */
  public static Line through(List<Point> points) {
    List<Coordinate> kept = new ArrayList<>();
    for (Point p : points) {
      Coordinate c = p.coordinate();
      if (kept.isEmpty() || !kept.get(kept.size() - 1).equals2D(c)) {
        kept.add(c);
      }
    }
    if (kept.size() < 2) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "a line needs at least two different points, got " + kept.size());
    }
    return new Line(Overlay.FACTORY.createLineString(kept.toArray(new Coordinate[0])));
  }

  public static Line between(Point from, Point to) {
    return through(List.of(from, to));
  }

  public Length length() {
    return Length.metres(string.getLength());
  }

  public List<Point> points() {
    List<Point> points = new ArrayList<>();
    for (Coordinate c : string.getCoordinates()) {
      points.add(Point.of(c));
    }
    return List.copyOf(points);
  }

  public Point start() {
    return Point.of(string.getCoordinateN(0));
  }

  public Point end() {
    return Point.of(string.getCoordinateN(string.getNumPoints() - 1));
  }

  public boolean isClosed() {
    return string.isClosed();
  }

  /**
   * The piece between two distances from the start, measured along the line.
   *
   * @throws PlanException (OUT_OF_RANGE) unless {@code 0 <= from < to <= length}
   */
  public Line part(Length from, Length to) {
    if (from.metres() < 0 || to.compareTo(from) <= 0 || to.metres() > string.getLength() + END_M) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the piece from "
              + from
              + " to "
              + to
              + " does not lie on a line of "
              + string.getLength()
              + " m");
    }
    return new Line(
        (LineString) new LengthIndexedLine(string).extractLine(from.metres(), to.metres()));
  }

  /** The point {@code distance} from the start, measured along the line. */
  public Point at(Length distance) {
    if (distance.metres() < 0 || distance.metres() > string.getLength() + END_M) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          distance + " does not lie on a line of " + string.getLength() + " m");
    }
    return Point.of(new LengthIndexedLine(string).extractPoint(distance.metres()));
  }

  /** How far from the start, measured along the line, it comes nearest to {@code to}. */
  public Length along(Point to) {
    return Length.metres(new LengthIndexedLine(string).project(to.coordinate()));
  }

  /** The point halfway along the line. */
  public Point middle() {
    return at(length().div(2));
  }

  /** The ground of this line with a width. */
  public Shape strip(Length width) {
    return PathStrip.centred(this, width);
  }

  /**
   * The ground along its left side, from {@code gap} off the line to {@code depth} further.
   *
   * @throws PlanException (OUT_OF_RANGE) if the gap is negative or the depth not positive
   */
  public Shape strip(Length gap, Length depth) {
    return PathStrip.leftOf(this, gap, depth);
  }

  /** The point of this line nearest to {@code to}. */
  public Point nearest(Point to) {
    return Point.of(
        DistanceOp.nearestPoints(string, Overlay.FACTORY.createPoint(to.coordinate()))[0]);
  }

  /** The pieces of this line that lie outside an area; none if all of it lies inside. */
  public List<Line> outside(Shape area) {
    Geometry outside = Overlay.linesOutside(string, area.jts());
    List<Line> pieces = new ArrayList<>();
    for (int i = 0; i < outside.getNumGeometries() && !outside.isEmpty(); i++) {
      pieces.add(new Line((LineString) outside.getGeometryN(i)));
    }
    return pieces;
  }

  /** Mirrored in the straight line through two points; what lay on its left lies on its right. */
  public Line mirrored(Point from, Point to) {
    return mapped(p -> p.mirrored(from, to));
  }

  public Line moved(Length right, Length up) {
    return mapped(p -> p.moved(right, up));
  }

  /** Turned counter-clockwise about {@code centre}. */
  public Line turned(Angle by, Point centre) {
    return mapped(p -> p.turned(by, centre));
  }

  private Line mapped(java.util.function.UnaryOperator<Point> change) {
    return through(points().stream().map(change).toList());
  }

  /** The same line, drawn the other way. */
  public Line reversed() {
    return new Line(string.reverse());
  }

  /** The JTS form, for reading only. */
  public LineString jts() {
    return string;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Line line && line.string.equalsExact(string);
  }

  @Override
  public int hashCode() {
    return string.hashCode();
  }

  @Override
  public String toString() {
    return string.toText();
  }
}
