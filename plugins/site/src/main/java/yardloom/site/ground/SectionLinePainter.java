package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/** Where the section down the slope is cut: its ends, lettered, with the way that it is seen. */
public final class SectionLinePainter implements Painter {
  private static final Style LINE = Style.line("section-line", Palette.INK, 0.5);
  private static final double LONG_M = 1;
  private static final double LETTER_M = 0.6;
  private static final double LETTER_MM = 3.5;

  @Override
  public Layer layer() {
    return new Layer("site.section-line", "Section line", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    SlopeSection.worthDrawing(plan)
        .ifPresent(
            section -> {
              Line cut = section.cut();
              end(section, cut.end(), cut.start(), marks);
              end(section, cut.start(), cut.end(), marks);
            });
    return marks;
  }

  /** Outwards from one end, away from the other. */
  private static void end(SlopeSection section, Point from, Point at, List<Mark> marks) {
    double far = at.distance(from).metres();
    double east = (at.x().metres() - from.x().metres()) / far;
    double north = (at.y().metres() - from.y().metres()) / far;
    Point out = moved(at, east, north, LONG_M);
    marks.add(new Mark.Stroke(Line.between(at, out), LINE, "section line"));
    marks.add(
        new Mark.Symbol(
            out, Mark.SymbolForm.ARROW, Length.ZERO, section.seen(), LINE, "section line"));
    Point letter = moved(out, east, north, LETTER_M);
    marks.add(new Mark.Label(letter, SlopeSection.LETTER, LETTER_MM, true, 1, Mark.Anchor.CENTRE));
  }

  private static Point moved(Point at, double east, double north, double metres) {
    return at.moved(Length.metres(east * metres), Length.metres(north * metres));
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return SlopeSection.worthDrawing(plan).isEmpty()
        ? List.of()
        : List.of(
            LegendEntry.symbol(
                "Section " + SlopeSection.NAME + ", seen as the arrows point",
                Mark.SymbolForm.ARROW,
                LINE));
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.GRADING);
  }
}
