package yardloom.water.roofwater;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.water.overflow.Basin;
import yardloom.water.overflow.OverflowPipe;
import yardloom.water.roof.Downspout;
import yardloom.water.tank.TankPlan;

/** Tanks, downspouts, overflows and basins at their places. */
public final class RoofWaterPainter implements Painter {
  private static final int LABEL_RANK = 3;
  private static final Style TANK =
      Style.filled("water-tank", "#c9d8e2").outlined(Palette.INK, 0.5);
  private static final Style BASIN =
      Style.filled("water-basin", "#dde8ee").hatched(Hatch.DOTS).outlined(Palette.INK, 0.25);
  private static final Style PIPE = Style.line("water-overflow", Palette.INK, 0.5);
  private static final Style SPOUT = Style.filled("water-downspout", Palette.INK);

  @Override
  public Layer layer() {
    return new Layer("water.roof-water", "Roof water", Layer.Band.WATER);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.IRRIGATION);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    plan.attributes()
        .all(Basin.KEY)
        .forEach(e -> area(e.value().shape(), BASIN, e.value().name(), marks));
    plan.attributes()
        .all(OverflowPipe.KEY)
        .forEach(
            e ->
                marks.add(
                    new Mark.Stroke(e.value().line(), PIPE, "overflow of " + e.value().from())));
    plan.attributes()
        .all(Downspout.KEY)
        .forEach(
            e ->
                marks.add(
                    new Mark.Symbol(
                        e.value().at(),
                        Mark.SymbolForm.SQUARE,
                        Length.ZERO,
                        Angle.ZERO,
                        SPOUT,
                        "downspout of " + e.value().roof())));
    plan.attributes()
        .all(TankPlan.KEY)
        .forEach(
            e -> {
              List<Shape> feet = e.value().feet();
              feet.forEach(
                  foot -> marks.add(new Mark.Region(foot, TANK, "tank " + e.value().name())));
              marks.add(label(e.value().name(), Shape.union(feet)));
            });
    return marks;
  }

  private static void area(Shape shape, Style style, String name, List<Mark> marks) {
    marks.add(new Mark.Region(shape, style, name));
    marks.add(label(name, shape));
  }

  private static Mark.Label label(String name, Shape ground) {
    return new Mark.Label(ground.heart(), name, 2, false, LABEL_RANK, Mark.Anchor.NEAR).on(ground);
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    List<LegendEntry> legend = new ArrayList<>();
    if (!plan.attributes().all(TankPlan.KEY).isEmpty()) {
      legend.add(LegendEntry.area("tank for roof water", TANK));
    }
    if (!plan.attributes().all(Basin.KEY).isEmpty()) {
      legend.add(LegendEntry.area("basin that takes roof water", BASIN));
    }
    if (!plan.attributes().all(OverflowPipe.KEY).isEmpty()) {
      legend.add(LegendEntry.line("overflow of a tank", PIPE));
    }
    if (!plan.attributes().all(Downspout.KEY).isEmpty()) {
      legend.add(LegendEntry.symbol("downspout", Mark.SymbolForm.SQUARE, SPOUT));
    }
    return legend;
  }
}
