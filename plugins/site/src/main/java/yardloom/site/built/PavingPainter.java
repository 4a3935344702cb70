package yardloom.site.built;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;

/** Drives, terraces and other hard surfaces. */
public final class PavingPainter extends ElementPainter<Element.Paving> {
  public PavingPainter() {
    super(Element.Paving.class, new Layer("site.paving", "Paving", Layer.Band.GROUND));
  }

  @Override
  protected List<Mark> paint(Element.Paving element) {
    return List.of(new Mark.Region(element.shape(), Palette.PAVING, element.id().toString()));
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Paving> elements) {
    return List.of(LegendEntry.area("Paving", Palette.PAVING));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
