package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.UnitSystem;

/** Depths of surfaces that differ from what {@link SurfacePainter} has in the legend. */
public final class DepthPainter implements Painter {
  /** Its layer, which the materials sheet shows. */
  public static final String LAYER = "materials.depths";

  private static final int RANK = 4;

  @Override
  public Layer layer() {
    return new Layer(LAYER, "Mulch depths", Layer.Band.NOTES);
  }

  /** The materials sheet shows it; the site plan would be crowded. */
  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.SHEET, WorkPhase.FINISH, WorkPhase.LATER);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    UnitSystem units = plan.info().units();
    List<MulchSurface> surfaces = facts.all(YardFacts.SURFACES);
    Map<SurfaceKind, String> usual = DepthNotes.usual(surfaces, units);
    List<Mark> marks = new ArrayList<>();
    for (MulchSurface s : surfaces) {
      String text = DepthNotes.of(s, units);
      if (!text.isEmpty() && !text.equals(usual.get(s.kind()))) {
        // With the name of the bed or path in one text, where it has one.
        Shape named = plan.element(s.of()).map(Element::shape).orElse(s.shape());
        Shape ground = named.isEmpty() ? s.shape() : named;
        marks.add(
            new Mark.Label(ground.heart(), text, 2.0, false, RANK, Mark.Anchor.NEAR).on(ground));
      }
    }
    return marks;
  }
}
