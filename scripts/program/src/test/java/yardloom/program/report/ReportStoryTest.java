package yardloom.program.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import java.util.concurrent.TimeUnit;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.program.laws.Drawn;
import yardloom.program.output.SheetSet;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

/** The report of a small yard of all trades, from its script to the page and into a browser. */
class ReportStoryTest {
  @TempDir private Path folder;

  private static Outcome outcome;
  private static String html;
  private static Document page;

  @BeforeAll
  static void draw() throws IOException {
    try (var in = ReportStoryTest.class.getResourceAsStream("story.groovy")) {
      String script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      outcome = Drawn.study(script, Drawn.plugins());
    }
    html =
        HtmlReport.page(
            outcome,
            SheetSet.of(outcome, Paper.named("ARCH C"), List.of(), Hands.ONE).stream()
                .map(SvgSheet::of)
                .toList());
    page = HtmlReportTest.parse(html);
  }

  @Test
  void ids_areUnique_andLinksResolve() {
    Set<String> ids = new HashSet<>();
    page.select("[id]").forEach(e -> assertTrue(ids.add(e.id()), e.id()));
    for (Element link : page.select("a[href], use[href]")) {
      assertTrue(ids.contains(link.attr("href").substring(1)), link.attr("href"));
    }
    assertFalse(html.replace("http://www.w3.org/2000/svg", "").matches("(?s).*https?:.*"));
  }

  @Test
  void headings_leaveOutNoLevel() {
    int level = 0;
    for (Element heading : page.select("h1, h2, h3, h4")) {
      int next = heading.tagName().charAt(1) - '0';
      assertTrue(next <= level + 1, heading.text());
      level = next;
    }
  }

  /** Every table is there once, and each reader has some. */
  @Test
  void tables_standUnderTheirReaders() {
    for (Table table : outcome.tables()) {
      assertEquals(1, page.select("#tables #table-" + table.id()).size(), table.id());
    }
    assertEquals(
        List.of(
            "For the client",
            "For the household",
            "For the contractor",
            "For the nursery and planters",
            "For the irrigation installer"),
        page.select(".group > summary h3").eachText());
    for (String[] whose :
        new String[][] {
          {"materials-take-off", "contractor"},
          {"setting-out", "contractor"},
          {"plant-schedule", "nursery"},
          {"irrigation-parts", "installer"},
          {"harvest-months", "household"},
          {"timetable", "household"},
          {"water-by-month", "client"}
        }) {
      Element table = page.getElementById("table-" + whose[0]);
      assertEquals("for-" + whose[1], table.closest(".group").id(), whose[0]);
    }
  }

  /** What the charts say is what the tables print, row by row. */
  @Test
  void charts_haveTheFiguresOfTheirTables() {
    sayTheSame("chart-water", "water-by-month", false, 5, 6);
    sayTheSame("chart-harvest", "harvest-months", false, 2, 3, 4);
    sayTheSame("chart-cost", "materials-cost", true, 2, 3, 4);
    sayTheSame("chart-bloom", "bloom", false, 1, 2);
    sayTheSame("chart-sun", "sun-hours", false, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
  }

  private static void sayTheSame(String chart, String id, boolean totals, int... columns) {
    String said = page.getElementById(chart).selectFirst("desc").text();
    Table table =
        outcome.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    TableFormat format = TableFormat.of(outcome.plan().info());
    List<String> rows = new ArrayList<>();
    for (int r = 0; r < table.rows().size(); r++) {
      boolean total = r >= table.rows().size() - table.totals();
      if (total == totals) {
        StringJoiner row =
            new StringJoiner(", ", table.rows().get(r).get(0).value().get() + ": ", "");
        for (int c : columns) {
          String printed = format.text(table.columns().get(c), table.rows().get(r).get(c));
          row.add(table.columns().get(c).title() + " " + (printed.isEmpty() ? "none" : printed));
        }
        String bare = row.toString().replaceAll("(?:bed|tree) \"([^\"]*)\"", "$1");
        rows.add(Character.toUpperCase(bare.charAt(0)) + bare.substring(1));
      }
    }
    assertEquals(String.join("; ", rows) + ".", said);
  }

  @Test
  void findings_beginWithTheGravest_andShowTheirPlace() {
    List<String> numbers = page.select("#findings li").eachAttr("value");
    for (int i = 0; i < numbers.size(); i++) {
      assertEquals(String.valueOf(i + 1), numbers.get(i), "numbered as on the sheets");
    }
    Element wide =
        page.select("#findings li").stream()
            .filter(li -> li.text().contains("can stand"))
            .findFirst()
            .orElseThrow();
    assertEquals("Finding 4 on the map: Wide", wide.selectFirst("svg").attr("aria-label"));
  }

  @Test
  void calendar_hasEveryEntryOfTheDiary() {
    int entries = outcome.results().all(DiaryEntry.FACT).size();
    assertTrue(entries > 5);
    assertEquals(entries, page.select("#calendar dt").size());
  }

  @Test
  void page_drawnTwice_isTheSame() {
    String again =
        HtmlReport.page(
            outcome,
            SheetSet.of(outcome, Paper.named("ARCH C"), List.of(), Hands.ONE).stream()
                .map(SvgSheet::of)
                .toList());
    assertEquals(html, again);
  }

  @Test
  void page_inABrowser_fitsATelephoneAndHasNoSeriousFinding()
      throws IOException, InterruptedException {
    String modules = String.valueOf(System.getenv("YARDLOOM_BROWSER_MODULES"));
    assumeTrue(
        Files.isDirectory(Path.of(modules, "axe-core"))
            && Files.exists(Path.of("/usr/bin/chromium")),
        "skipped: needs chromium, and puppeteer-core and axe-core in the folder that"
            + " YARDLOOM_BROWSER_MODULES names");
    Path file = Files.writeString(folder.resolve("report.html"), html);
    Path said = folder.resolve("said.log");
    ProcessBuilder run =
        new ProcessBuilder(
            "node",
            Path.of("src/test/browser/report.cjs").toAbsolutePath().toString(),
            file.toString(),
            Files.createDirectories(Path.of("target/report")).toString());
    run.environment().put("NODE_PATH", modules);
    Process process = run.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    assertTrue(process.waitFor(8, TimeUnit.MINUTES), "the browser did not end");
    assertEquals("", Files.readString(said).strip());
    assertEquals(0, process.exitValue());
  }
}
