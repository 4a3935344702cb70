package yardloom.sun.neighbour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.shade.ShadeScene;
import yardloom.sun.yard.YardSun;

/**
 * Says when what the plan proposes takes direct sun from a neighbour's windows or from beds outside
 * the lot: points 1.5 m up every 2 m along a neighbour's walls, and the hearts of such beds, on
 * each month's mean day, with and without what is proposed. Silent below {@link #NOTABLE_HOURS}.
 */
public final class NeighbourCheck implements Check {
  static final double NOTABLE_HOURS = 0.5;
  private static final double WINDOW_M = 1.5;
  private static final double APART_M = 2;
  private static final double OFF_WALL_M = 0.05;
  private static final String[] MONTHS = {
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December"
  };

  @Override
  public String id() {
    return "sun.neighbour";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.OBSTACLES);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    SortedSet<ElementId> proposed = ProposedWords.proposed(plan);
    List<Finding> found = new ArrayList<>();
    if (plan.site().isEmpty() || proposed.isEmpty()) {
      return found;
    }
    List<Obstacle> all = facts.all(YardFacts.OBSTACLES);
    List<Obstacle> without = all.stream().filter(o -> !proposed.contains(o.of())).toList();
    SunEngine.Looker now = looker(plan, without);
    SunEngine.Looker then = looker(plan, all);
    targets(plan)
        .forEach(
            (element, points) -> worst(element, points, now, then, proposed).ifPresent(found::add));
    return found;
  }

  private static SunEngine.Looker looker(Plan plan, List<Obstacle> obstacles) {
    return new YardSun(plan, plan.site().orElseThrow(), obstacles, Optional.empty()).looker();
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

  /** A length in both unit systems, as findings print it. */
  private static String both(double metres) {
    return String.format(Locale.ROOT, "%.1f ft (%.1f m)", Length.metres(metres).feet(), metres);
  }

  private Optional<Finding> worst(
      Element element,
      List<double[]> points,
      SunEngine.Looker now,
      SunEngine.Looker then,
      Set<ElementId> proposed) {
    double most = NOTABLE_HOURS;
    String text = "";
    for (double[] p : points) {
      now.at(p[0], p[1], p[2], ShadeScene.NOBODY);
      then.at(p[0], p[1], p[2], ShadeScene.NOBODY);
      for (int m = 0; m < 12; m++) {
        double before = now.day(m).directHours();
        double after = then.day(m).directHours();
        if (before - after > most) {
          most = before - after;
          text =
              String.format(
                  Locale.ROOT,
                  "%s would take %.1f h of direct sun from %s in %s (%.1f h now, %.1f h then, at"
                      + " (%s, %s) %s above ground)",
                  String.join(", ", proposed.stream().map(ElementId::toString).toList()),
                  most,
                  element.id(),
                  MONTHS[m],
                  before,
                  after,
                  both(p[0]),
                  both(p[1]),
                  both(p[2]));
        }
      }
    }
    return text.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    text,
                    "move it, keep it lower, or agree with the neighbour; local rules may protect"
                        + " light",
                    Source.commonPractice("shade on a neighbour's windows and beds"))
                .about(element.id(), element.place()));
  }
}
