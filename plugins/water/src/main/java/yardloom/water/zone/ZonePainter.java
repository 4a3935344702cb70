package yardloom.water.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;

/** Says at each bed which zone waters it; on the irrigation sheet only. */
public final class ZonePainter implements Painter {
  private static final int LABEL_RANK = 2;

  @Override
  public Layer layer() {
    return new Layer("water.zones", "Zones", Layer.Band.WATER);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Zone.KEY);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (Zone zone : facts.all(Zone.KEY)) {
      for (ElementId id : zone.beds()) {
        plan.element(id)
            .ifPresent(
                bed ->
                    marks.add(
                        new Mark.Label(
                                bed.shape().heart(),
                                "Zone " + zone.number(),
                                2,
                                true,
                                LABEL_RANK,
                                Mark.Anchor.NEAR)
                            .on(bed.shape())));
      }
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return List.of();
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.IRRIGATION);
  }
}
