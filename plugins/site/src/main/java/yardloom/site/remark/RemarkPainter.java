package yardloom.site.remark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Notes and dimensions that the plan asks for. */
public final class RemarkPainter implements Painter {
  private static final double LETTER_MM = 2.5;
  private static final Style DOT = Style.filled("note", Palette.INK);

  @Override
  public Layer layer() {
    return new Layer("site.remarks", "Notes and dimensions of the plan", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    plan.attributes()
        .all(Remark.NOTE)
        .forEach(
            e -> {
              Remark.Note note = e.value();
              marks.add(
                  new Mark.Symbol(
                      note.at(), Mark.SymbolForm.DOT, Length.ZERO, Angle.ZERO, DOT, "note"));
              marks.add(
                  new Mark.Label(note.at(), note.text(), LETTER_MM, false, 1, Mark.Anchor.NEAR));
            });
    plan.attributes()
        .all(Remark.MEASURED)
        .forEach(
            e -> {
              Remark.Measured m = e.value();
              String length = DimensionText.of(m.from().distance(m.to()), plan.info().units());
              String text = m.text().isEmpty() ? length : m.text() + " " + length;
              marks.add(new Mark.Dimension(m.from(), m.to(), m.offset(), text));
            });
    return marks;
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.LAYOUT, SheetPage.CREW);
  }
}
