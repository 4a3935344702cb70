package yardloom.site.path;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;

/** Paths in their full width. */
public final class PathPainter extends ElementPainter<Element.Path> {
  public PathPainter() {
    super(Element.Path.class, new Layer("site.path", "Paths", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.Path element) {
    return List.of(new Mark.Region(element.shape(), Palette.PATH, element.id().toString()));
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Path> elements) {
    return List.of(LegendEntry.area("Path", Palette.PATH));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
