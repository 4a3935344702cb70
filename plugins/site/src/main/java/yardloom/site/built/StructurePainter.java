package yardloom.site.built;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;
import yardloom.site.ground.BermWords;
import yardloom.site.ground.LevelWords;

/** Sheds, decks and other built things; swales have a painter of their own. */
public final class StructurePainter extends ElementPainter<Element.Structure> {
  public StructurePainter() {
    super(Element.Structure.class, new Layer("site.structure", "Structures", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.Structure element) {
    return isSwale(element) || BermWords.isBerm(element)
        ? List.of()
        : List.of(
            new Mark.Region(
                element.shape(), style(element, Palette.STRUCTURE), element.id().toString()));
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Structure> elements) {
    List<Element.Structure> drawn =
        elements.stream().filter(e -> !isSwale(e) && !BermWords.isBerm(e)).toList();
    return byStanding(drawn, "Structure", Palette.STRUCTURE, LegendEntry::area);
  }

  /** Whether it is a hollow in the ground, not a thing on it. */
  public static boolean isSwale(Element.Structure element) {
    return element.attributes().get(LevelWords.SwaleLine.KEY).isPresent();
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
