package yardloom.site.built;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;

/** Ground that must stay free. */
public final class KeepOutPainter extends ElementPainter<Element.KeepOut> {
  public KeepOutPainter() {
    super(Element.KeepOut.class, new Layer("site.keep-out", "Keep-outs", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.KeepOut element) {
    return List.of(new Mark.Region(element.shape(), Palette.KEEP_OUT, element.id().toString()));
  }

  @Override
  protected List<LegendEntry> legend(List<Element.KeepOut> elements) {
    return List.of(LegendEntry.area("Keep free", Palette.KEEP_OUT));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
