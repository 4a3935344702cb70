package yardloom.program.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.study.DrawnLayer;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Reading;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.sheet.compose.DemoSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;
import yardloom.site.DemoYard;
import yardloom.site.SiteCautions;

/** Laws of the page that hold without a browser. */
class HtmlReportTest {
  @TempDir private Path folder;

  private static final Source BOOK = Source.read("Book of beds", "Press", 2001, "Table 4");
  private static final String HOSTILE = "<b onclick=\"x('1')\">south & `=</b>";
  private static final List<SvgSheet> SHEETS =
      new SheetComposer(FontWidths.shipped())
          .composeSet(List.of(DemoSheet.request(Paper.named("ARCH A"), UnitSystem.US))).stream()
              .map(SvgSheet::of)
              .toList();

  private static Table beds() {
    Derived<Area> area =
        Derived.by("area = sum", Source.plan("beds"))
            .from("factor", Derived.by("factor", BOOK).gives(2.0))
            .gives(Area.squareMetres(10));
    return Table.titled("beds", "Beds & borders")
        .column(Column.text("bed", "Bed"))
        .column(Column.of("area", "Area", Measure.AREA))
        .column(Column.text("from", "From"))
        .heading("Sunny")
        .row(Cell.text(HOSTILE), Cell.of(area), Cell.of(MonthDay.of(4, 30)))
        .row(Cell.text("north"), Cell.of(Area.squareMetres(212)), Cell.of(MonthDay.of(10, 2)))
        .heading("Shady")
        .row(Cell.text("east"), Cell.of(Area.squareMetres(31)), Cell.BLANK)
        .total(Cell.text("Total"), Cell.of(Area.squareMetres(253)), Cell.BLANK)
        .note("A note.")
        .build();
  }

  /** January has 100 US gallons of need and 250 of supply, February 1,400 and 30. */
  private static Table water() {
    return Table.titled("water", "Water")
        .column(Column.text("month", "Month"))
        .column(Column.of("need", "Need", Measure.WATER))
        .column(Column.of("supply", "Supply", Measure.WATER))
        .row(Cell.text("Jan"), gallons(100), gallons(250))
        .row(Cell.text("Feb"), gallons(1400), gallons(30))
        .build();
  }

  private static Cell gallons(double gallons) {
    return Cell.of(Volume.of(gallons, yardloom.kernel.unit.Unit.GALLON));
  }

  private static Outcome outcome() {
    Plan plan = DemoYard.plan(UnitSystem.US);
    Finding finding =
        Finding.of("kernel.reach", Severity.WARNING, "bed is 6 ft wide", "Make it narrower.", BOOK)
            .marking(plan.lot().orElseThrow().shape());
    TreeMap<Layer, DrawnLayer> layers = new TreeMap<>();
    Mark lot = new Mark.Region(plan.lot().get().shape(), Palette.FINDING_ERROR, "lot");
    layers.put(
        new Layer("a.ground", "Ground", Layer.Band.GROUND),
        new DrawnLayer(List.of(lot), List.of(), true, true));
    layers.put(
        new Layer("b.lines", "Lines", Layer.Band.WATER),
        new DrawnLayer(List.of(lot), List.of(), true, false));
    Chart chart = Chart.of("water", "Water by month", Chart.Kind.BARS, "need", "supply");
    return new Outcome(
        plan,
        FactGraph.of(List.of()).run(plan),
        List.of(finding),
        List.of(beds(), water()),
        layers,
        SiteCautions.of(plan),
        List.of(),
        Map.of(),
        Map.of("water", new Reading(Audience.CLIENT, List.of(chart))),
        Map.of());
  }

  private static String page() {
    return HtmlReport.page(outcome(), SHEETS);
  }

  /** Read by the rules of HTML, which report every fault. */
  static Document parse(String page) {
    Parser strict = Parser.htmlParser().setTrackErrors(20);
    Document parsed = Jsoup.parse(page, "", strict);
    assertEquals(List.of(), strict.getErrors());
    return parsed;
  }

  @Test
  void page_isFaultlessHtmlAndHoldsAllParts() {
    Document page = parse(page());
    String text = page.text();
    for (String wanted :
        List.of(
            "Kitchen garden on Elm Street",
            HOSTILE,
            "Beds & borders",
            "Area, sq ft",
            "bed is 6 ft wide",
            "Make it narrower.",
            "buried lines",
            "Book of beds, Press, 2001, Table 4",
            "A note.")) {
      assertTrue(text.contains(wanted), wanted);
    }
    assertEquals(SHEETS.size(), page.select("#sheets figure.sheet svg").size());
    assertTrue(page.select("#cautions > p").text().contains("buried lines"), "seen unopened");
    assertEquals(0, page.select("[onclick]").size(), "what a plan says is never markup");
  }

  @Test
  void page_needsNothingFromOutside() {
    String own = page().replace("http://www.w3.org/2000/svg", "");
    assertFalse(own.contains("http:") || own.contains("https:") || own.contains("//www"));
    assertFalse(Pattern.compile("<(link|img|iframe|object|embed)\\b").matcher(own).find());
    assertFalse(Pattern.compile("<script[^>]+src").matcher(own).find());
    assertFalse(own.contains("<?xml"));
    assertFalse(Pattern.compile("url\\((?!#)").matcher(own).find());
    assertFalse(own.contains("@import"));
  }

