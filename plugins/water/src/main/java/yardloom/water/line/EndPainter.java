package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** The outlet of each zone where least presses, with what presses: where a gauge is put. */
public final class EndPainter implements Painter {
  private static final Style END = Style.filled("zone-end", "#ffffff").outlined("#0b3c5d", 0.35);
  private static final int RANK = 3;

  @Override
  public Layer layer() {
    return new Layer("water.zone-ends", "Pressure at zone ends", Layer.Band.WATER);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(ZoneLine.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.IRRIGATION);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    TableFormat format = new TableFormat(plan.info().units(), plan.info().currency());
    List<Mark> marks = new ArrayList<>();
    for (ZoneLine zone : facts.all(ZoneLine.KEY)) {
      String text =
          "Z" + zone.number() + ": " + format.withUnit(Measure.PRESSURE, zone.least().value());
      marks.add(
          new Mark.Symbol(
              zone.end(),
              Mark.SymbolForm.TRIANGLE,
              Length.ZERO,
              Angle.ZERO,
              END,
              "least pressure of zone " + zone.number()));
      marks.add(new Mark.Label(zone.end(), text, 2, false, RANK, Mark.Anchor.NEAR));
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return facts.all(ZoneLine.KEY).isEmpty()
        ? List.of()
        : List.of(LegendEntry.symbol("Least pressure of a zone", Mark.SymbolForm.TRIANGLE, END));
  }
}
