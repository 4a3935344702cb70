package yardloom.site.setback;

import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;

/** The setback lines: the edge of what all sides' setbacks leave of the lot. */
public final class SetbackPainter implements Painter {
  @Override
  public Layer layer() {
    return new Layer("site.setback", "Setback lines", Layer.Band.GROUND);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    if (!hasSetback(plan)) {
      return List.of();
    }
    Shape left = plan.lot().orElseThrow().insideSetbacks();
    return left.isEmpty()
        ? List.of()
        : List.of(new Mark.Region(left, Palette.SETBACK, "setback line"));
  }

  private static boolean hasSetback(Plan plan) {
    return plan.lot().stream()
        .flatMap(lot -> lot.edges().stream())
        .anyMatch(e -> e.setback().metres() > 0);
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return hasSetback(plan)
        ? List.of(LegendEntry.line("Setback line", Palette.SETBACK))
        : List.of();
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.LAYOUT);
  }
}
