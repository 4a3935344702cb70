package yardloom.site.built;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.built.Barrier;
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

/**
 * Walls by their ground. Fences and hedges: the line, and a disc where each post would stand in a
 * long fence: full in what is new, open in what is there already.
 */
public final class FencePainter extends ElementPainter<Element.Fence> {
  private static final Style WALL =
      Style.filled("wall", "#b9b2a4").outlined(Palette.FENCE.stroke(), 0.35);
  private static final double MARK_EVERY_M = 2.4;
  private static final Length POST = Length.metres(0.2);
  private static final Style NEW_POSTS =
      Style.filled("fence-mark", Palette.FENCE.stroke()).outlined(Palette.FENCE.stroke(), 0.25);
  private static final Style POSTS =
      Style.filled("fence-mark-existing", Palette.PAPER).outlined(Palette.FENCE.stroke(), 0.25);

  public FencePainter() {
    super(Element.Fence.class, new Layer("site.fence", "Fences", Layer.Band.WORKS));
  }

  @Override
  protected List<Mark> paint(Element.Fence fence) {
    String about = fence.id().toString();
    List<Mark> marks = new ArrayList<>();
    if (isWall(fence)) {
      marks.add(new Mark.Region(fence.shape(), style(fence, WALL), about));
      return marks;
    }
    marks.add(new Mark.Stroke(fence.line(), style(fence, Palette.FENCE), about));
    List<Point> points = fence.line().points();
    for (int i = 1; i < points.size(); i++) {
      alongSegment(points.get(i - 1), points.get(i), i == 1, fence, marks);
    }
    return marks;
  }

  private static void alongSegment(
      Point from, Point to, boolean first, Element.Fence fence, List<Mark> marks) {
    String about = fence.id().toString();
    Style posts = fence.stands() ? POSTS : NEW_POSTS;
    int parts = (int) Math.max(1, Math.round(from.distance(to).metres() / MARK_EVERY_M));
    for (int k = first ? 0 : 1; k <= parts; k++) {
      Length right = to.x().minus(from.x()).times((double) k / parts);
      Length up = to.y().minus(from.y()).times((double) k / parts);
      marks.add(
          new Mark.Symbol(from.moved(right, up), SymbolForm.DISC, POST, Angle.ZERO, posts, about));
    }
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Fence> fences) {
    List<Element.Fence> walls = fences.stream().filter(FencePainter::isWall).toList();
    List<Element.Fence> others = fences.stream().filter(f -> !isWall(f)).toList();
    List<LegendEntry> entries =
        new ArrayList<>(byStanding(others, "Fence or hedge", Palette.FENCE, LegendEntry::line));
    entries.addAll(byStanding(walls, "Wall", WALL, LegendEntry::area));
    return entries;
  }

  private static boolean isWall(Element.Fence fence) {
    return fence.attributes().get(Barrier.KEY).filter(b -> b.made().isWall()).isPresent();
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
