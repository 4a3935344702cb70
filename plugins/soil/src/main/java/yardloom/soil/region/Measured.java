package yardloom.soil.region;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/**
 * Something that distances are measured to: the outline of an element (a tree's is its crown), the
 * middle of a utility line, the point of a tap, a side of the lot.
 *
 * @param around the ground within a distance of it
 */
public record Measured(
    Optional<ElementId> id, String title, Geometry body, Function<Length, Shape> around) {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  static Measured of(Element e) {
    Optional<ElementId> id = Optional.of(e.id());
    String title = e.id().toString();
    if (e instanceof Element.WaterPoint tap) {
      Point at = tap.at();
      Geometry point = FACTORY.createPoint(at.coordinate());
      return new Measured(id, title, point, far -> Shape.circle(at, far));
    }
    if (e instanceof Element.Utility utility) {
      return along(id, title, utility.line());
    }
    return new Measured(id, title, e.shape().jts(), e.shape()::grown);
  }

  private static Measured of(Lot.Edge side) {
    return along(Optional.empty(), "lot line \"" + side.name() + "\"", side.line());
  }

  private static Measured along(Optional<ElementId> id, String title, Line line) {
    return new Measured(id, title, line.jts(), far -> line.strip(far.times(2)));
  }

  /** All elements of a kind, in the plan's order, whose name holds a text. */
  static List<Element> elements(Plan plan, ElementKind kind, String named) {
    return plan.elements().stream()
        .filter(e -> e.id().kind() == kind && e.id().name().contains(named))
        .toList();
  }

  /** What a check measures to. */
  static List<Measured> targets(Plan plan, LocalCheck.Nearer nearer) {
    if (nearer.to() == LocalCheck.Target.LOT_LINE) {
      return plan.lot().stream()
          .flatMap(lot -> lot.edges().stream())
          .filter(side -> side.name().contains(nearer.named()))
          .map(Measured::of)
          .toList();
    }
    ElementKind kind = ElementKind.valueOf(nearer.to().name());
    return elements(plan, kind, nearer.named()).stream().map(Measured::of).toList();
  }

  Length distance(Measured other) {
    return Length.metres(body.distance(other.body));
  }
}
