package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.DemoSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.site.DemoYard;
import yardloom.site.SiteCautions;

class HtmlReportTest {
  @TempDir private Path folder;

  private static final Source BOOK = Source.read("Book of beds", "Press", 2001, "Table 4");
  private static final List<ComposedSheet> SHEETS =
      new SheetComposer(FontWidths.shipped())
          .composeSet(List.of(DemoSheet.request(Paper.named("ARCH A"), UnitSystem.US)));

  private static Outcome outcome() {
    Plan plan = DemoYard.plan(UnitSystem.US);
    Derived<Area> area =
        Derived.by("area = sum", Source.plan("beds"))
            .from("factor", Derived.by("factor", BOOK).gives(2.0))
            .gives(Area.squareMetres(10));
    Table table =
        Table.titled("beds", "Beds & borders")
            .column(Column.text("bed", "Bed"))
            .column(Column.of("area", "Area", Measure.AREA))
            .row(Cell.text("<b>south</b>"), Cell.of(area))
            .total(Cell.text("Total"), Cell.of(area))
            .note("A note.")
            .build();
    Finding finding =
        Finding.of("kernel.reach", Severity.WARNING, "bed is 6 ft wide", "Make it narrower.", BOOK);
    return new Outcome(
        plan,
        FactGraph.of(List.of()).run(plan),
        List.of(finding),
        List.of(table),
        new TreeMap<>(),
        SiteCautions.of(plan),
        List.of(),
        Map.of(),
        Map.of());
  }

  private static Document parse(String page) throws Exception {
    // The page is well-formed but for its void elements.
    String xml = page.replace("<!DOCTYPE html>\n", "").replaceAll("<(meta [^>]*|br)>", "<$1/>");
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }

  @Test
  void page_isWellFormedAndHoldsAllParts() throws Exception {
    Document page = parse(HtmlReport.page(outcome(), SHEETS));
    assertEquals(SHEETS.size(), page.getElementsByTagName("svg").getLength());
    assertEquals(1, page.getElementsByTagName("tfoot").getLength());
    String text = page.getDocumentElement().getTextContent();
    for (String wanted :
        List.of(
            "Kitchen garden on Elm Street",
            "<b>south</b>",
            "Beds & borders",
            "Area, sq ft",
            "bed is 6 ft wide",
            "Make it narrower.",
            "buried utilities",
            "Book of beds, Press, 2001, Table 4",
            "A note.")) {
      assertTrue(text.contains(wanted), wanted);
    }
  }

  @Test
  void page_needsNothingFromOutside() {
    String page = HtmlReport.page(outcome(), SHEETS);
    String own = page.replace("http://www.w3.org/2000/svg", "");
    assertFalse(own.contains("http:") || own.contains("https:"));
    assertFalse(Pattern.compile("<(script|link|img|iframe)\\b").matcher(own).find());
    assertFalse(own.contains("<?xml"));
    assertFalse(Pattern.compile("url\\((?!#)").matcher(own).find());
  }

  /** The picture is the first thing in the page's main part; all else of size opens at a touch. */
  @Test
  void page_beginsWithTheCover_otherSheetsAndTablesAreFolded() throws Exception {
    String page = HtmlReport.page(outcome(), SHEETS);
    int main = page.indexOf("<main>");
    assertTrue(page.indexOf("<svg") < page.indexOf("id=\"cautions\""), "the cover comes first");
    assertTrue(main < page.indexOf("<svg"));
    Document parsed = parse(page);
    int folded = parsed.getElementsByTagName("details").getLength();
    assertEquals(SHEETS.size() - 1 + outcome().tables().size(), folded);
    assertEquals(folded, parsed.getElementsByTagName("summary").getLength());
  }

  @Test
  void page_idsAndLinks_areUniqueAndResolve() {
    String page = HtmlReport.page(outcome(), SHEETS);
    Set<String> ids = new HashSet<>();
    Matcher id = Pattern.compile(" id=\"([^\"]*)\"").matcher(page);
    while (id.find()) {
      assertTrue(ids.add(id.group(1)), id.group(1));
    }
    Matcher link = Pattern.compile("(?:href=\"#|url\\(#)([^\")]*)").matcher(page);
    while (link.find()) {
      assertTrue(ids.contains(link.group(1)), link.group(1));
    }
  }

  @Test
  void file_isWrittenWhole() throws Exception {
    Path file = folder.resolve("report.html");
    HtmlReport.write(outcome(), SHEETS, file);
    assertEquals(HtmlReport.page(outcome(), SHEETS), Files.readString(file));
    try (var files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }
}
