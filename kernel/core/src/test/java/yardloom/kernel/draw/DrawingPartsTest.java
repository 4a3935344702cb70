package yardloom.kernel.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** What painters and makers of sheets put together. */
class DrawingPartsTest {
  private final Style bed = Style.filled("bed", "#dfe9d2");

  @Test
  void style_keepsWhatIsNotChanged() {
    Style hatched = bed.hatched(Style.Hatch.DOTS).outlined("#3f6212", 0.35).dashed("3 1");
    assertEquals(new Style("bed", "#dfe9d2", Style.Hatch.DOTS, "#3f6212", 0.35, "3 1"), hatched);
    assertEquals(
        new Style("bed-existing", "#dfe9d2", Style.Hatch.DOTS, "#3f6212", 0.35, "2 0.8"),
        hatched.existing());
    assertEquals(
        new Style("lot", "", Style.Hatch.NONE, "#1d2722", 0.7, ""),
        Style.line("lot", "#1d2722", 0.7));
  }

  @Test
  void legend_showsAreaLineSymbolOrRing() {
    LegendEntry area = LegendEntry.area("bed", bed);
    assertEquals(new LegendEntry("bed", bed, Optional.empty(), false, Optional.empty()), area);
    assertEquals(
        new LegendEntry("kale", bed, Optional.empty(), false, Optional.empty()),
        area.called("kale"));
    assertEquals(
        new LegendEntry("drip", bed, Optional.empty(), true, Optional.empty()),
        LegendEntry.line("drip", bed));
    Style ring = Style.line("ring", "#1d2722", 0.18);
    assertEquals(
        new LegendEntry("tree", bed, Optional.of(Mark.SymbolForm.DISC), false, Optional.of(ring)),
        LegendEntry.ringed("tree", Mark.SymbolForm.DISC, bed, ring));
    assertEquals(
        new LegendEntry("tap", bed, Optional.of(Mark.SymbolForm.TAP), false, Optional.empty()),
        LegendEntry.symbol("tap", Mark.SymbolForm.TAP, bed));
  }

  @Test
  void symbols_ofTrueSize_areCrownsAndDiscs() {
    assertEquals(
        List.of(
            Mark.SymbolForm.CROWN_DECIDUOUS, Mark.SymbolForm.CROWN_EVERGREEN, Mark.SymbolForm.DISC),
        Stream.of(Mark.SymbolForm.values()).filter(Mark.SymbolForm::isTrueSize).toList());
  }

  @Test
  void label_ofGround_knowsIt() {
    Shape ground = Shape.rectangle(Point.metres(0, 0), Length.metres(2), Length.metres(3));
    Mark.Label label = new Mark.Label(Point.metres(1, 1), "kale", 2.5, true, 3, Mark.Anchor.CENTRE);
    assertEquals(Optional.empty(), label.ground());
    assertEquals(
        new Mark.Label(
            Point.metres(1, 1), "kale", 2.5, true, 3, Mark.Anchor.CENTRE, Optional.of(ground)),
        label.on(ground));
  }

  @Test
  void layers_areOrderedByBandThenName() {
    Layer water = new Layer("a.water", "W", Layer.Band.WATER);
    Layer beds = new Layer("b.beds", "B", Layer.Band.PLANTS);
    Layer trees = new Layer("c.trees", "T", Layer.Band.PLANTS);
    assertEquals(List.of(beds, trees, water), Stream.of(water, trees, beds).sorted().toList());
  }

  @Test
  void sheets_areOrderedByNumberThenName_andPagesArePocketSize() {
    SheetPlan two = new SheetPlan(2, "b", "B", List.of());
    SheetPlan twoA = new SheetPlan(2, "a", "A", SheetPlan.Format.PAGE, List.of());
    SheetPlan ten = new SheetPlan(10, "a", "A", List.of());
    assertEquals(List.of(twoA, two, ten), Stream.of(ten, two, twoA).sorted().toList());
    assertFalse(SheetPlan.Format.SHEET.isPocket());
    assertTrue(SheetPlan.Format.PAGE.isPocket());
    assertTrue(SheetPlan.Format.BOOKLET.isPocket());
    assertEquals(
        new SheetPlan(2, "b", "B", SheetPlan.Format.SHEET, List.of(), false), two.onRequest());
    List<Panel> index = List.of(new Panel.SheetIndex());
    assertEquals(
        new SheetPlan(2, "a", "A", SheetPlan.Format.PAGE, index, false),
        twoA.onRequest().with(index));
  }

  @Test
  void sitePlans_startFromTheirBase() {
    Set<String> layers = Set.of("a.b");
    assertEquals(new Panel.SitePlan(Panel.SitePlan.Base.SHOWN, Set.of()), Panel.SitePlan.shown());
    assertEquals(
        new Panel.SitePlan(Panel.SitePlan.Base.YARD, layers), Panel.SitePlan.yardWith(layers));
    assertEquals(
        new Panel.SitePlan(Panel.SitePlan.Base.NAMED, layers), Panel.SitePlan.only(layers));
  }

  @Test
  void diary_isOrderedByDays() {
    DiaryEntry sow = entry("z", 4, 9);
    DiaryEntry mow = entry("a", 4, 11);
    DiaryEntry fix = entry("b", 4, 11);
    DiaryEntry cut = entry("a", 3, 30);
    assertEquals(List.of(cut, sow, mow, fix), Stream.of(fix, mow, cut, sow).sorted().toList());
  }

  private static DiaryEntry entry(String key, int from, int until) {
    return new DiaryEntry(
        key, LocalDate.of(2026, 5, from), LocalDate.of(2026, 5, until), "t", "", 0);
  }
}
