package yardloom.kernel.paint;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Taps and other places where water can be taken. */
final class WaterPointPainter extends ElementPainter<Element.WaterPoint> {
  WaterPointPainter() {
    super(
        Element.WaterPoint.class,
        new Layer("kernel.water-point", "Water points", Layer.Band.WATER));
  }

  @Override
  List<Mark> paint(Element.WaterPoint point) {
    return List.of(
        new Mark.Symbol(
            point.at(),
            SymbolForm.TAP,
            Length.ZERO,
            Angle.ZERO,
            Palette.WATER_POINT,
            point.id().toString()));
  }

  @Override
  List<LegendEntry> legend(List<Element.WaterPoint> points) {
    return List.of(LegendEntry.symbol("Water point", SymbolForm.TAP, Palette.WATER_POINT));
  }
}
