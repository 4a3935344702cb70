package yardloom.materials.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.materials.model.Material;
import yardloom.materials.model.Say;
import yardloom.materials.model.Surface;
import yardloom.materials.work.MaterialFacts;

/** Depth notes on every surface; they give way to other text where room is short. */
public final class DepthPainter implements Painter {
  private static final int RANK = 4;

  @Override
  public Layer layer() {
    return new Layer("materials.depths", "Mulch depths", Layer.Band.NOTES);
  }

  /** The materials sheet shows it; the site plan would be crowded. */
  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(MaterialFacts.SURFACES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (Surface s : facts.all(MaterialFacts.SURFACES)) {
      String text = note(s, plan.info().units());
      if (!text.isEmpty()) {
        marks.add(new Mark.Label(s.shape().heart(), text, 2.0, false, RANK, Mark.Anchor.NEAR));
      }
    }
    return marks;
  }

  private static String note(Surface s, UnitSystem units) {
    List<String> parts = new ArrayList<>();
    s.course(Material.WOOD_CHIPS)
        .ifPresent(c -> parts.add(Say.depth(c.depth().value(), units) + " chips"));
    s.course(Material.COMPOST)
        .ifPresent(c -> parts.add(Say.depth(c.depth().value(), units) + " compost"));
    return String.join(" / ", parts);
  }
}
