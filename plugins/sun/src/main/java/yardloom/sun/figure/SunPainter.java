package yardloom.sun.figure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Layer.Band;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.sun.yard.SunField;

/** Direct sun of the season on the site plan; off unless asked for. */
public final class SunPainter implements Painter {
  private static final double LABEL_M = 0.6;

  @Override
  public Layer layer() {
    return new Layer("sun.hours", "Direct sun in the season", Band.GROUND);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SunField.KEY);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    Optional<SunField> field = facts.find(SunField.KEY);
    if (field.isEmpty()) {
      return List.of();
    }
    HourBands.Bands bands =
        new HourBands.Bands(
            field.get().season(),
            YardOutline.groundOf(plan),
            YardOutline.roomOf(plan),
            LABEL_M,
            0,
            0);
    return HourBands.marks("season", List.of(bands)).get(0);
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return HourBands.legend();
  }
}
