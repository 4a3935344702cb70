package yardloom.site.settingout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.survey.TapePair;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** The points that tapes set out, under the numbers that the crew's list has, and A and B. */
public final class TapeNumberPainter implements Painter {
  private static final double NUMBER_MM = 2;

  /** Before names: a crew that cannot find a number cannot read the list. */
  private static final int RANK = 1;

  @Override
  public Layer layer() {
    return new Layer("site.tape-numbers", "Points to set out", Layer.Band.NOTES);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    SettingOut work = SettingOut.of(plan);
    List<Mark> marks = new ArrayList<>();
    if (work.tapes().isEmpty()) {
      return marks;
    }
    TapePair tapes = work.tapes().get();
    TapePointPainter.marked(tapes.a(), "A").forEach(marks::add);
    TapePointPainter.marked(tapes.b(), "B").forEach(marks::add);
    int number = 1;
    for (SettingOut.Figure figure : work.figures()) {
      for (int i = 0; i < figure.points().size(); i++) {
        Point at = figure.points().get(i);
        boolean isNumbered = i == 0 || !work.isCrowded();
        String text = String.valueOf(number++);
        String about = (isNumbered ? "point " + text : "further point") + " of " + figure.name();
        marks.add(
            new Mark.Symbol(
                at, SymbolForm.DOT, Length.ZERO, Angle.ZERO, Palette.SET_OUT_POINT, about));
        if (isNumbered) {
          marks.add(new Mark.Label(at, text, NUMBER_MM, true, RANK, Mark.Anchor.POINT));
        }
      }
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return SettingOut.of(plan).tapes().isEmpty()
        ? List.of()
        : List.of(
            LegendEntry.symbol(
                "Point to set out, numbered as under Tapes",
                SymbolForm.DOT,
                Palette.SET_OUT_POINT));
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.POINTS);
  }
}
