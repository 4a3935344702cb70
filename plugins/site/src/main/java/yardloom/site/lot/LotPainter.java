package yardloom.site.lot;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** The ground of the lot. */
public final class LotPainter implements Painter {
  @Override
  public Layer layer() {
    return new Layer("site.lot", "Lot", Layer.Band.GROUND);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    return plan.lot().stream()
        .map(lot -> (Mark) new Mark.Region(lot.shape(), Palette.LOT, "lot"))
        .toList();
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
