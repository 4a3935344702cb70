package yardloom.kernel.paint;

import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/** The setback lines: the edge of what all sides' setbacks leave of the lot. */
final class SetbackPainter implements Painter {
  @Override
  public Layer layer() {
    return new Layer("kernel.setback", "Setback lines", Layer.Band.GROUND);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    if (!hasSetback(plan)) {
      return List.of();
    }
    Shape left = left(plan.lot().orElseThrow());
    return left.isEmpty()
        ? List.of()
        : List.of(new Mark.Region(left, Palette.SETBACK, "setback line"));
  }

  private static boolean hasSetback(Plan plan) {
    return plan.lot().stream()
        .flatMap(lot -> lot.edges().stream())
        .anyMatch(e -> e.setback().metres() > 0);
  }

  private static Shape left(Lot lot) {
    Shape left = lot.shape();
    for (Lot.Edge edge : lot.edges()) {
      List<Point> points = edge.line().points();
      for (int i = 1; i < points.size() && edge.setback().metres() > 0; i++) {
        left = left.minus(strip(points.get(i - 1), points.get(i), edge.setback()));
      }
    }
    return left;
  }

  /** The strip along one side; the lot lies to the left of it. */
  private static Shape strip(Point from, Point to, Length width) {
    double length = from.distance(to).metres();
    Length right = Length.metres(-(to.y().metres() - from.y().metres()) / length * width.metres());
    Length up = Length.metres((to.x().metres() - from.x().metres()) / length * width.metres());
    return Shape.polygon(List.of(from, to, to.moved(right, up), from.moved(right, up)));
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return hasSetback(plan)
        ? List.of(LegendEntry.line("Setback line", Palette.SETBACK))
        : List.of();
  }
}
