package yardloom.kernel.ground;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.triangulate.ConformingDelaunayTriangulationBuilder;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * The ground between measured levels, as plane triangles (a conforming Delaunay triangulation whose
 * edges follow the breaklines).
 *
 * <p>Exact where the ground is plane between the points. Outside the outermost points nothing is
 * known: lookups there are empty, never extrapolated. Two levels at one point must agree to a
 * millimetre.
 *
 * <p>References: the triangulation is that of the geometry library; levels on it are linear.
 */
public final class Surface {
  /** The plan's surface, when it gives levels. */
  public static final AttributeKey<Surface> KEY =
      new AttributeKey<>("kernel.surface", Surface.class);

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double SAME_LEVEL_M = 1e-3;
  private static final double SAME_PLACE_M = 1e-6;

  private final List<Spot> spots;
  private final List<Triangle> triangles;
  private final STRtree index = new STRtree();

  private Surface(List<Spot> spots, List<Triangle> triangles) {
    this.spots = spots;
    this.triangles = triangles;
    for (int i = 0; i < triangles.size(); i++) {
      index.insert(box(triangles.get(i)), i);
    }
    index.build();
  }

  /**
   * The surface through the levels.
   *
   * @param breaklines lines along which the ground bends, each with at least two levels
   * @throws PlanException (MISSING_OPTION) if the points span no area, (CONTRADICTION) if one point
   *     has two levels
   */
  public static Surface of(Collection<Spot> levels, Collection<List<Spot>> breaklines) {
    TreeMap<Point, Spot> known = new TreeMap<>();
    levels.forEach(s -> put(known, s));
    List<LineString> lines = new ArrayList<>();
    for (List<Spot> line : breaklines) {
      line.forEach(s -> put(known, s));
      if (line.size() < 2) {
        throw new PlanException(
            ProblemCode.BAD_SHAPE, "a breakline needs at least two levels, got " + line.size());
      }
      lines.add(
          FACTORY.createLineString(
              line.stream().map(s -> s.at().coordinate()).toArray(Coordinate[]::new)));
    }
    List<Spot> spots = List.copyOf(known.values());
    List<Triangle> triangles = triangulate(spots, lines, breaklines, known);
    if (triangles.isEmpty()) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          "a ground surface needs at least three levels that are not on one line, got "
              + spots.size());
    }
    return new Surface(spots, triangles);
  }

  private static void put(TreeMap<Point, Spot> known, Spot spot) {
    Spot earlier = known.putIfAbsent(spot.at(), spot);
    if (earlier != null && Math.abs(earlier.level().minus(spot.level()).metres()) > SAME_LEVEL_M) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          String.format(
              Locale.ROOT,
              "the point (%s, %s) has two levels, %s and %s; keep the right one, or give the foot"
                  + " and the top of a wall a little apart",
              show(spot.at().x()),
              show(spot.at().y()),
              show(earlier.level()),
              show(spot.level())));
    }
  }

  private static String show(Length value) {
    return String.format(Locale.ROOT, "%.2f m = %.2f ft", value.metres(), value.feet());
  }

  private static List<Triangle> triangulate(
      List<Spot> spots,
      List<LineString> lines,
      Collection<List<Spot>> breaklines,
      TreeMap<Point, Spot> known) {
    if (spots.size() < 3) {
      return List.of();
    }
    ConformingDelaunayTriangulationBuilder builder = new ConformingDelaunayTriangulationBuilder();
    builder.setSites(
        FACTORY.createMultiPointFromCoords(
            spots.stream().map(s -> s.at().coordinate()).toArray(Coordinate[]::new)));
    builder.setConstraints(FACTORY.buildGeometry(lines));
    builder.setTolerance(0);
    Geometry found = builder.getTriangles(FACTORY);
    List<Triangle> triangles = new ArrayList<>();
    for (int i = 0; i < found.getNumGeometries(); i++) {
      Coordinate[] c = found.getGeometryN(i).getCoordinates();
      if (found.getGeometryN(i).getArea() > SAME_PLACE_M * SAME_PLACE_M) {
        triangles.add(
            new Triangle(
                spot(c[0], breaklines, known),
                spot(c[1], breaklines, known),
                spot(c[2], breaklines, known)));
      }
    }
    triangles.sort(
        Comparator.comparing((Triangle t) -> t.a().at())
            .thenComparing(t -> t.b().at())
            .thenComparing(t -> t.c().at()));
    return List.copyOf(triangles);
  }

  /** The level of a corner: measured, or on a breakline that the triangulation had to divide. */
  private static Spot spot(
      Coordinate c, Collection<List<Spot>> breaklines, TreeMap<Point, Spot> known) {
    Point at = Point.metres(c.x, c.y);
    Spot measured = known.get(at);
    if (measured != null) {
      return measured;
    }
    for (List<Spot> line : breaklines) {
      for (int i = 0; i + 1 < line.size(); i++) {
        Spot a = line.get(i);
        Spot b = line.get(i + 1);
        double ab = a.at().distance(b.at()).metres();
        double am = a.at().distance(at).metres();
        if (am + at.distance(b.at()).metres() - ab < SAME_PLACE_M) {
          return new Spot(at, a.level().plus(b.level().minus(a.level()).times(am / ab)));
        }
      }
    }
    throw new PlanException(
        ProblemCode.INTERNAL, "the ground surface has a corner without level at " + at);
  }

  private static Envelope box(Triangle t) {
    Envelope box = new Envelope(t.a().at().coordinate(), t.b().at().coordinate());
    box.expandToInclude(t.c().at().coordinate());
    return box;
  }

  /** The measured levels, by place. */
  public List<Spot> spots() {
    return spots;
  }

  List<Triangle> triangles() {
    return triangles;
  }

  /** The level at a point; empty outside the measured points. */
  public Optional<Length> levelAt(Point p) {
    return at(p).map(t -> Length.metres(t.levelAtM(p)));
  }

  /** The slope at a point; empty outside the measured points. */
  public Optional<Slope> slopeAt(Point p) {
    return at(p).map(Triangle::slope);
  }

  /**
   * The level at a point, for scripts.
   *
   * @throws PlanException (OUT_OF_RANGE) outside the measured points
   */
  public Length level(Point p) {
    return levelAt(p).orElseThrow(Surface::unknown);
  }

  /**
   * The bearing of the contour through a point, for beds that follow it.
   *
   * @throws PlanException (OUT_OF_RANGE) outside the measured points
   */
  public Angle contourBearing(Point p) {
    return slopeAt(p).orElseThrow(Surface::unknown).contourBearing();
  }

  /**
   * The longest line of the contour at a level, for a swale along it.
   *
   * @throws PlanException (OUT_OF_RANGE) if the ground does not cross the level
   */
  public Line contour(Length level) {
    return Contours.of(this, Length.metres(1), level).stream()
        .filter(c -> c.level().equals(level))
        .flatMap(c -> c.lines().stream())
        .max(Comparator.comparing(Line::length))
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.OUT_OF_RANGE,
                    "the measured ground lies between "
                        + lowest()
                        + " and "
                        + highest()
                        + "; it has no contour at "
                        + level));
  }

  private static PlanException unknown() {
    return new PlanException(
        ProblemCode.OUT_OF_RANGE,
        "the point lies outside the measured levels; measure a level beyond it");
  }

  private Optional<Triangle> at(Point p) {
    List<Integer> near = new ArrayList<>();
    Envelope box = new Envelope(p.coordinate());
    box.expandBy(SAME_PLACE_M);
    for (Object i : index.query(box)) {
      near.add((Integer) i);
    }
    Collections.sort(near);
    for (int i : near) {
      if (contains(triangles.get(i), p)) {
        return Optional.of(triangles.get(i));
      }
    }
    return Optional.empty();
  }

  private static boolean contains(Triangle t, Point p) {
    double s1 = side(t.a().at(), t.b().at(), p);
    double s2 = side(t.b().at(), t.c().at(), p);
    double s3 = side(t.c().at(), t.a().at(), p);
    return (s1 >= -SAME_PLACE_M && s2 >= -SAME_PLACE_M && s3 >= -SAME_PLACE_M)
        || (s1 <= SAME_PLACE_M && s2 <= SAME_PLACE_M && s3 <= SAME_PLACE_M);
  }

  /** Signed distance of p from the line a–b. */
  private static double side(Point a, Point b, Point p) {
    double dx = b.x().minus(a.x()).metres();
    double dy = b.y().minus(a.y()).metres();
    double cross = dx * p.y().minus(a.y()).metres() - dy * p.x().minus(a.x()).metres();
    return cross / Math.hypot(dx, dy);
  }

  /** The ground that is known. */
  public Shape extent() {
    return Shape.union(triangles.stream().map(Triangle::shape).toList());
  }

  public Length lowest() {
    return spots.stream().map(Spot::level).min(Comparator.naturalOrder()).orElseThrow();
  }

  public Length highest() {
    return spots.stream().map(Spot::level).max(Comparator.naturalOrder()).orElseThrow();
  }
}
