package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Xy;

class SheetComposerTest {
  private static final FontWidths WIDTHS = FontWidths.shipped();
  private static final PlanInfo INFO =
      new PlanInfo("p", "Plan", "", "", "", "", UnitSystem.METRIC, "€");

  static Stream<Paper> papers() {
    return Paper.all().stream();
  }

  @ParameterizedTest
  @MethodSource("papers")
  void demoYard_onEveryPaper_passesTheAudit(Paper paper) {
    for (UnitSystem units : UnitSystem.values()) {
      for (ComposedSheet sheet : compose(DemoSheet.request(paper, units))) {
        assertEquals(List.of(), InkAudit.problems(sheet, WIDTHS));
      }
    }
  }

  /** D-11: the front of 60 ft is 190.5 mm long at 1/8" = 1'-0" (1:96), and the side 381 mm. */
  @Test
  void sitePlan_onArchC_isTrueToScale() {
    ComposedSheet sheet = compose(DemoSheet.request(Paper.named("ARCH C"), UnitSystem.US)).get(0);
    assertEquals("1/8\" = 1'-0\"", sheet.scale());
    List<Xy> corners = path(sheet.inks(), "lot-line").tracks().get(0).points();
    assertEquals(190.5, span(corners.stream().map(Xy::x).toList()), 1e-6);
    assertEquals(381, span(corners.stream().map(Xy::y).toList()), 1e-6);
  }

  private static double span(List<Double> values) {
    return values.stream().max(Double::compare).get() - values.stream().min(Double::compare).get();
  }

  private static Ink.Path path(List<Ink> inks, String style) {
    return paths(inks).filter(p -> p.style().name().equals(style)).findFirst().orElseThrow();
  }

  private static Stream<Ink.Path> paths(List<Ink> inks) {
    return inks.stream()
        .flatMap(
            ink ->
                ink instanceof Ink.Group group
                    ? paths(group.inks())
                    : ink instanceof Ink.Path path ? Stream.of(path) : Stream.of());
  }

