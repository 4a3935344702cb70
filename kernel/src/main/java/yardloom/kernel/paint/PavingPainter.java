package yardloom.kernel.paint;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;

/** Drives, terraces and other hard surfaces. */
final class PavingPainter extends ElementPainter<Element.Paving> {
  PavingPainter() {
    super(Element.Paving.class, new Layer("kernel.paving", "Paving", Layer.Band.GROUND));
  }

  @Override
  List<Mark> paint(Element.Paving element) {
    return List.of(new Mark.Region(element.shape(), Palette.PAVING, element.id().toString()));
  }

  @Override
  List<LegendEntry> legend(List<Element.Paving> elements) {
    return List.of(LegendEntry.area("Paving", Palette.PAVING));
  }
}
