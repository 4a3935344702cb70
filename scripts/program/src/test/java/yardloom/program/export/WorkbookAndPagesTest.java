package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.compose.SheetRequest;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

/** What a spreadsheet and a viewer find in the files, read back without our own code. */
class WorkbookAndPagesTest {
  private static final TableFormat METRIC = new TableFormat(UnitSystem.METRIC, "€");

  @TempDir private Path folder;

  private static Table beds(String id) {
    return Table.titled(id, "Beds")
        .column(Column.text("bed", "bed"))
        .column(Column.of("area", "area", Measure.AREA))
        .column(Column.text("by", "by"))
        .row(
            Cell.text("=2+3"),
            Cell.of(Area.squareMetres(1234.56)),
            Cell.of(LocalDate.of(2026, 3, 2)))
        .build();
  }

  private static Map<String, String> parts(byte[] book) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(book))) {
      for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        parts.put(e.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return parts;
  }

  /** 1899-12-30 is day 0 of a workbook's dates; to 2 March 2026 it is 46083 days. */
  @Test
  void workbook_numbersAndDatesAreNumbers_textIsNoFormula() throws IOException {
    Map<String, String> parts = parts(WorkbookWriter.bytes(List.of(beds("beds")), METRIC));
    String sheet = parts.get("xl/worksheets/sheet2.xml");
    assertFalse(sheet.contains("<f>"), sheet);
    assertTrue(sheet.matches("(?s).*<c r=\"B2\"[^>]*><v>1234\\.6</v>.*"), sheet);
    assertTrue(sheet.matches("(?s).*<c r=\"C2\"[^>]*><v>46083(\\.0)?</v>.*"), sheet);
    assertTrue(parts.get("xl/sharedStrings.xml").contains("=2+3"));
    assertTrue(parts.get("xl/sharedStrings.xml").contains("Area, m"));
  }

  /** A sheet's name has at most 31 characters and stands once. */
  @Test
  void workbook_longNamesThatBeginAlike_staySeparate() throws IOException {
    String id = "a-name-that-is-too-long-for-a-sheet-of-a-workbook";
    byte[] book = WorkbookWriter.bytes(List.of(beds(id), beds(id + "-two")), METRIC);
    String names = parts(book).get("xl/workbook.xml");
    assertTrue(names.contains("name=\"" + id.substring(0, 31) + "\""), names);
    assertTrue(names.contains("name=\"" + id.substring(0, 29) + "-2\""), names);
  }

  @Test
  void workbook_writtenTwice_isTheSame() throws Exception {
    byte[] first = WorkbookWriter.bytes(List.of(beds("beds")), METRIC);
    Thread.sleep(1100);
    assertArrayEquals(first, WorkbookWriter.bytes(List.of(beds("beds")), METRIC));
  }

  @Test
  void pdf_pagesAreNamedAfterTheirSheets() throws IOException {
    PlanInfo info = new PlanInfo("p", "Plan", "", "", "", "", UnitSystem.METRIC, "€");
    List<SheetRequest> requests = new ArrayList<>();
    String[] titles = {"Layout", "Planting", "Irrigation"};
    for (int i = 0; i < titles.length; i++) {
      List<Panel> notes = List.of(new Panel.Notes("Note " + i, List.of("Text " + i)));
      SheetPlan plan = new SheetPlan(i, "s" + i, titles[i], notes);
      requests.add(SheetRequest.of(plan, Paper.named("A4"), info));
    }
    List<ComposedSheet> sheets = new SheetComposer(FontWidths.shipped()).composeSet(requests);
    Path file = folder.resolve("set.pdf");
    PdfWriter.write(sheets.stream().map(SvgSheet::of).toList(), "Plan", "A. Author", file);
    try (PDDocument read = Loader.loadPDF(file.toFile())) {
      List<String> marks = new ArrayList<>();
      for (PDOutlineItem item : read.getDocumentCatalog().getDocumentOutline().children()) {
        marks.add(item.getTitle());
        int page = marks.size() - 1;
        assertEquals(read.getPage(page), item.findDestinationPage(read));
      }
      assertEquals(List.of("1 Layout", "2 Planting", "3 Irrigation"), marks);
      assertArrayEquals(
          new String[] {"1", "2", "3"},
          read.getDocumentCatalog().getPageLabels().getLabelsByPageIndices());
      assertEquals("Plan", read.getDocumentInformation().getTitle());
      assertEquals("A. Author", read.getDocumentInformation().getAuthor());
      assertEquals("en", read.getDocumentCatalog().getLanguage());
    }
  }
}
