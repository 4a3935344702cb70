package yardloom.site.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.plan.Element;
import yardloom.kernel.table.SheetUse;
import yardloom.site.element.ElementPainter;
import yardloom.site.element.Show;

/** Buried and overhead lines, with the ground in which nobody digs. */
public final class UtilityPainter extends ElementPainter<Element.Utility> {
  private static final double TEXT_MM = 2;

  public UtilityPainter() {
    super(Element.Utility.class, new Layer("site.utility", "Utilities", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.Utility utility) {
    String about = utility.id().toString();
    List<Mark> marks = new ArrayList<>();
    if (!utility.shape().isEmpty()) {
      marks.add(new Mark.Region(utility.shape(), Palette.CLEARANCE, about));
    }
    marks.add(new Mark.Stroke(utility.line(), Palette.UTILITY, about));
    String carried = utility.carries();
    String text = carried.isBlank() ? Show.name(utility) : Show.capital(carried);
    marks.add(new Mark.Label(utility.line().middle(), text, TEXT_MM, true, 1, Mark.Anchor.NEAR));
    return marks;
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Utility> utilities) {
    return List.of(
        LegendEntry.line("Utility line, place not verified", Palette.UTILITY),
        LegendEntry.line("Edge of its clearance", Palette.CLEARANCE));
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(
        SheetPage.WAYS,
        SheetPage.LAYOUT,
        SheetPage.GRADING,
        SheetPage.PLANTING,
        SheetPage.IRRIGATION);
  }
}
