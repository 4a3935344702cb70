package yardloom.water.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.DistanceOp;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/**
 * The ground of a yard as a trench for pipe sees it: never under buildings, through beds or off the
 * lot; best along the edges of paths and beds, dearer across open ground, dearest under paving and
 * through the roots of trees that stand.
 */
public final class LineGround {
  /** A trench keeps off walls (common practice). */
  private static final Length OFF_WALLS = Length.inches(6);

  /** Beds that share an edge with a path leave room for a trench on that edge. */
  private static final Length EDGE = Length.millimetres(20);

  /** Cost of a metre across open ground, for one along an edge (common practice). */
  private static final double OPEN = 1.3;

  /** Added for each metre under paving (common practice). */
  private static final double PAVED = 3;

  /** Added for each metre under the crown of a standing tree (common practice). */
  private static final double ROOTS = 2;

  /**
   * Added for each metre under a tank or through a basin: a full tank stands on ground that nobody
   * dug, and a hollow is dug where the pipe would lie.
   */
  private static final double KEPT = 10;

  private final Optional<Shape> lot;
  private final PreparedGeometry inLot;
  private final STRtree barriers = new STRtree();
  private final STRtree edges = new STRtree();
  private final List<Shape> paved = new ArrayList<>();
  private final List<Shape> crowns = new ArrayList<>();
  private final List<Shape> kept = new ArrayList<>();
  private final List<Shape> margins = new ArrayList<>();
  private final List<Point> corners = new ArrayList<>();

  private LineGround(Optional<Shape> lot) {
    this.lot = lot;
    inLot = PreparedGeometryFactory.prepare(lot.orElse(Shape.EMPTY).jts());
  }

  /**
   * The ground of a plan.
   *
   * @param around what tanks stand on and the hollows of basins; a trench goes around their corners
   *     rather than through them
   */
  static LineGround of(Plan plan, List<Shape> around) {
    LineGround ground = new LineGround(plan.lot().map(l -> l.shape().grown(EDGE)));
    for (Element e : plan.elements()) {
      ground.add(e);
    }
    for (Shape foot : around) {
      ground.kept.add(foot.shrunk(EDGE));
      ground.edge(
          Shape.rectangle(
              Point.metres(foot.bounds().getMinX(), foot.bounds().getMinY()),
              foot.width(),
              foot.depth()));
    }
    ground.barriers.build();
    ground.edges.build();
    return ground;
  }

  private void add(Element e) {
    if (e instanceof Element.Building || e instanceof Element.Structure) {
      Shape off = e.shape().grown(OFF_WALLS);
      barrier(e.shape().grown(OFF_WALLS.minus(EDGE)));
      edge(off);
      margins.add(off);
    } else if (e instanceof Element.Bed) {
      barrier(e.shape().shrunk(EDGE));
      edge(e.shape());
    } else if (e instanceof Element.Path) {
      edge(e.shape());
    } else if (e instanceof Element.Paving) {
      paved.add(e.shape());
      edge(e.shape());
    } else if (e instanceof Element.Tree tree) {
      barrier(Shape.circle(tree.at(), tree.trunk().max(OFF_WALLS)));
      if (tree.stands()) {
        crowns.add(tree.shape());
      }
    }
  }

  private void barrier(Shape shape) {
    if (!shape.isEmpty()) {
      barriers.insert(shape.bounds(), PreparedGeometryFactory.prepare(shape.jts()));
    }
  }

  private void edge(Shape shape) {
    if (!shape.isEmpty()) {
      edges.insert(shape.grown(EDGE).bounds(), shape.jts().getBoundary());
      corners.addAll(Corners.of(shape));
    }
  }

  /** Corners of edges on open ground, where a trench may bend. */
  List<Point> bends() {
    return corners.stream().filter(this::isOpen).toList();
  }

  /**
   * Where a trench squarely off the wall leaves its margin on open ground; empty for a point in no
   * margin, and where every way out is barred.
   */
  Optional<Point> offWall(Point point) {
    return margins.stream()
        .filter(m -> m.distance(point).metres() == 0)
        .map(m -> nearestOnEdge(m, point))
        .filter(this::isOpen)
        .min(Comparator.comparing(p -> p.distance(point)));
  }

  private static Point nearestOnEdge(Shape shape, Point point) {
    Coordinate at =
        DistanceOp.nearestPoints(
            shape.jts().getBoundary(), shape.jts().getFactory().createPoint(point.coordinate()))[0];
    return Point.metres(at.x, at.y);
  }

  private boolean isOpen(Point point) {
    return isWithinLot(point)
        && !isBarred(point.moved(Length.millimetres(1), Length.ZERO).to(point));
  }

  private boolean isWithinLot(Point point) {
    return lot.map(l -> l.distance(point).metres() == 0).orElse(true);
  }

  /** Whether a trench may lie there. */
  boolean isAllowed(Line line) {
    // Barriers are near and prepared, the lot is whole: they tell sooner.
    return !isBarred(line)
        && line.points().stream().allMatch(this::isWithinLot)
        && (lot.isEmpty() || inLot.covers(line.jts()));
  }

  @SuppressWarnings("unchecked")
  private boolean isBarred(Line line) {
    List<PreparedGeometry> near = barriers.query(line.jts().getEnvelopeInternal());
    return near.stream().anyMatch(b -> b.intersects(line.jts()));
  }

  /** What a trench costs, in metres along an edge. */
  double cost(Line line) {
    double lengthM = line.length().metres();
    double crownM = crowns.stream().mapToDouble(c -> insideM(line, c)).sum();
    double keptM = kept.stream().mapToDouble(t -> insideM(line, t)).sum();
    return lengthM * (isAlongEdge(line) ? 1 : OPEN)
        + PAVED * pavedM(line)
        + ROOTS * crownM
        + KEPT * keptM;
  }

  /** How much of a line lies under paving. */
  public Length underPaving(Line line) {
    return Length.metres(pavedM(line));
  }

  /** The pieces of a line under paving. */
  public List<Line> piecesUnderPaving(Line line) {
    List<Line> pieces = new ArrayList<>();
    for (Shape shape : paved) {
      Geometry under = line.jts().intersection(shape.jts());
      for (int i = 0; i < under.getNumGeometries(); i++) {
        Coordinate[] c = under.getGeometryN(i).getCoordinates();
        if (c.length > 1) {
          pieces.add(Line.through(Arrays.stream(c).map(at -> Point.metres(at.x, at.y)).toList()));
        }
      }
    }
    return pieces;
  }

  private double pavedM(Line line) {
    return paved.stream().mapToDouble(p -> insideM(line, p)).sum();
  }

  private static double insideM(Line line, Shape shape) {
    return shape.bounds().intersects(line.jts().getEnvelopeInternal())
        ? line.jts().intersection(shape.jts()).getLength()
        : 0;
  }

  @SuppressWarnings("unchecked")
  private boolean isAlongEdge(Line line) {
    List<Geometry> near = edges.query(line.jts().getEnvelopeInternal());
    Length length = line.length();
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      Coordinate at = line.at(length.times(share)).coordinate();
      Geometry point = line.jts().getFactory().createPoint(at);
      if (near.stream().noneMatch(e -> e.distance(point) <= EDGE.metres())) {
        return false;
      }
    }
    return true;
  }
}
