package yardloom.site.lawn;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;

/** Ground mulched whole, under all that lies in it. */
public final class GroundPainter extends ElementPainter<Element.MulchedGround> {
  public GroundPainter() {
    super(
        Element.MulchedGround.class,
        new Layer("site.mulched-ground", "Mulched whole", Layer.Band.GROUND));
  }

  @Override
  protected List<Mark> paint(Element.MulchedGround element) {
    return List.of(
        new Mark.Region(element.shape(), Palette.MULCHED_GROUND, element.id().toString()));
  }

  @Override
  protected List<LegendEntry> legend(List<Element.MulchedGround> elements) {
    return List.of(LegendEntry.area("Mulched ground", Palette.MULCHED_GROUND));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
