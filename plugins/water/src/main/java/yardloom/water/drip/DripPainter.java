package yardloom.water.drip;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;

/** Draws the rows of dripline and the header that joins them. */
public final class DripPainter implements Painter {
  private static final Style ROW = Style.line("dripline", "#1f6fb2", 0.18).dashed("2 0.8");
  private static final Style HEADER = Style.line("drip-header", "#1f6fb2", 0.35);

  @Override
  public Layer layer() {
    return new Layer("water.dripline", "Dripline", Layer.Band.WATER);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.DRIP, SheetPage.IRRIGATION);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (DripRun run : facts.all(DripRun.KEY)) {
      for (Line row : run.rows()) {
        marks.add(new Mark.Stroke(row, ROW, "dripline in " + run.bed().name()));
      }
      for (Line header : run.headers()) {
        marks.add(new Mark.Stroke(header, HEADER, "header in " + run.bed().name()));
      }
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    if (facts.all(DripRun.KEY).isEmpty()) {
      return List.of();
    }
    return List.of(LegendEntry.line("Dripline", ROW), LegendEntry.line("Drip header", HEADER));
  }
}
