package yardloom.kernel.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.paint.KernelCautions;
import yardloom.kernel.paint.KernelPainters;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/** An invented yard of 60 by 120 ft with what a site plan usually shows. */
public final class DemoYard {
  private DemoYard() {}

  /** A request for the site plan sheet with three tables, notes and a figure. */
  public static SheetRequest request(Paper paper, UnitSystem units) {
    Plan plan = plan(units);
    Facts facts = FactGraph.of(List.of()).run(plan);
    TreeMap<Layer, List<Mark>> layers = new TreeMap<>();
    List<LegendEntry> legend = new ArrayList<>();
    for (Painter painter :
        KernelPainters.all().stream().sorted((a, b) -> a.layer().compareTo(b.layer())).toList()) {
      layers.put(painter.layer(), painter.paint(plan, facts));
      legend.addAll(painter.legend(plan, facts));
    }
    List<Panel> panels =
        List.of(
            new Panel.SitePlan(java.util.Set.of()),
            new Panel.TableBlock(beds(plan)),
            new Panel.TableBlock(materials(plan)),
            new Panel.TableBlock(months()),
            new Panel.Notes(
                "General notes",
                List.of(
                    "Paths are 3 ft wide with wood chips over cardboard; bed edges are cut by"
                        + " spade.",
                    "Cardboard sheets overlap by at least 6 in; tape and staples are taken off.")),
            section());
    SheetPlan sheet = new SheetPlan(1, "site-plan", "Site plan", panels);
    return SheetRequest.of(sheet, paper, plan.info())
        .withDrawing(layers, legend)
        .withCautions(KernelCautions.of(plan))
        .withSite(plan.lot().map(Lot::shape), Angle.degrees(12));
  }

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

  private static Panel section() {
    List<Mark> marks = new ArrayList<>();
    String[] layers = {"soil, undisturbed", "cardboard", "compost, 2 in", "wood chips, 6 in"};
    double[] tops = {0, 0.02, 0.08, 0.24};
    Style.Hatch[] hatches = {
      Style.Hatch.DOTS, Style.Hatch.HORIZONTAL, Style.Hatch.SPARSE_DOTS, Style.Hatch.CHIPS
    };
    double below = -0.2;
    for (int i = 0; i < layers.length; i++) {
      Shape band =
          Shape.rectangle(Point.metres(0, below), Length.metres(1), Length.metres(tops[i] - below));
      Style style =
          Style.filled("layer-" + i, "#efe8da").hatched(hatches[i]).outlined(Palette.INK, 0.25);
      marks.add(new Mark.Region(band, style, layers[i]));
      marks.add(
          new Mark.Label(
              Point.metres(1, (tops[i] + below) / 2), layers[i], 2, false, 1, Mark.Anchor.NEAR));
      below = tops[i];
    }
    return new Panel.Figure("Section through a bed", marks, List.of(), 80, 20);
  }

  private static Table beds(Plan plan) {
    Table.Builder table =
        Table.titled("beds", "Beds")
            .column(Column.text("bed", "Bed"))
            .column(Column.text("use", "Use"))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.of("sun", "Direct sun in June", Measure.HOURS));
    Area sum = Area.squareMetres(0);
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      sum = sum.plus(bed.shape().area());
      table.row(
          Cell.text(bed.id().name()),
          Cell.text("perennial"),
          Cell.of(bed.shape().area()),
          Cell.number(6.5));
    }
    return table
        .total(Cell.text("Total"), Cell.BLANK, Cell.of(sum), Cell.BLANK)
        .note("Areas are measured in plan between bed edges.")
        .build();
  }

  private static Table materials(Plan plan) {
    return Table.titled("materials", "Materials to order")
        .column(Column.text("item", "Item"))
        .column(Column.of("exact", "Exact", Measure.VOLUME))
        .column(Column.of("order", "Order", Measure.VOLUME))
        .column(Column.text("note", "Where it goes"))
        .row(
            Cell.text("Wood chips"),
            Cell.of(Volume.cubicMetres(11.3)),
            Cell.of(Volume.cubicMetres(12.2)),
            Cell.text("paths and all beds, 6 in after settling; tip pile on the drive"))
        .row(
            Cell.text("Compost"),
            Cell.of(Volume.cubicMetres(2.1)),
            Cell.of(Volume.cubicMetres(2.3)),
            Cell.text("pockets of perennials; annual bed 2 in"))
        .note("Allowance 8 % for chips. Order quantities are rounded up to half a cubic yard.")
        .build();
  }

  private static Table months() {
    Table.Builder table =
        Table.titled("water", "Water by month").column(Column.text("what", "Water"));
    String[] names = {
      "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };
    for (String name : names) {
      table.column(Column.of(name.toLowerCase(java.util.Locale.ROOT), name, Measure.WATER));
    }
    for (String what : new String[] {"Beds need", "Roof yields"}) {
      List<Cell> row = new ArrayList<>();
      row.add(Cell.text(what));
      for (int i = 0; i < 12; i++) {
        row.add(Cell.of(Volume.cubicMetres(1 + 0.7 * i * (12 - i) / 3.0)));
      }
      table.row(row);
    }
    return table.note("Mean year.").build();
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
