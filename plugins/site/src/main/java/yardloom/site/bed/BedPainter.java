package yardloom.site.bed;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;

/** Ground to be planted. */
public final class BedPainter extends ElementPainter<Element.Bed> {
  public BedPainter() {
    super(Element.Bed.class, new Layer("site.bed", "Beds", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.Bed element) {
    return List.of(new Mark.Region(element.shape(), Palette.BED, element.id().toString()));
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Bed> elements) {
    return List.of(LegendEntry.area("Bed", Palette.BED));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
