package yardloom.site.built;

import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.site.element.ElementPainter;
import yardloom.site.element.Show;

/** Taps and other places where water can be taken. */
public final class WaterPointPainter extends ElementPainter<Element.WaterPoint> {
  private static final double TEXT_MM = 2;

  public WaterPointPainter() {
    super(
        Element.WaterPoint.class, new Layer("site.water-point", "Water points", Layer.Band.WATER));
  }

  @Override
  protected List<Mark> paint(Element.WaterPoint point) {
    return List.of(
        new Mark.Symbol(
            point.at(),
            SymbolForm.TAP,
            Length.ZERO,
            Angle.ZERO,
            Palette.WATER_POINT,
            point.id().toString()),
        new Mark.Label(point.at(), Show.name(point), TEXT_MM, false, 2, Mark.Anchor.NEAR));
  }

  @Override
  protected List<LegendEntry> legend(List<Element.WaterPoint> points) {
    return List.of(LegendEntry.symbol("Water point", SymbolForm.TAP, Palette.WATER_POINT));
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(
        WorkPhase.HEAD,
        WorkPhase.DRIP,
        SheetPage.CREW,
        SheetPage.LAYOUT,
        SheetPage.PLANTING,
        SheetPage.IRRIGATION);
  }
}
