package yardloom.materials.goods;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.materials.goods.formula.TrellisParts;

/** Trellises and espaliers: the wires as a line, and each post where it stands. */
public final class TrellisPainter implements Painter {
  private static final Style WIRE = Style.line("trellis", "#5b3f24", 0.35).dashed("4 0.8 0.8 0.8");
  private static final Style POST = Style.filled("trellis-post", "#5b3f24");

  /** Twice a post's own size, so that it is seen. */
  private static final Length POST_DRAWN = Length.metres(0.2);

  private static final int LABEL_RANK = 3;

  @Override
  public Layer layer() {
    return new Layer("materials.trellis", "Trellises", Layer.Band.WORKS);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.WAYS);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (var entry : plan.attributes().all(Trellis.KEY)) {
      Trellis trellis = entry.value();
      marks.add(new Mark.Stroke(trellis.line(), WIRE, trellis.name()));
      TrellisParts.places(trellis.line(), trellis.spacing())
          .forEach(
              at ->
                  marks.add(
                      new Mark.Symbol(at, SymbolForm.DISC, POST_DRAWN, Angle.ZERO, POST, "post")));
      marks.add(
          new Mark.Label(
              trellis.line().middle(), trellis.name(), 2, false, LABEL_RANK, Mark.Anchor.NEAR));
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return plan.attributes().all(Trellis.KEY).isEmpty()
        ? List.of()
        : List.of(LegendEntry.line("Trellis with posts", WIRE));
  }
}
