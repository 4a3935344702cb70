package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/** Finds where on a contour its level can be read: on free ground, away from other levels. */
final class ContourLabels {
  private static final Length SHORTEST = Length.metres(1);
  private static final double STEP_M = 0.2;
  private static final double CLEAR_M = 1.2;
  private static final double APART_M = 1.5;
  private static final double LEAST_M = 0.25;

  /** A second level on a long line, so that it is read in a part drawn larger as well. */
  private static final double AGAIN_M = 3;

  private static final double NAME_M = 1.2;

  private final List<Shape> busy = new ArrayList<>();
  private final List<Shape> beds = new ArrayList<>();
  private final List<Point> written = new ArrayList<>();
  private final Optional<Shape> lot;
  private final Optional<Geometry> edge;

  ContourLabels(Plan plan) {
    lot = plan.lot().map(l -> l.shape());
    edge = lot.map(l -> l.outline().jts());
    for (Element element : plan.elements()) {
      if (hides(element) && !element.shape().isEmpty()) {
        (element instanceof Element.Bed ? beds : busy).add(element.shape());
      }
    }
  }

  /** Not what only covers the ground: a level can be read on a path or under chips. */
  private static boolean hides(Element element) {
    return !(element instanceof Element.Roof
        || element instanceof Element.Path
        || element instanceof Element.MulchedGround
        || element instanceof Element.Paving);
  }

  /** The place for the next level; empty if the line is too short or nowhere free. */
  Optional<Point> place(Line line) {
    if (line.length().compareTo(SHORTEST) < 0) {
      return Optional.empty();
    }
    Point best = null;
    double most = LEAST_M;
    int steps = (int) Math.ceil(line.length().metres() / STEP_M);
    for (int i = 1; i < steps; i++) {
      Point at = line.at(line.length().times((double) i / steps));
      double free = free(at, true);
      if (free > most + 1e-6) {
        most = free;
        best = at;
      }
    }
    Optional<Point> found = Optional.ofNullable(best);
    found.ifPresent(written::add);
    return found;
  }

  /** The middlemost place away from the first, also on a bed: where nothing else is written. */
  Optional<Point> again(Line line, Point first) {
    double middle = line.length().metres() / 2;
    Point best = null;
    double nearest = Double.MAX_VALUE;
    int steps = (int) Math.ceil(line.length().metres() / STEP_M);
    for (int i = 1; i < steps; i++) {
      double along = line.length().metres() * i / steps;
      Point at = line.at(Length.metres(along));
      boolean apart = at.distance(first).metres() >= AGAIN_M;
      boolean legible = apart && isOffNames(at);
      if (legible && Math.abs(along - middle) < nearest - 1e-6 && free(at, false) > LEAST_M) {
        nearest = Math.abs(along - middle);
        best = at;
      }
    }
    return Optional.ofNullable(best);
  }

  /** The name of a bed stands in its heart. */
  private boolean isOffNames(Point at) {
    return beds.stream().allMatch(b -> b.heart().distance(at).metres() >= NAME_M);
  }

  /** How free the ground at a point is; zero where a level cannot stand. */
  private double free(Point at, boolean ofBeds) {
    if (lot.isPresent() && !lot.get().contains(at)) {
      return 0;
    }
    double free = CLEAR_M;
    free =
        Math.min(
            free,
            edge.map(e -> e.distance(e.getFactory().createPoint(at.coordinate()))).orElse(free));
    for (Shape shape : busy) {
      free = Math.min(free, shape.distance(at).metres());
    }
    for (Shape bed : ofBeds ? beds : List.<Shape>of()) {
      free = Math.min(free, bed.distance(at).metres());
    }
    for (Point other : ofBeds ? written : List.<Point>of()) {
      if (other.distance(at).metres() < APART_M) {
        free /= 4;
      }
    }
    return free;
  }
}
