package yardloom.site;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** An invented yard of 60 by 120 ft with what a site plan usually shows. */
public final class DemoYard {
  private DemoYard() {}

  public static Plan plan(UnitSystem units) {
    Draft draft =
        new Draft(
            new PlanInfo(
                "demo-yard",
                "Kitchen garden on Elm Street",
                "Demo household",
                "Yardloom tests",
                "2026-03-01",
                "B",
                units,
                units == UnitSystem.US ? "$" : "€"));
    Shape lot = box(0, 0, 60, 120);
    draft.lot(
        new Lot(
            SourceRef.NONE,
            lot,
            List.of(
                edge("south", 0, 0, 60, 0, EdgeRole.FRONT, 25),
                edge("east", 60, 0, 60, 120, EdgeRole.SIDE, 5),
                edge("north", 60, 120, 0, 120, EdgeRole.REAR, 5),
                edge("west", 0, 120, 0, 0, EdgeRole.SIDE, 5))));
    house(draft, "house", box(14, 30, 32, 36), false);
    house(draft, "neighbour east", box(66, 34, 30, 30), true);
    paving(draft, "drive", box(48, 0, 9, 60), "concrete");
    for (int i = 0; i < 6; i++) {
      bed(draft, "bed " + (i + 1), box(8 + (i % 2) * 24, 76 + (i / 2) * 9, 20, 4));
    }
    bed(draft, "street bed", box(8, 8, 34, 6));
    line(draft, "garden walk", List.of(point(30, 66), point(30, 104), point(46, 108)), 3);
    Line fence = line(List.of(point(1, 66), point(1, 119), point(59, 119), point(59, 66)));
    add(
        draft,
        ElementKind.FENCE,
        "board fence",
        c -> new Element.Fence(c, fence, Shape.EMPTY, Length.feet(6), 0));
    tree(draft, "old maple", point(12, 20), 22, Element.Leaf.DECIDUOUS);
    tree(draft, "pine", point(52, 90), 12, Element.Leaf.EVERGREEN);
    tree(draft, "pear", point(10, 112), 10, Element.Leaf.DECIDUOUS);
    add(
        draft,
        ElementKind.STRUCTURE,
        "shed",
        c -> new Element.Structure(c, box(44, 106, 10, 8), Length.feet(8)));
    add(
        draft,
        ElementKind.WATER_POINT,
        "tap",
        c -> new Element.WaterPoint(c, point(20, 66.5), "mains"));
    Line gas = line(List.of(point(40, 0), point(40, 30)));
    add(
        draft,
        ElementKind.UTILITY,
        "gas service",
        c -> new Element.Utility(c, gas, box(38, 0, 4, 30), "gas", Length.feet(2)));
    return draft.freeze();
  }

  private static Lot.Edge edge(
      String name, double x1, double y1, double x2, double y2, EdgeRole role, double setbackFt) {
    return new Lot.Edge(
        name, line(List.of(point(x1, y1), point(x2, y2))), role, Length.feet(setbackFt), "demo");
  }

  private static void house(Draft draft, String name, Shape shape, boolean neighbour) {
    add(
        draft,
        ElementKind.BUILDING,
        name,
        c ->
            new Element.Building(
                c,
                shape,
                Length.feet(10),
                Length.feet(20),
                Length.feet(1.5),
                Element.RoofForm.GABLE,
                neighbour));
  }

  private static void paving(Draft draft, String name, Shape shape, String surface) {
    add(draft, ElementKind.PAVING, name, c -> new Element.Paving(c, shape, surface));
  }

  private static void bed(Draft draft, String name, Shape shape) {
    add(draft, ElementKind.BED, name, c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL));
  }

  private static void line(Draft draft, String name, List<Point> points, double widthFt) {
    Line line = line(points);
    List<Shape> pieces = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      double dx = b.x().minus(a.x()).metres();
      double dy = b.y().minus(a.y()).metres();
      double half = widthFt * 0.3048 / 2 / Math.hypot(dx, dy);
      Length nx = Length.metres(-dy * half);
      Length ny = Length.metres(dx * half);
      pieces.add(
          Shape.polygon(
              List.of(
                  a.moved(nx, ny),
                  b.moved(nx, ny),
                  b.moved(nx.negative(), ny.negative()),
                  a.moved(nx.negative(), ny.negative()))));
    }
    add(
        draft,
        ElementKind.PATH,
        name,
        c ->
            new Element.Path(
                c, line, Shape.union(pieces), Length.feet(widthFt), Element.PathUse.BARROW));
  }

  private static void tree(Draft draft, String name, Point at, double crownFt, Element.Leaf leaf) {
    add(
        draft,
        ElementKind.TREE,
        name,
        c ->
            new Element.Tree(
                c,
                at,
                Shape.circle(at, Length.feet(crownFt / 2)),
                Length.feet(crownFt),
                Length.feet(crownFt * 1.3),
                Length.feet(6),
                Length.inches(10),
                leaf));
  }

  private static void add(
      Draft draft,
      ElementKind kind,
      String name,
      java.util.function.Function<Element.Common, Element> finish) {
    draft.add(new ElementId(kind, name), SourceRef.NONE, finish);
  }

  private static Line line(List<Point> points) {
    return Line.through(points);
  }

  private static Point point(double xFt, double yFt) {
    return new Point(Length.feet(xFt), Length.feet(yFt));
  }

  private static Shape box(double xFt, double yFt, double widthFt, double depthFt) {
    return Shape.rectangle(point(xFt, yFt), Length.feet(widthFt), Length.feet(depthFt));
  }
}
