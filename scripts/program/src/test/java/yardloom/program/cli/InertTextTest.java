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

  /**
   * ESC, BEL and a mark that turns the writing, spelled so that no reader of the script sees them.
   */
  @Test
  void hiddenSigns_areRefusedHoweverTheyAreSpelled() throws IOException {
    Path data = dir.resolve("why.txt");
    Files.writeString(data, "well\n\u001b]0;title\u0007");
    for (String line :
        new String[] {
          "accept 'site.bed-reach', why: 'red \\u001b[31m'",
          "note 'turned \\u202e', at: point(30.ft, 20.ft)",
          "note \"${'a'} \\b ${'b'}\", at: point(30.ft, 20.ft)",
          "def rows = [['\\u0007': 1.ft]]",
          "accept 'site.bed-reach', why: fileText('why.txt')"
        }) {
      Files.writeString(dir.resolve("hidden.groovy"), PLAN + line + "\n");
      Run run = Run.in(dir, "check", "hidden.groovy");
      assertEquals(ExitCode.PLAN, run.code(), line + run.out() + run.err());
      assertTrue(run.err().contains("hidden.groovy:4:"), run.err());
      assertTrue(run.err().contains("is invisible and has no place"), run.err());
      assertFalse(run.err().matches("(?s).*[\u001b\u0007\b\u202e].*"), run.err());
    }
    Files.writeString(dir.resolve("set.groovy"), PLAN + "def a = param('a', 'x', 'a text')\n");
    Run set = Run.in(dir, "check", "set.groovy", "--set", "a=\u001b[31m");
    assertEquals(ExitCode.PLAN, set.code(), set.out() + set.err());
    assertTrue(set.err().contains("U+001B"), set.err());
  }

  /** What is not ours to refuse, such as the name of a file, is shown and steers nothing. */
  @Test
  void hiddenSigns_inNamesOfFiles_areShownSpelledOut() {
    Run run = Run.in(dir, "check", "no\u001b[31m\u202ered.groovy");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(
        run.err().contains("no\\u001B[31m\\u202Ered.groovy: there is no such file"), run.err());
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
