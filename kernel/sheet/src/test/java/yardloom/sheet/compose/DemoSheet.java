package yardloom.sheet.compose;

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
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.sheet.paper.Paper;
import yardloom.site.DemoYard;
import yardloom.site.SiteCautions;
import yardloom.site.SitePlugin;

/** The site plan sheet of an invented yard, with what usually stands beside it. */
public final class DemoSheet {
  private DemoSheet() {}

  /** A request for the site plan sheet with three tables, notes and a figure. */
  public static SheetRequest request(Paper paper, UnitSystem units) {
    Plan plan = DemoYard.plan(units);
    Facts facts = FactGraph.of(List.of()).run(plan);
    TreeMap<Layer, List<Mark>> layers = new TreeMap<>();
    List<LegendEntry> legend = new ArrayList<>();
    for (Painter painter :
        new SitePlugin()
            .painters().stream()
                .filter(Painter::shownByDefault)
                .sorted((a, b) -> a.layer().compareTo(b.layer()))
                .toList()) {
      layers.put(painter.layer(), painter.paint(plan, facts));
      legend.addAll(painter.legend(plan, facts));
    }
    List<Panel> panels =
        List.of(
            Panel.SitePlan.shown(),
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
        .withCautions(SiteCautions.of(plan))
        .withSite(plan.lot().map(Lot::shape), Angle.degrees(12));
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
            Cell.text("paths and all beds, 6 in after settling; chip pile on the drive"))
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
}
