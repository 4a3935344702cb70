package yardloom.site.annotation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * Dimensions of the lot's straight sides, of the buildings' walls, and from buildings to the lot
 * line: what a permit office asks of a site plan.
 */
public final class DimensionPainter implements Painter {
  private static final Length OUTSIDE_LOT = Length.metres(-1.4);
  private static final Length OUTSIDE_WALL = Length.metres(-0.8);

  /** Beyond the measures of the lot, so that a second row of measures can be read beside them. */
  private static final double CHAIN_M = 3;

  private static final double SHORTEST_M = 0.9;
  private static final double SHORTEST_WALL_M = 2;
  private static final int MOST_WALLS = 8;

  /** What a dimension line runs across without harm. */
  private static final Set<ElementKind> LINES_PASS =
      EnumSet.of(
          ElementKind.BUILDING, ElementKind.ROOF, ElementKind.FENCE, ElementKind.MULCHED_GROUND);

  /** What it may run across, though free ground is better. */
  private static final Set<ElementKind> LINES_MAY_CROSS =
      EnumSet.of(ElementKind.PATH, ElementKind.PAVING);

  @Override
  public Layer layer() {
    return new Layer("site.dimensions", "Dimensions", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    UnitSystem units = plan.info().units();
    List<Mark> marks = new ArrayList<>();
    for (Lot.Edge edge : plan.lot().map(Lot::edges).orElse(List.of())) {
      List<Point> points = edge.line().points();
      if (edge.arc().isPresent()) {
        marks.add(curve(edge.arc().get(), points.get(points.size() / 2), units));
      } else if (points.size() == 2) {
        add(marks, points.get(0), points.get(1), OUTSIDE_LOT, SHORTEST_M, units);
      }
    }
    Set<ElementKind> kept = EnumSet.complementOf(EnumSet.copyOf(LINES_PASS));
    kept.removeAll(LINES_MAY_CROSS);
    List<Geometry> others = shapes(plan, kept);
    List<Geometry> passable = shapes(plan, LINES_MAY_CROSS);
    List<Geometry> fences =
        plan.all(Element.Fence.class).stream().<Geometry>map(f -> f.line().jts()).toList();
    for (Element.Building building : plan.all(Element.Building.class)) {
      if (!building.neighbour()) {
        walls(building, units, marks);
        plan.lot()
            .ifPresent(
                lot ->
                    toLotLines(
                        building,
                        lot,
                        others,
                        passable,
                        fences,
                        otherWalls(plan, building),
                        units,
                        marks));
      }
    }
    return marks;
  }

  private static List<Geometry> otherWalls(Plan plan, Element.Building building) {
    return plan.all(Element.Building.class).stream()
        .filter(b -> !b.equals(building) && !b.shape().isEmpty())
        .<Geometry>map(b -> b.shape().jts())
        .toList();
  }

  private static List<Geometry> shapes(Plan plan, Set<ElementKind> kinds) {
    return plan.elements().stream()
        .filter(e -> kinds.contains(e.id().kind()) && !e.shape().isEmpty())
        .map(e -> e.shape().jts())
        .toList();
  }

  /** Radius and length along the curve, as deeds give them. */
  private static Mark curve(Arc arc, Point at, UnitSystem units) {
    String text =
        "R "
            + DimensionText.of(arc.radius(), units)
            + "\nL "
            + DimensionText.of(arc.length(), units);
    return new Mark.Label(at, text, 2, false, 0, Mark.Anchor.NEAR);
  }

  private static void walls(Element.Building building, UnitSystem units, List<Mark> marks) {
    for (Polygon polygon : building.shape().polygons()) {
      Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
      if (ring.length - 1 > MOST_WALLS) {
        continue;
      }
      boolean rectangle = ring.length == 5;
      // Shapes run clockwise; walked backwards, the outside is on the right.
      for (int i = ring.length - 1; i > (rectangle ? 2 : 0); i--) {
        add(
            marks,
            Point.metres(ring[i].x, ring[i].y),
            Point.metres(ring[i - 1].x, ring[i - 1].y),
            OUTSIDE_WALL,
            SHORTEST_WALL_M,
            units);
      }
    }
  }

  private static List<Geometry> around(List<Geometry> things, List<Geometry> walls) {
    return Stream.concat(things.stream(), walls.stream()).toList();
  }

  /**
   * The distance from the building to each straight side of the lot; beside the lot where the way
   * would run through beds and paths.
   */
  private static void toLotLines(
      Element.Building building,
      Lot lot,
      List<Geometry> others,
      List<Geometry> passable,
      List<Geometry> fences,
      List<Geometry> walls,
      UnitSystem units,
      List<Mark> marks) {
    if (!lot.shape().covers(building.shape())) {
      return;
    }
    for (Lot.Edge edge : lot.edges()) {
      boolean straight = edge.line().points().size() == 2;
      if (straight && building.shape().jts().distance(edge.line().jts()) >= SHORTEST_M) {
        List<Geometry> lines = new ArrayList<>(fences);
        lot.edges().stream().filter(e -> !e.equals(edge)).forEach(e -> lines.add(e.line().jts()));
        Line way = WallToLine.between(building.shape(), edge.line(), others, passable, lines);
        List<Geometry> things = new ArrayList<>(others);
        things.addAll(passable);
        long crossed =
            things.stream().filter(way.jts()::intersects).count()
                + lines.stream().filter(g -> WallToLine.isAlong(way.jts(), g)).count();
        // Walls and neighbours count for lines outside only: the way itself leaves from a wall.
        OutsideChain.of(
                building.shape(), edge.line(), lot.shape(), around(things, walls), CHAIN_M, crossed)
            .ifPresentOrElse(
                c -> add(marks, c.from(), c.to(), c.offset(), SHORTEST_M, units),
                () -> add(marks, way.start(), way.end(), Length.ZERO, SHORTEST_M, units));
      }
    }
  }

  private static void add(
      List<Mark> marks, Point from, Point to, Length offset, double leastM, UnitSystem units) {
    Length length = from.distance(to);
    if (length.metres() >= leastM) {
      marks.add(new Mark.Dimension(from, to, offset, DimensionText.of(length, units)));
    }
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.STAKE);
  }
}
