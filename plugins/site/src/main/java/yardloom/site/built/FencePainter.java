package yardloom.site.built;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.site.element.ElementPainter;

/** Fences, walls and hedges: the line, and a disc where each post would stand in a long fence. */
public final class FencePainter extends ElementPainter<Element.Fence> {
  private static final double MARK_EVERY_M = 2.4;
  private static final Length POST = Length.metres(0.2);
  private static final Style POSTS =
      Style.filled("fence-mark", Palette.PAPER).outlined(Palette.FENCE.stroke(), 0.25);

  public FencePainter() {
    super(Element.Fence.class, new Layer("site.fence", "Fences", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.Fence fence) {
    String about = fence.id().toString();
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Stroke(fence.line(), Palette.FENCE, about));
    List<Point> points = fence.line().points();
    for (int i = 1; i < points.size(); i++) {
      alongSegment(points.get(i - 1), points.get(i), i == 1, about, marks);
    }
    return marks;
  }

  private static void alongSegment(
      Point from, Point to, boolean first, String about, List<Mark> marks) {
    int parts = (int) Math.max(1, Math.round(from.distance(to).metres() / MARK_EVERY_M));
    for (int k = first ? 0 : 1; k <= parts; k++) {
      Length right = to.x().minus(from.x()).times((double) k / parts);
      Length up = to.y().minus(from.y()).times((double) k / parts);
      marks.add(
          new Mark.Symbol(from.moved(right, up), SymbolForm.DISC, POST, Angle.ZERO, POSTS, about));
    }
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Fence> fences) {
    return List.of(LegendEntry.line("Fence, wall or hedge", Palette.FENCE));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
