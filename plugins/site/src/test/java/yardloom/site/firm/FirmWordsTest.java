package yardloom.site.firm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.OwnPanel;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Theme;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.remark.RemarkWords;

/** What the words for theme, details and notes take, and what they give. */
class FirmWordsTest {
  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "€"));
  private int line;

  private PlanScope in(String file) {
    return new PlanScope(draft, new SourceRef(file, ++line, 1));
  }

  private static PlanException refused(Runnable what) {
    return assertThrows(PlanException.class, what::run);
  }

  private static Length mm(double n) {
    return Length.metres(n / 1000);
  }

  private static Shape box(double x, double y, double width, double height) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(width), Length.metres(height));
  }

  /**
   * Grey #767676 on white is 4.54 and #777777 4.48, #949494 3.03 and #959595 2.995: the boundaries
   * of WCAG 2.2 as in drawing.md K-02 and K-03.
   */
  @ParameterizedTest
  @CsvSource({"#767676,true", "#949494,true", "#959595,false", "#ffffff,false"})
  void line_hasAContrastOfThreeToPaper(String colour, boolean taken) {
    Runnable said = () -> ThemeWords.theme(in("a"), "bed", null, colour, null);
    if (taken) {
      said.run();
      assertEquals(colour, Theme.of(draft.freeze()).of(Palette.BED).stroke());
    } else {
      assertTrue(refused(said).getMessage().contains("at least 3.0 is needed"));
    }
  }

  @Test
  void fill_keepsBothInksLegible_andIsDistinctFromItsLine() {
    String dark =
        refused(() -> ThemeWords.theme(in("a"), "bed", "#8aa070", null, null)).getMessage();
    assertTrue(dark.contains("at least 4.5 is needed; take a paler one"), dark);
    // #949494 has 3.03 to white and less to anything darker.
    String faint =
        refused(() -> ThemeWords.theme(in("a"), "path", "#f4f4f4", "#949494", null)).getMessage();
    assertTrue(faint.contains("to the fill (#f4f4f4)"), faint);
    ThemeWords.theme(in("a"), "path", "#F4F4F4", "#444444", mm(0.7));
    assertEquals("#f4f4f4", Theme.of(draft.freeze()).of(Palette.PATH).fill());
    assertEquals(0.7, Theme.of(draft.freeze()).of(Palette.PATH).strokeMm(), 1e-9);
    assertEquals(Palette.PATH.hatch(), Theme.of(draft.freeze()).of(Palette.PATH).hatch());
  }

  @ParameterizedTest
  @ValueSource(strings = {"red", "#fff", "#12345g", "url(#x)", "#ffffff;x"})
  void colour_isRedGreenAndBlue(String said) {
    String told = refused(() -> ThemeWords.theme(in("a"), "bed", said, null, null)).getMessage();
    assertTrue(told.contains("got '" + said + "'"), told);
  }

  @Test
  void weightAndLetters_haveRanges() {
    String thin = refused(() -> ThemeWords.theme(in("a"), "bed", null, null, mm(0.1))).getMessage();
    assertTrue(thin.contains("0.13 to 1 mm on paper, got 0.1 mm"), thin);
    for (double capitals : new double[] {2.3, 3.1}) {
      String told = refused(() -> ThemeWords.themeText(in("a"), null, mm(capitals))).getMessage();
      assertTrue(told.contains("2.4 to 3 mm on paper, got " + capitals + " mm"), told);
    }
    ThemeWords.themeText(in("a"), null, mm(3));
    assertEquals(1.25, Theme.of(draft.freeze()).letters(), 1e-9);
  }

  @Test
  void nothingSaid_isAnError_andAPartIsSaidOnceInAFile() {
    assertTrue(
        refused(() -> ThemeWords.theme(in("a"), "bed", null, null, null))
            .getMessage()
            .contains("changes nothing"));
    ThemeWords.theme(in("firm"), "bed", null, "#000000", null);
    assertTrue(
        refused(() -> ThemeWords.theme(in("firm"), "bed", null, "#111111", null))
            .getMessage()
            .contains("already given at firm:"));
    ThemeWords.theme(in("plan"), "bed", null, "#222222", null);
    assertEquals("#222222", Theme.of(draft.freeze()).of(Palette.BED).stroke());
    assertEquals(Palette.UTILITY, Theme.of(draft.freeze()).of(Palette.UTILITY));
    assertEquals("#222222", Theme.of(draft.freeze()).of(Palette.BED.existing()).stroke());
  }

  @Test
  void detail_isAFigureAtScale_itsMeasuresInThePlansUnits_itsTextsOnWhatIsSeen() {
    DetailWords.detail(
        in("a"),
        "Edge",
        5,
        "planting",
        d -> {
          DetailWords.piece(d, box(0, 0, 2, 1), "soil", "Ground");
          DetailWords.piece(d, box(0, 0, 1.5, 1), "water", null);
          DetailWords.measure(d, Point.metres(0, 0), Point.metres(0, 0.45), null);
        });
    List<Panel> own = OwnPanel.of(draft.freeze(), "planting"::equals);
    Panel.Figure figure = (Panel.Figure) own.get(0);
    assertEquals(5, figure.scaleDenominator());
    assertEquals(List.of("soil", "water"), figure.legend().stream().map(l -> l.text()).toList());
    Mark.Label label = (Mark.Label) figure.marks().get(1);
    // Of 0 to 2 m the water hides 0 to 1.5.
    assertEquals(0.5, label.ground().orElseThrow().area().squareMetres(), 1e-9);
    assertTrue(label.at().x().metres() > 1.5, label.toString());
    assertTrue(
        figure.marks().stream()
            .anyMatch(m -> m instanceof Mark.Dimension d && d.text().equals("0.45 m")),
        figure.marks().toString());
    assertEquals(List.of(), OwnPanel.of(draft.freeze(), "layout"::equals));
  }

  @Test
  void detail_errors() {
    assertTrue(
        refused(() -> DetailWords.detail(in("a"), "Bare", 10, null, null))
            .getMessage()
            .contains("draws nothing"));
    for (double scale : new double[] {0.5, 51, Double.NaN}) {
      assertTrue(
          refused(
                  () ->
                      DetailWords.detail(
                          in("a"),
                          "X",
                          scale,
                          null,
                          d -> DetailWords.piece(d, box(0, 0, 1, 1), "wood", null)))
              .getMessage()
              .contains("1:1 to 1:50"));
    }
    assertTrue(
        refused(
                () ->
                    DetailWords.detail(
                        in("a"),
                        "X",
                        10,
                        null,
                        d -> DetailWords.piece(d, box(0, 0, 31, 1), "wood", null)))
            .getMessage()
            .contains("at most 30.00 m"));
  }

  @Test
  void notes_ofASheetStandUnderOneHeading_andAPointTakesNoSheet() {
    RemarkWords.note(in("firm"), "First.", null, null);
    RemarkWords.note(in("a"), "Second.", null, "layout");
    RemarkWords.note(in("a"), "Elsewhere.", null, "planting");
    assertEquals(
        List.of(new Panel.Notes("Notes", List.of("First.", "Second."))),
        OwnPanel.of(draft.freeze(), "layout"::equals));
    assertTrue(
        refused(() -> RemarkWords.note(in("a"), "x", Point.metres(0, 0), "layout"))
            .getMessage()
            .contains("leave out `sheet:`"));
    assertEquals(Optional.empty(), Theme.of(draft.freeze()).headings());
  }
}
