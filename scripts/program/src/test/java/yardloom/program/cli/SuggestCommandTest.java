package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** The command says what the table of the word says. */
class SuggestCommandTest {
  private static final String SCRIPT =
      """
      plan 'Asked', units: 'us', date: '2027-03-30'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
      bed('kitchen bed', rect(4.ft, 4.ft, 20.ft, 4.ft), use: 'perennial') { suggest kinds: 3 }
      bed('other', rect(4.ft, 14.ft, 20.ft, 4.ft), use: 'perennial') { suggest kinds: 2, littleWork: true }
      """;

  @TempDir private Path dir;

  private Run suggest(String... bed) throws IOException {
    Files.writeString(dir.resolve("asked.groovy"), SCRIPT);
    String[] all = new String[2 + bed.length];
    all[0] = "suggest";
    all[1] = "asked.groovy";
    System.arraycopy(bed, 0, all, 2, bed.length);
    return Run.in(dir, all);
  }

  @Test
  void bed_isToldWhatTheTableHasOfIt_andNoOther() throws IOException {
    Run run = suggest("kitchen", "bed");
    assertEquals(ExitCode.FINE, run.code(), run.err());
    Run draw = Run.in(dir, "draw", "asked.groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, draw.code(), draw.err());
    String csv = Run.files(dir.resolve("out/asked")).get("tables/suggestions.csv");
    int kinds = 0;
    // Lines are wrapped for the window.
    String said = run.out().replaceAll("\\s+", " ");
    for (DataRow row : DataTable.parse("suggestions", csv).rows()) {
      if (row.text("bed").equals("kitchen bed")) {
        kinds++;
        assertTrue(said.contains("kitchen bed, set " + row.text("set")), said);
        assertTrue(said.contains(row.text("plant") + ":"), row.text("plant"));
        assertTrue(said.contains(row.text("why")), row.text("why"));
      }
    }
    assertEquals(6, kinds, "two sets of three");
    assertFalse(run.out().contains("other, set"), run.out());
  }

  @Test
  void bedThatDoesNotAsk_isToldTheNearestOne() throws IOException {
    Run run = suggest("kitchn bed");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("Did you mean `kitchen bed`?"), run.err());
  }

  @Test
  void withoutABed_allThatAskAreTold() throws IOException {
    String out = suggest().out();
    assertTrue(out.contains("kitchen bed, set 1") && out.contains("other, set 1"), out);
  }
}
