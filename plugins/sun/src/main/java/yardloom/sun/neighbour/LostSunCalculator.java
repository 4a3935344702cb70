package yardloom.sun.neighbour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import yardloom.facts.Field;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.hours.SunMap;
import yardloom.sun.shade.ShadeScene;
import yardloom.sun.yard.FieldMaker;
import yardloom.sun.yard.YardSun;

/**
 * Gives the sun that what the plan proposes would take. From beds: mean over the bed and season,
 * with and without each thing. From neighbours: points 1.5 m up every 2 m along a neighbour's
 * walls, and the hearts of beds outside the lot, on each month's mean day, with and without all of
 * it. Gives nothing if nothing is proposed.
 */
public final class LostSunCalculator implements Calculator {
  private static final double WINDOW_M = 1.5;
  private static final double APART_M = 2;
  private static final double OFF_WALL_M = 0.05;

  @Override
  public String id() {
    return "sun.lost";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardSun.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.OBSTACLES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(LostSun.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    SortedSet<ElementId> proposed = ProposedWords.proposed(plan);
    if (proposed.isEmpty()) {
      return;
    }
    YardSun then = in.get(YardSun.KEY);
    List<Obstacle> all = in.all(YardFacts.OBSTACLES);
    out.give(
        LostSun.KEY,
        new LostSun(
            fromBeds(plan, then, all, proposed),
            fromNeighbours(plan, without(plan, all, proposed).looker(), then.looker())));
  }

  private static YardSun without(Plan plan, List<Obstacle> all, Set<ElementId> gone) {
    List<Obstacle> left = all.stream().filter(o -> !gone.contains(o.of())).toList();
    return new YardSun(plan, plan.site().orElseThrow(), left, Optional.empty());
  }

  private static List<LostSun.OfBed> fromBeds(
      Plan plan, YardSun yard, List<Obstacle> all, Set<ElementId> proposed) {
    List<LostSun.OfBed> lost = new ArrayList<>();
    Optional<CellGrid> grid = yard.grid(plan);
    if (grid.isEmpty()) {
      return lost;
    }
    SunMap with =
        SunMap.of(yard.engine, grid.get(), FieldMaker.cells(plan, grid.get()), yard.groups);
    Field now = FieldMaker.field(grid.get(), with::seasonMean);
    for (ElementId id : proposed) {
      SunMap without = with.after(without(plan, all, Set.of(id)).engine, id);
      Field before = FieldMaker.field(grid.get(), without::seasonMean);
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        OptionalDouble was = before.mean(bed.shape());
        OptionalDouble is = now.mean(bed.shape());
        if (was.isPresent() && is.isPresent() && !bed.id().equals(id)) {
          lost.add(new LostSun.OfBed(id, bed, was.getAsDouble(), is.getAsDouble()));
        }
      }
    }
    return lost.stream().filter(l -> l.lost() > 0).toList();
  }

  private static List<LostSun.OfNeighbour> fromNeighbours(
      Plan plan, SunEngine.Looker now, SunEngine.Looker then) {
    List<LostSun.OfNeighbour> lost = new ArrayList<>();
    targets(plan)
        .forEach((element, points) -> worst(element, points, now, then).ifPresent(lost::add));
    return lost;
  }

  /** Where sun may be missed: x, y and height of points, by element. */
  private static Map<Element, List<double[]>> targets(Plan plan) {
    Map<Element, List<double[]>> targets = new LinkedHashMap<>();
    for (Element.Building b : plan.all(Element.Building.class)) {
      if (b.neighbour()) {
        targets.put(b, windows(b));
      }
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      Point heart = bed.shape().heart();
      if (plan.lot().isPresent() && !plan.lot().get().shape().contains(heart)) {
        targets.put(
            bed,
            List.of(new double[] {heart.x().metres(), heart.y().metres(), YardSun.soilM(bed)}));
      }
    }
    return targets;
  }

  private static List<double[]> windows(Element.Building building) {
    List<double[]> points = new ArrayList<>();
    double heightM = Math.min(WINDOW_M, building.eavesHeight().metres() / 2);
    for (Polygon polygon : building.shape().polygons()) {
      // In normal form outer rings run clockwise: outside lies on the left.
      Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < ring.length; i++) {
        double length = ring[i].distance(ring[i + 1]);
        double ux = (ring[i + 1].x - ring[i].x) / length;
        double uy = (ring[i + 1].y - ring[i].y) / length;
        int count = Math.max(1, (int) Math.round(length / APART_M));
        for (int k = 0; k < count; k++) {
          double along = length * (k + 0.5) / count;
          points.add(
              new double[] {
                ring[i].x + ux * along - uy * OFF_WALL_M,
                ring[i].y + uy * along + ux * OFF_WALL_M,
                heightM
              });
        }
      }
    }
    return points;
  }

  private static Optional<LostSun.OfNeighbour> worst(
      Element element, List<double[]> points, SunEngine.Looker now, SunEngine.Looker then) {
    double most = 0;
    Optional<LostSun.OfNeighbour> worst = Optional.empty();
    for (double[] p : points) {
      now.at(p[0], p[1], p[2], ShadeScene.NOBODY);
      then.at(p[0], p[1], p[2], ShadeScene.NOBODY);
      for (int m = 0; m < 12; m++) {
        double before = now.directHours(m);
        double after = then.directHours(m);
        if (before - after > most) {
          most = before - after;
          Point at = Point.metres(p[0], p[1]);
          worst =
              Optional.of(
                  new LostSun.OfNeighbour(element, at, Length.metres(p[2]), m, before, after));
        }
      }
    }
    return worst;
  }
}
