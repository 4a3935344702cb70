package yardloom.water.line;

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
import yardloom.water.drip.DripRun;
import yardloom.water.zone.Zone;

/**
 * Draws the rows of dripline and the header that joins them; rows of different zones have different
 * dashes, which stay apart in black and white.
 */
public final class DripPainter implements Painter {
  private static final List<String> DASHES =
      List.of("2 0.8", "0.6 0.6", "4 0.8 0.6 0.8", "4 0.8", "1.2 0.5 0.4 0.5 0.4 0.5", "6 1.6");
  private static final String COLOUR = "#1f6fb2";
  private static final Style HEADER = Style.line("drip-header", COLOUR, 0.35);

  @Override
  public Layer layer() {
    return new Layer("water.dripline", "Dripline", Layer.Band.WATER);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY, BedHydraulics.KEY, Zone.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.DRIP, SheetPage.IRRIGATION);
  }

  private static Style row(int zone) {
    return Style.line("dripline-" + zone, COLOUR, 0.18)
        .dashed(DASHES.get((zone - 1) % DASHES.size()));
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (DripRun run : facts.all(DripRun.KEY)) {
      Style style = row(BedHydraulics.of(run.bed(), facts).zone());
      for (Line row : run.rows()) {
        marks.add(new Mark.Stroke(row, style, "dripline in " + run.bed().name()));
      }
      for (Line header : run.headers()) {
        marks.add(new Mark.Stroke(header, HEADER, "header in " + run.bed().name()));
      }
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    List<LegendEntry> entries = new ArrayList<>();
    for (Zone zone : facts.all(Zone.KEY)) {
      entries.add(LegendEntry.line("Dripline of zone " + zone.number(), row(zone.number())));
    }
    if (!entries.isEmpty()) {
      entries.add(LegendEntry.line("Drip header", HEADER));
    }
    return entries;
  }
}
