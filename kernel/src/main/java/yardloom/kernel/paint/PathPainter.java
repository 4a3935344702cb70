package yardloom.kernel.paint;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;

/** Paths in their full width. */
final class PathPainter extends ElementPainter<Element.Path> {
  PathPainter() {
    super(Element.Path.class, new Layer("kernel.path", "Paths", Layer.Band.WORKS));
  }

  @Override
  List<Mark> paint(Element.Path element) {
    return List.of(new Mark.Region(element.shape(), Palette.PATH, element.id().toString()));
  }

  @Override
  List<LegendEntry> legend(List<Element.Path> elements) {
    return List.of(LegendEntry.area("Path", Palette.PATH));
  }
}
