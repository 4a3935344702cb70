package yardloom.site.settingout;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** The two points, A and B, from which tapes set out the beds and paths. */
public final class TapePointPainter implements Painter {
  private static final double LETTER_MM = 2.5;

  @Override
  public Layer layer() {
    return new Layer("site.tape-points", "Points to set out from", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    return SettingOut.of(plan).tapes().stream()
        .flatMap(t -> Stream.concat(marked(t.a(), "A"), marked(t.b(), "B")))
        .toList();
  }

  static Stream<Mark> marked(Point at, String letter) {
    return Stream.of(
        new Mark.Symbol(
            at,
            SymbolForm.TRIANGLE,
            Length.ZERO,
            Angle.ZERO,
            Palette.TAPE_POINT,
            "set out from " + letter),
        new Mark.Label(at, letter, LETTER_MM, true, 1, Mark.Anchor.NEAR));
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return SettingOut.of(plan).tapes().isEmpty()
        ? List.of()
        : List.of(
            LegendEntry.symbol("Set out from A and B", SymbolForm.TRIANGLE, Palette.TAPE_POINT));
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.STAKE, SheetPage.LAYOUT, SheetPage.CREW);
  }
}