  /** The picture, then the story; all else of size opens at a touch. */
  @Test
  void page_beginsWithTheCover_restIsFolded() {
    Document page = parse(page());
    Element main = page.selectFirst("main");
    assertEquals("cover", main.child(0).id());
    for (String folded : List.of("#map svg", "#sheets svg", "#tables table", "#sources li")) {
      for (Element e : main.select(folded)) {
        assertTrue(e.closest("details") != null && !e.closest("details").hasAttr("open"), folded);
      }
    }
    assertEquals(page.select("details").size(), page.select("details > summary").size());
  }

  @Test
  void idsAndLinks_areUniqueAndResolve() {
    String page = page();
    Set<String> ids = new HashSet<>();
    Matcher id = Pattern.compile(" id=\"([^\"]*)\"").matcher(page);
    while (id.find()) {
      assertTrue(ids.add(id.group(1)), id.group(1));
    }
    Matcher link = Pattern.compile("(?:href=\"#|url\\(#)([^\")]*)").matcher(page);
    while (link.find()) {
      assertTrue(ids.contains(link.group(1)), link.group(1));
    }
    for (Element named : parse(page).select("[aria-labelledby]")) {
      for (String other : named.attr("aria-labelledby").split(" ")) {
        assertTrue(ids.contains(other), other);
      }
    }
  }

  @Test
  void headings_leaveOutNoLevel_andContentsLeadToThem() {
    Document page = parse(page());
    int level = 0;
    for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
      int next = heading.tagName().charAt(1) - '0';
      assertTrue(next <= level + 1, heading.text());
      assertFalse(heading.text().isBlank());
      level = next;
    }
    assertEquals(1, page.select("h1").size());
    for (Element link : page.select("nav a")) {
      assertEquals(1, page.select(link.attr("href") + " h2").size(), link.text());
    }
  }

  @Test
  void tables_haveCaptionAndScopedHeads() {
    Document page = parse(page());
    for (Element table : page.select("table")) {
      assertFalse(table.selectFirst("caption").text().isBlank());
      assertTrue(table.select("th:not([scope])").isEmpty());
      assertEquals(
          table.select("tbody tr:not(.run), tfoot tr").size(),
          table.select("th[scope=row]").size());
    }
    Element beds = page.getElementById("table-beds");
    assertEquals(List.of("Sunny", "Shady"), beds.select("th[scope=rowgroup]").eachText());
    assertEquals(1, beds.select("tfoot tr").size());
    // 10 and 212 m² in square feet of 0.09290304 m²: 107.6 and 2,282.0.
    assertEquals(
        List.of("108", "2282", "334"), beds.select("tbody td.number").eachAttr("data-key"));
    assertEquals(List.of("--04-30", "--10-02"), beds.select("td.words").eachAttr("data-key"));
    assertEquals("For the contractor", beds.closest(".group").selectFirst("h3").text());
    assertEquals(
        "For the client",
        page.getElementById("table-water").closest(".group").selectFirst("h3").text());
  }

  /**
   * The axis goes to 1,500 in steps of 500 on 160 units: 1,400 gal are 149.3, 250 are 26.7, 100 are
   * 10.7 and 30 are 3.2 units high.
   */
  @Test
  void chart_barsAndWords_areTheTables() {
    Element chart = parse(page()).getElementById("chart-water");
    assertEquals("Water by month, gal", chart.selectFirst("h3").text());
    assertEquals(
        "Jan: Need 100, Supply 250; Feb: Need 1,400, Supply 30.", chart.selectFirst("desc").text());
    assertEquals(
        List.of("10.7", "26.7", "149.3", "3.2"), chart.select("> svg > rect").eachAttr("height"));
    assertEquals(
        List.of("Jan, Need 100", "Jan, Supply 250", "Feb, Need 1,400", "Feb, Supply 30"),
        chart.select("rect > title").eachText());
    List<String> fills = chart.select("> svg > rect").eachAttr("fill");
    assertEquals("url(#chart-water-hatch)", fills.get(1), "told apart without colour");
    assertEquals(List.of("Need", "Supply"), chart.select(".keys li").eachText());
    assertEquals("#table-water", chart.selectFirst("figcaption a").attr("href"));
  }

  @Test
  void layers_canBeSwitched_findingsStandBesideTheirPlace() {
    String html = page();
    Document page = parse(html);
    List<String> layers = new ArrayList<>();
    for (Element box : page.select("#map input")) {
      layers.add(box.parent().text() + (box.hasAttr("checked") ? " on" : ""));
      String rule = "#map:has(#" + box.id() + ":not(:checked)) #";
      int at = html.indexOf(rule);
      assertTrue(at > 0, rule);
      String target = html.substring(at + rule.length(), html.indexOf(' ', at + rule.length()));
      assertTrue(page.getElementById(target) != null, target);
    }
    assertEquals(List.of("Lines", "Findings on"), layers);
    Element north = page.getElementById("map-north-arrow").selectFirst("text");
    String[] box = page.selectFirst("#map .drawing > svg").attr("viewBox").split(" ");
    assertTrue(Double.parseDouble(north.attr("y")) + 5 < Double.parseDouble(box[3]));
    Element finding = page.selectFirst("#findings li");
    assertEquals("(1) warning", finding.selectFirst(".severity").text());
    assertEquals(List.of("#map-yard", "#map-findings"), finding.select("svg use").eachAttr("href"));
  }

  @Test
  void file_isWrittenWhole() throws Exception {
    Path file = folder.resolve("report.html");
    HtmlReport.write(outcome(), SHEETS, file);
    assertEquals(page(), Files.readString(file));
    try (var files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }
}
