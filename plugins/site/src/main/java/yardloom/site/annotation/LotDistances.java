package yardloom.site.annotation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/**
 * Where the distances from a building to the straight sides of the lot are measured: along the way
 * itself, or beside the lot where that runs through beds and paths.
 */
final class LotDistances {
  /** Nothing shorter is measured. */
  static final double SHORTEST_M = 0.9;

  /**
   * Beyond the measures of the lot, so that a second row of measures can be read beside them; else
   * between these and the lot, where a neighbour's house stands near.
   */
  private static final double[] BEYOND_M = {3, 0.7};

  /** What a dimension line runs across without harm. */
  private static final Set<ElementKind> LINES_PASS =
      EnumSet.of(
          ElementKind.BUILDING, ElementKind.ROOF, ElementKind.FENCE, ElementKind.MULCHED_GROUND);

  /** What it may run across, though free ground is better. */
  private static final Set<ElementKind> LINES_MAY_CROSS =
      EnumSet.of(ElementKind.PATH, ElementKind.PAVING);

  private final Element.Building building;
  private final Lot lot;
  private final List<Geometry> others;
  private final List<Geometry> passable;
  private final List<Geometry> fences;

  /** Beds, paths and the like, and other buildings: what lines beside the lot keep clear of. */
  private final List<Geometry> things;

  LotDistances(Plan plan, Element.Building building, Lot lot) {
    this.building = building;
    this.lot = lot;
    Set<ElementKind> kept = EnumSet.complementOf(EnumSet.copyOf(LINES_PASS));
    kept.removeAll(LINES_MAY_CROSS);
    others = shapes(plan, kept);
    passable = shapes(plan, LINES_MAY_CROSS);
    fences = plan.all(Element.Fence.class).stream().<Geometry>map(f -> f.line().jts()).toList();
    things = new ArrayList<>(others);
    things.addAll(passable);
    plan.all(Element.Building.class).stream()
        .filter(b -> !b.equals(building) && !b.shape().isEmpty())
        .forEach(b -> things.add(b.shape().jts()));
  }

  /**
   * A measure as a dimension has it.
   *
   * @param from a point of the building that is nearest to the side
   * @param to its foot on the side
   * @param offset from that way to the dimension line, to the left of its direction if positive
   */
  record Distance(Point from, Point to, Length offset) {}

  /** The distance to each straight side that is not too near; none from outside of the lot. */
  List<Distance> all() {
    List<Distance> distances = new ArrayList<>();
    if (lot.shape().covers(building.shape())) {
      for (Lot.Edge edge : lot.edges()) {
        boolean straight = edge.line().points().size() == 2;
        if (straight && building.shape().jts().distance(edge.line().jts()) >= SHORTEST_M) {
          distances.add(to(edge));
        }
      }
    }
    return distances;
  }

  private Distance to(Lot.Edge edge) {
    List<Geometry> lines = new ArrayList<>(fences);
    lot.edges().stream().filter(e -> !e.equals(edge)).forEach(e -> lines.add(e.line().jts()));
    Line way = WallToLine.between(building.shape(), edge.line(), others, passable, lines);
    // Other buildings are crossed by lines beside the lot only: none stands in the nearest way.
    long crossed =
        others.stream().filter(way.jts()::intersects).count()
            + passable.stream().filter(way.jts()::intersects).count()
            + lines.stream().filter(g -> WallToLine.isAlong(way.jts(), g)).count();
    return OutsideChain.of(building.shape(), edge.line(), lot.shape(), things, BEYOND_M, crossed)
        .orElseGet(() -> new Distance(way.start(), way.end(), Length.ZERO));
  }

  private static List<Geometry> shapes(Plan plan, Set<ElementKind> kinds) {
    return plan.elements().stream()
        .filter(e -> kinds.contains(e.id().kind()) && !e.shape().isEmpty())
        .map(e -> e.shape().jts())
        .toList();
  }
}
