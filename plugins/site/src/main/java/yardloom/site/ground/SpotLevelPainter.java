package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.ground.Spot;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** The levels that were measured, each a cross with its figure: all else is read between them. */
public final class SpotLevelPainter implements Painter {
  private static final Style CROSS = Style.line("spot-level", "#5a3d10", 0.25);

  @Override
  public Layer layer() {
    return new Layer("site.spot-levels", "Levels", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    for (Spot spot : surface.map(Surface::spots).orElse(List.of())) {
      String text = LevelText.of(plan, spot.level());
      marks.add(
          new Mark.Symbol(
              spot.at(), Mark.SymbolForm.CROSS, Length.ZERO, Angle.ZERO, CROSS, "level " + text));
      marks.add(new Mark.Label(spot.at(), text, 2, false, 5, Mark.Anchor.POINT));
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return paint(plan, facts).isEmpty()
        ? List.of()
        : List.of(LegendEntry.symbol("Measured level", Mark.SymbolForm.CROSS, CROSS));
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.GRADING);
  }
}
