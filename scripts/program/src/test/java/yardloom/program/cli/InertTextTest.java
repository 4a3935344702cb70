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

/** Texts of the newer words are doors too: what they hold stays text in every file. */
class InertTextTest {
  private static final String PLAN =
      """
      plan 'Inert', units: 'us'
      lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
      bed 'herbs', rect(5.ft, 5.ft, 20.ft, 7.ft), use: 'perennial'
      """;

  @TempDir private Path dir;

  private Map<String, String> drawn(String more) throws IOException {
    Files.writeString(dir.resolve("inert.groovy"), PLAN + more);
    Run run = Run.in(dir, "draw", "inert.groovy", "--out", "out", "--as", "svg,csv,json,html");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    assertFalse(run.out().contains("\u001b"), "an escape on the terminal");
    return Run.files(dir.resolve("out/inert"));
  }

  @Test
  void markup_isEscapedInSheetsAndReport() throws IOException {
    Map<String, String> files =
        drawn(
            """
            note '<script>alert(1)</script>', at: point(30.ft, 20.ft)
            item '<script>alert(2)</script>', price: 3.money, phase: 'head'
            task '<script>alert(3)</script>', hours: 2, phase: 'head'
            accept 'site.bed-reach', why: '<script>alert(4)</script>'
            dimension point(1.ft, 1.ft), point(9.ft, 1.ft), text: '<script>alert(5)</script>'
            hideLabel '<script>alert(6)</script>'
            stage('<script>alert(7)</script>') { item 'bench', price: 5.money, phase: 'finish' }
            stage('=1+1') { item 'rope', price: 7.money, phase: 'finish' }
            truckLane '<script>alert(8)</script>', line([point(32.ft, 0.ft), point(32.ft, 9.ft)])
            """);
    files.forEach(
        (name, text) -> {
          if (name.endsWith(".svg") || name.endsWith(".html")) {
            assertFalse(text.contains("<script>alert"), name);
          } else if (name.endsWith(".csv")) {
            assertFalse(text.matches("(?s)(.*[,\n])?\"?=1.*"), name);
          }
        });
    String all = String.join("\n", files.values());
    assertTrue(all.contains("&lt;script&gt;alert(2)") && all.contains("&lt;script&gt;alert(3)"));
  }

  /** A cell that a spreadsheet would work out begins with an apostrophe or is not one. */
  @Test
  void formulas_areNotWorkedOutBySpreadsheets() throws IOException {
    Map<String, String> files =
        drawn(
            """
            item '=HYPERLINK("http://x")', price: 3.money, phase: 'head'
            itemBook 'item,count,unit,price,hours,phase\\n+1+1,2,piece,1,0.5,head\\n@SUM(A1),1,,1,1,head'
            """);
    files.forEach(
        (name, text) -> {
          if (name.endsWith(".csv")) {
            for (String line : text.split("\r?\n")) {
              assertFalse(line.matches("(.*,)?\"?[=+@](HYPER|1|SUM).*"), name + ": " + line);
            }
          }
        });
  }
}
