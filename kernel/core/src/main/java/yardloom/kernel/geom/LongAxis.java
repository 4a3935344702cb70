package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * A shape seen along its own long side: the direction in which rows of plants and dripline run.
 *
 * <p>{@code along} and {@code across} are measured from one corner of the smallest rectangle around
 * the shape; {@code along} follows its longer side and points right (or straight up), {@code
 * across} points to the left of that. When both sides are equally long, the one closer to the
 * plan's right counts as the longer. An empty shape has no long axis.
 */
public final class LongAxis {
  private static final double SAME_M = 1e-9;

  private final Shape shape;
  private final Coordinate corner;
  private final double rightM;
  private final double upM;
  private final double lengthM;
  private final double widthM;

  private LongAxis(Shape shape, Coordinate from, Coordinate to) {
    this.shape = shape;
    double side = from.distance(to);
    boolean forward = to.x > from.x + SAME_M || Math.abs(to.x - from.x) <= SAME_M && to.y > from.y;
    double sign = forward ? 1 : -1;
    rightM = sign * (to.x - from.x) / side;
    upM = sign * (to.y - from.y) / side;
    double minAlong = Double.POSITIVE_INFINITY;
    double maxAlong = Double.NEGATIVE_INFINITY;
    double minAcross = Double.POSITIVE_INFINITY;
    double maxAcross = Double.NEGATIVE_INFINITY;
    for (Coordinate c : shape.jts().getCoordinates()) {
      double along = c.x * rightM + c.y * upM;
      double across = c.y * rightM - c.x * upM;
      minAlong = Math.min(minAlong, along);
      maxAlong = Math.max(maxAlong, along);
      minAcross = Math.min(minAcross, across);
      maxAcross = Math.max(maxAcross, across);
    }
    lengthM = maxAlong - minAlong;
    widthM = maxAcross - minAcross;
    corner =
        new Coordinate(minAlong * rightM - minAcross * upM, minAlong * upM + minAcross * rightM);
  }

  /**
   * The long axis of {@code shape}.
   *
   * @throws IllegalStateException if the shape is empty
   */
  public static LongAxis of(Shape shape) {
    if (shape.isEmpty()) {
      throw new IllegalStateException("an empty shape has no long axis");
    }
    Coordinate[] box = MinimumAreaRectangle.getMinimumRectangle(shape.jts()).getCoordinates();
    double first = box[0].distance(box[1]);
    double second = box[1].distance(box[2]);
    boolean firstIsFlatter = Math.abs(box[1].y - box[0].y) <= Math.abs(box[2].y - box[1].y);
    boolean useFirst = Math.abs(first - second) <= SAME_M ? firstIsFlatter : first > second;
    return useFirst ? new LongAxis(shape, box[0], box[1]) : new LongAxis(shape, box[1], box[2]);
  }

  /**
   * The shape seen along a bearing instead of its own long side, for rows that follow a contour.
   *
   * @throws IllegalStateException if the shape is empty
   */
  public static LongAxis along(Shape shape, Angle bearing) {
    if (shape.isEmpty()) {
      throw new IllegalStateException("an empty shape has no axis");
    }
    double east = StrictMath.sin(bearing.radians());
    double north = StrictMath.cos(bearing.radians());
    return new LongAxis(shape, new Coordinate(0, 0), new Coordinate(east, north));
  }

  /** The bearing in which {@code along} grows. */
  public Angle bearing() {
    return Angle.radians(StrictMath.atan2(rightM, upM));
  }

  public Length length() {
    return Length.metres(lengthM);
  }

  public Length width() {
    return Length.metres(widthM);
  }

  /** The plan point at these distances from the corner. */
  public Point at(Length along, Length across) {
    double a = along.metres();
    double b = across.metres();
    return Point.metres(corner.x + a * rightM - b * upM, corner.y + a * upM + b * rightM);
  }

  /** The pieces of the shape on the straight line {@code across} away from the long side. */
  public List<Line> row(Length across) {
    Line whole =
        Line.between(at(Length.metres(-1), across), at(Length.metres(lengthM + 1), across));
    Geometry inside = Overlay.lineInside(shape.jts(), whole.jts());
    Coordinate start = whole.jts().getCoordinateN(0);
    List<LineString> pieces = new ArrayList<>();
    for (int i = 0; i < inside.getNumGeometries(); i++) {
      if (inside.getGeometryN(i) instanceof LineString piece && piece.getLength() > 1e-6) {
        boolean turned =
            start.distance(piece.getCoordinateN(0))
                > start.distance(piece.getCoordinateN(piece.getNumPoints() - 1));
        pieces.add(turned ? piece.reverse() : piece);
      }
    }
    pieces.sort(Comparator.comparingDouble(p -> start.distance(p.getCoordinateN(0))));
    return pieces.stream().map(Line::new).toList();
  }

  /** The part of the shape between two cuts at right angles to the long side. */
  public Shape slice(Length from, Length to) {
    Length under = Length.metres(-1);
    Length over = Length.metres(widthM + 1);
    return shape.and(
        Shape.polygon(List.of(at(from, under), at(to, under), at(to, over), at(from, over))));
  }
}
