package yardloom.site.annotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
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

  private static final double SHORTEST_WALL_M = 2;
  private static final int MOST_WALLS = 8;

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
        add(marks, points.get(0), points.get(1), OUTSIDE_LOT, LotDistances.SHORTEST_M, units);
      }
    }
    for (Element.Building building : plan.all(Element.Building.class)) {
      if (!building.neighbour()) {
        walls(building, units, marks);
        plan.lot().ifPresent(lot -> toLotLines(plan, building, lot, units, marks));
      }
    }
    return marks;
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

  private static void toLotLines(
      Plan plan, Element.Building building, Lot lot, UnitSystem units, List<Mark> marks) {
    for (LotDistances.Distance d : new LotDistances(plan, building, lot).all()) {
      add(marks, d.from(), d.to(), d.offset(), LotDistances.SHORTEST_M, units);
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
    return Set.of(WorkPhase.STAKE, SheetPage.LAYOUT);
  }
}