  @Test
  void sitePlan_automaticScale_isTheLargestThatFits() {
    Paper paper = Paper.named("ARCH C");
    SheetRequest request = DemoSheet.request(paper, UnitSystem.US);
    Scale larger = Scale.of(48, UnitSystem.US);
    PlanException e =
        assertThrows(PlanException.class, () -> compose(request.withScale(Optional.of(larger))));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("1\" = 10'"), e.getMessage());
  }

  /** D-25, D-26: written and graphic scale, north arrow, dimensions, date on a permit plan. */
  @Test
  void sitePlan_permitContent_isThere() {
    ComposedSheet sheet = compose(DemoSheet.request(Paper.named("ARCH C"), UnitSystem.US)).get(0);
    List<String> texts = InkAudit.texts(sheet).stream().map(Ink.Text::content).toList();
    for (String wanted :
        List.of("N", "Scale 1/8\" = 1'-0\" (1:96)", "20 ft", "60'-0\"", "120'-0\"", "1 Mar 2026")) {
      assertTrue(texts.contains(wanted), wanted + " in " + texts);
    }
    assertTrue(texts.contains("1 of 1"));
  }

  @Test
  void sitePlan_nothingToDraw_saysSo() {
    SheetPlan empty = new SheetPlan(1, "site-plan", "Site plan", List.of(Panel.SitePlan.shown()));
    assertThrows(
        PlanException.class, () -> compose(SheetRequest.of(empty, Paper.named("A3"), INFO)));
  }

  @Test
  void set_withOverflow_isNumberedThrough() {
    SheetRequest plan = DemoSheet.request(Paper.named("ARCH A"), UnitSystem.US);
    SheetPlan second =
        new SheetPlan(
            2, "notes", "Notes", List.of(new Panel.Notes("Method", List.of("Measured."))));
    List<ComposedSheet> set =
        new SheetComposer(WIDTHS)
            .composeSet(List.of(SheetRequest.of(second, plan.paper(), INFO), plan));
    List<String> ids = set.stream().map(ComposedSheet::id).toList();
    assertEquals("site-plan", ids.get(0));
    assertEquals("site-plan-2", ids.get(1));
    assertEquals("notes", ids.get(ids.size() - 1));
    for (int i = 0; i < set.size(); i++) {
      assertEquals(i + 1, set.get(i).number());
      String sheetOf = (i + 1) + " of " + set.size();
      assertTrue(InkAudit.texts(set.get(i)).stream().anyMatch(t -> t.content().equals(sheetOf)));
    }
  }

  /** The cover is 1; the long sheet runs over 2 and 3, so the last one is 4. */
  @Test
  void set_index_listsSheetsByTheirNumbers() {
    Paper paper = Paper.named("ARCH A");
    SheetPlan cover = new SheetPlan(1, "cover", "Cover", List.of(new Panel.SheetIndex()));
    SheetPlan lists =
        new SheetPlan(2, "lists", "Lists", List.of(new Panel.TableBlock(list("long", 200))));
    SheetPlan notes =
        new SheetPlan(
            3, "notes", "Notes", List.of(new Panel.Notes("Method", List.of("Measured."))));
    List<ComposedSheet> set =
        new SheetComposer(WIDTHS)
            .composeSet(
                List.of(
                    SheetRequest.of(notes, paper, INFO),
                    SheetRequest.of(cover, paper, INFO),
                    SheetRequest.of(lists, paper, INFO)));
    int last = set.size();
    assertTrue(last > 3, "the long list does not run on");
    List<String> texts = InkAudit.texts(set.get(0)).stream().map(Ink.Text::content).toList();
    int at = texts.indexOf("Lists");
    assertEquals("2\u2013" + (last - 1), texts.get(at - 1));
    assertEquals(String.valueOf(last), texts.get(texts.indexOf("Notes") - 1));
  }

  /** Names stand bare, and feet and inches go with the spelling of the United States. */
  @Test
  void words_onPaper_areThoseOfTheReader() {
    PaperWords us = new PaperWords(UnitSystem.US, List.of("apple 1", "apple 2", "fig 7", "herbs"));
    PaperWords metric = new PaperWords(UnitSystem.METRIC, List.of());
    assertEquals("Neighbor's drive, centers", us.of("Neighbour's drive, centres"));
    assertEquals("Neighbour's drive", metric.of("Neighbour's drive"));
    assertEquals("Asparagus to Row 1", metric.of("bed \"asparagus\" to path \"row 1\""));
    assertEquals("Bed 1 and Kitchen bed", us.of("bed \"1\" and bed \"kitchen bed\""));
    assertEquals("A stake every 3 ft", us.cell("a stake every 3 ft (0.9 m)"));
    assertEquals("A stake every 0.9 m", metric.cell("a stake every 3 ft (0.9 m)"));
    assertEquals("pH 6.5", metric.cell("pH 6.5"));
    assertEquals("concentred", us.of("concentred"));
    assertEquals("Zone 1: Apple 1, Apple 2", us.cell("zone 1: apple 1, apple 2"));
    assertEquals("Fig 7 to 9, Herbs, each", us.cell("fig 7 to 9, herbs, each"));
    assertEquals("Cut, herbs first", us.cell("cut, herbs first"));
    assertEquals("Zone 1: apple 1", metric.cell("zone 1: apple 1"));
  }

  private static Table list(String id, int rows) {
    Table.Builder table = Table.titled(id, "List " + id).column(Column.text("what", "What"));
    for (int i = 0; i < rows; i++) {
      table.row(Cell.text(id + " row " + (char) ('a' + i % 26) + i / 26 + "x"));
    }
    return table.build();
  }

  private static long sheetsWith(List<ComposedSheet> set, String text) {
    return set.stream()
        .filter(s -> InkAudit.texts(s).stream().anyMatch(t -> t.content().equals(text)))
        .count();
  }

  @Test
  void set_tablesWithRoomBesideThePlan_needNoFurtherSheet() {
    List<Table> tables = List.of(list("short", 3));
    SheetRequest plan =
        DemoSheet.request(Paper.named("ARCH C"), UnitSystem.US).withOptional(tables);
    List<ComposedSheet> set = new SheetComposer(WIDTHS).composeSet(List.of(plan));
    assertEquals(1, set.size());
    assertEquals(1, sheetsWith(set, "List short"));
  }

  /** They stand in the report. */
  @Test
  void set_optionalTablesTooLongForThePlansSheet_takeNoFurtherSheet() {
    List<Table> tables = List.of(list("long", 400), list("short", 3));
    SheetRequest plan =
        DemoSheet.request(Paper.named("ARCH C"), UnitSystem.US).withOptional(tables);
    List<ComposedSheet> set = new SheetComposer(WIDTHS).composeSet(List.of(plan));
    assertEquals(1, set.size());
    assertEquals(1, sheetsWith(set, "List short"));
    assertEquals(0, sheetsWith(set, "long row a0x"));
  }

  /** What does not fit beside the plan makes a second sheet; that is filled up with tables. */
  @Test
  void set_continuationOfThePlan_isFilledWithTables() {
    List<Table> tables = List.of(list("short", 6));
    SheetRequest plan =
        DemoSheet.request(Paper.named("ARCH A"), UnitSystem.US).withOptional(tables);
    List<ComposedSheet> set = new SheetComposer(WIDTHS).composeSet(List.of(plan));
    List<String> ids = set.stream().map(ComposedSheet::id).toList();
    assertTrue(ids.contains("site-plan-2"), ids.toString());
    assertEquals(1, sheetsWith(set, "List short"));
  }

  @Test
  void room_lotLargerThanThePaper_isRefusedWithoutMarks() {
    SheetRequest request = DemoSheet.request(Paper.named("ANSI A"), UnitSystem.US);
    SheetRequest bare =
        SheetRequest.of(request.sheet(), request.paper(), INFO)
            .withSite(request.lot(), request.north())
            .withScale(Optional.of(Scale.of(48, UnitSystem.US)));
    PlanException e =
        assertThrows(PlanException.class, () -> new SheetComposer(WIDTHS).requireRoom(bare));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    new SheetComposer(WIDTHS).requireRoom(bare.withScale(Optional.empty()));
  }

  @Provide
  Arbitrary<Table> tables() {
    Arbitrary<String> words =
        Arbitraries.strings()
            .withChars("abcdefg hijklmnop WMÄß0123456789.")
            .ofMinLength(0)
            .ofMaxLength(90);
    return Combinators.combine(
            Arbitraries.integers().between(1, 22),
            Arbitraries.integers().between(0, 70),
            words.list().ofSize(30),
            Arbitraries.doubles().between(-1e7, 1e7),
            Arbitraries.integers().between(0, 1))
        .as(SheetComposerTest::table);
  }

  private static Table table(int columns, int rows, List<String> words, double n, int totals) {
    Table.Builder table = Table.titled("random", "Random " + words.get(0));
    for (int c = 0; c < columns; c++) {
      Measure measure = c % 3 == 0 ? Measure.TEXT : Measure.RATIO;
      table.column(Column.of("c" + c, "Col " + words.get(c), measure));
    }
    for (int r = 0; r < rows + totals; r++) {
      List<Cell> row = new ArrayList<>();
      for (int c = 0; c < columns; c++) {
        row.add(c % 3 == 0 ? Cell.text(words.get((r + c) % 30)) : Cell.number(n / (r + c + 1)));
      }
      if (r < rows) {
        table.row(row);
      } else {
        table.total(row.toArray(new Cell[0]));
      }
    }
    words.stream().filter(w -> !w.isBlank()).limit(3).forEach(table::note);
    return table.build();
  }

  @Property(tries = 40, seed = "20261125")
  void tables_anySizeOnAnyPaper_passTheAuditAndAreComplete(
      @ForAll("tables") Table table, @ForAll("paper") Paper paper) {
    SheetPlan plan =
        new SheetPlan(
            1,
            "tables",
            "Tables",
            List.of(new Panel.TableBlock(table), new Panel.Notes("Notes", table.notes())));
    SheetRequest request =
        SheetRequest.of(plan, paper, INFO)
            .withCautions(List.of(new Caution("Take care.", Source.commonPractice("care"))));
    List<ComposedSheet> sheets = compose(request);
    for (ComposedSheet sheet : sheets) {
      assertEquals(List.of(), InkAudit.problems(sheet, WIDTHS));
    }
    // Every word of every row is on some sheet.
    String all =
        sheets.stream()
            .flatMap(s -> InkAudit.texts(s).stream())
            .map(Ink.Text::content)
            .collect(Collectors.joining(""))
            .replace(" ", "")
            .toLowerCase(Locale.ROOT);
    for (List<Cell> row : table.rows()) {
      String first = row.get(0).value().map(Object::toString).orElse("");
      for (String word : first.split(" ")) {
        assertTrue(all.contains(word.toLowerCase(Locale.ROOT)), word);
      }
    }
  }

  @Provide
  Arbitrary<Paper> paper() {
    return Arbitraries.of(Paper.all());
  }

  @Provide
  Arbitrary<List<Mark>> labels() {
    return Combinators.combine(
            Arbitraries.doubles().between(0, 30),
            Arbitraries.doubles().between(0, 20),
            Arbitraries.strings().alpha().ofMinLength(1).ofMaxLength(30),
            Arbitraries.integers().between(0, 3),
            Arbitraries.of(Mark.Anchor.values()))
        .as(
            (x, y, text, rank, anchor) ->
                (Mark) new Mark.Label(Point.metres(x, y), text, 2.5, false, rank, anchor))
        .list()
        .ofMinSize(1)
        .ofMaxSize(120);
  }

  @Property(tries = 25, seed = "20261125")
  void labels_manyOnASmallSheet_areAllShownWithoutOverlap(@ForAll("labels") List<Mark> labels) {
    Shape lot = Shape.rectangle(Point.metres(0, 0), Length.metres(30), Length.metres(20));
    List<Mark> marks = new ArrayList<>(labels);
    marks.add(0, new Mark.Region(lot, Palette.LOT, "lot"));
    SheetPlan plan = new SheetPlan(1, "site-plan", "Site plan", List.of(Panel.SitePlan.shown()));
    SheetRequest request =
        SheetRequest.of(plan, Paper.named("A4"), INFO)
            .withDrawing(
                Map.of(new Layer("test.labels", "Labels", Layer.Band.NOTES), marks), List.of());
    List<ComposedSheet> sheets = compose(request);
    List<String> texts = new ArrayList<>();
    for (ComposedSheet sheet : sheets) {
      assertEquals(List.of(), InkAudit.problems(sheet, WIDTHS));
      InkAudit.texts(sheet).forEach(t -> texts.add(t.content()));
    }
    for (Mark label : labels) {
      String said = ((Mark.Label) label).text();
      // Printed with a capital.
      assertTrue(texts.stream().anyMatch(said::equalsIgnoreCase), label.toString());
    }
  }

  @Test
  void figures_severalOnASheet_keepTheirTrueScaleOrSayNot() {
    Shape square = Shape.rectangle(Point.metres(0, 0), Length.metres(1), Length.metres(1));
    List<Mark> marks = List.of(new Mark.Region(square, Palette.BED, "square"));
    SheetPlan plan =
        new SheetPlan(
            1,
            "details",
            "Details",
            List.of(
                new Panel.Figure("At 1:20", marks, List.of(), 60, 20),
                new Panel.Figure("Too large", marks, List.of(), 60, 1),
                new Panel.Figure("Free", marks, List.of(), 60, 0)));
    List<ComposedSheet> sheets = compose(SheetRequest.of(plan, Paper.named("A3"), INFO));
    List<Xy> first = path(sheets.get(0).inks(), "bed").tracks().get(0).points();
    assertEquals(50, span(first.stream().map(Xy::x).toList()), 1e-9);
    List<String> texts = new ArrayList<>();
    for (ComposedSheet sheet : sheets) {
      assertEquals(List.of(), InkAudit.problems(sheet, WIDTHS));
      InkAudit.texts(sheet).forEach(t -> texts.add(t.content()));
    }
    assertTrue(texts.contains("Scale 1:20"));
    assertTrue(texts.contains("Not to scale"));
  }

  private static List<ComposedSheet> compose(SheetRequest request) {
    return new SheetComposer(WIDTHS).compose(request);
  }
}
