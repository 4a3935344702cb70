package yardloom.site.lot;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** The lot line, above all ground so that nothing hides it. */
public final class LotLinePainter implements Painter {
  @Override
  public Layer layer() {
    return new Layer("site.lot-line", "Lot line", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    return plan.lot().stream()
        .map(lot -> (Mark) new Mark.Region(lot.shape(), Palette.LOT_LINE, "lot line"))
        .toList();
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return plan.lot().isEmpty()
        ? List.of()
        : List.of(LegendEntry.line("Lot line", Palette.LOT_LINE));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
