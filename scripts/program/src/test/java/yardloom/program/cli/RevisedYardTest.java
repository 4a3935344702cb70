package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Revisions, from the plan's lines to table, title block, booklet and report. */
class RevisedYardTest {
  private static final String PLAN =
      """
      plan 'Revised', date: '2026-03-09', units: 'us'
      lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
      sheetMulch { chips perennial: 8.inch ; compost perennial: 1.inch }
      bed 'herbs', rect(5.ft, 5.ft, 20.ft, 4.ft), use: 'perennial'
      """;

  private static final String LINES =
      """
      revision 'A', date: '2026-04-02', what: 'tank moved to the north wall'
      revision 'B2', date: '2026-05-17', what: 'herbs 4 ft deep, was 5 ft'
      """;

  @TempDir private static Path dir;

  private static Map<String, String> drawn(String name, String script) throws IOException {
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "svg,csv,json,html");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/" + name));
  }

  private static String sheet(Map<String, String> files, String part) {
    return files.entrySet().stream()
        .filter(e -> e.getKey().startsWith("sheets/") && e.getKey().contains(part))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseThrow(() -> new AssertionError(part + " in " + files.keySet()));
  }

  @Test
  void revisions_standInTableTitleBlockBookletAndReport() throws IOException {
    Map<String, String> files = drawn("revised", PLAN + LINES);
    assertEquals(
        "revision,date,what\r\n"
            + "A,2026-04-02,tank moved to the north wall\r\n"
            + "B2,2026-05-17,\"herbs 4 ft deep, was 5 ft\"\r\n",
        files.get("tables/revisions.csv"));
    String cover = sheet(files, "cover");
    assertTrue(cover.contains(">Revisions<"), cover);
    assertTrue(cover.contains(">2 Apr 2026<") && cover.contains(">17 May 2026<"), cover);
    for (String part : new String[] {"cover", "materials"}) {
      assertTrue(sheet(files, part).contains(">B2, 17 May 2026<"), part);
      assertTrue(sheet(files, part).contains(">9 Mar 2026<"), "the day of issue stays: " + part);
    }
    String booklet = sheet(files, "crew");
    assertTrue(booklet.contains(">Revision B2<") && booklet.contains(">17 May 2026<"), booklet);
    assertFalse(booklet.contains(">9 Mar 2026<"), "an old booklet would look like a new one");
    assertTrue(files.get("report.html").contains("B2, 17 May 2026"));
    assertTrue(files.get("results.json").contains("\"revisionDate\" : \"2026-05-17\""));
  }

  /** Without such lines sheets are as ever, with the mark that the plan gives. */
  @Test
  void markOfThePlan_staysAlone() throws IOException {
    Map<String, String> files = drawn("marked", PLAN.replace("units:", "revision: 'C7', units:"));
    assertFalse(files.containsKey("tables/revisions.csv"));
    assertTrue(sheet(files, "cover").contains(">C7<"));
    assertTrue(sheet(files, "crew").contains(">9 Mar 2026<"));
    assertFalse(files.get("results.json").contains("revisionDate"));
  }

  @Test
  void errors_nameTheLine() throws IOException {
    Files.writeString(dir.resolve("bad.groovy"), PLAN + LINES.replace("2026-05-17", "2026-04-01"));
    Run run = Run.in(dir, "check", "bad.groovy");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(
        run.err().contains("bad.groovy:6:1: revision 'B2' of 2026-04-01 stands after 'A'"),
        run.err());
  }

  @Test
  void hostileTexts_stayTexts() throws IOException {
    Map<String, String> files =
        drawn(
            "hostile",
            PLAN
                + """
                revision '=1+1', date: '2026-04-02', what: '<script>alert(7)</script>'
                revision '<b>&', date: '2026-04-03', what: '=HYPERLINK("http://x")'
                """);
    String table = files.get("tables/revisions.csv");
    assertTrue(table.contains("\r\n'=1+1,2026-04-02,") && table.contains(",\"'=HYPER"), table);
    files.forEach(
        (name, text) -> {
          if (name.endsWith(".svg") || name.endsWith(".html")) {
            assertFalse(text.contains("<script>alert") || text.contains("<b>&,"), name);
          }
        });
    assertTrue(sheet(files, "cover").contains("&lt;b&gt;&amp;, 3 Apr 2026"));
  }
}
