package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.vocab.Scope;

/**
 * Every registered word that draws something has its answer in orders, hours or the table of what
 * is drawn; every other word says why nothing is bought or done for it. A new word fails until it
 * is answered for in {@code words-drawn.csv}.
 */
class DrawnWordsTest {
  private static final DataTable WORDS = DataTable.shipped(DrawnWordsTest.class, "words-drawn.csv");

  private static final Path RARE =
      Path.of("src/test/resources/yardloom/program/appendix/rare-words.groovy");

  /** What that plan leaves out. */
  private static final String OTHERS =
      """
      plan 'Others', units: 'us'
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 70.ft), point(0.ft, 70.ft)])
      swale 'hollow', line([point(10.ft, 60.ft), point(40.ft, 60.ft)]), bottom: 2.ft, depth: 8.inch, sides: 3
      berm 'low bank', of: 'hollow', side: 'right'
      keepOut 'play', rect(70.ft, 50.ft, 15.ft, 15.ft), reason: 'play'
      easement 'power', rect(0.ft, 66.ft, 90.ft, 4.ft), holder: 'the power company'
      drainField 'field', rect(70.ft, 5.ft, 15.ft, 15.ft)
      utility 'gas', line([point(0.ft, 2.ft), point(40.ft, 4.ft)]), carries: 'gas', clearance: 0.5.ft
      beds('row', rect(10.ft, 10.ft, 20.ft, 12.ft), width: 4.ft, gap: 4.ft, bearing: 0.deg, use: 'perennial') { plant 'sage' }
      bedAlong('along', line([point(10.ft, 40.ft), point(40.ft, 40.ft)]), depth: 3.ft, length: 20.ft, use: 'perennial') { plant 'thyme' }
      tap 'bib', point(45.ft, 30.ft)
      tree('flat', point(55.ft, 40.ft), crown: 10.ft, height: 8.ft, standing: false) {
        species 'apple (dwarf)'
        trained 'espalier', width: 10.ft
        mulchRing 2.ft
        drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 16.inch
      }
      """;

  @TempDir private Path dir;

  @Test
  void everyWord_isAnsweredFor() {
    List<String> registered =
        Toolkit.load().plugins().lexicon().all().stream()
            .filter(w -> !w.plugin().equals("kernel"))
            .map(w -> w.plugin() + " " + Scope.nameOf(w.scope()) + " " + w.name())
            .map(w -> w.replaceAll(" +", " "))
            .sorted()
            .toList();
    assertEquals(
        registered, WORDS.rows().stream().map(r -> r.text("word")).sorted().toList(), "answer it");
    WORDS.rows().forEach(r -> assertFalse(r.text("answer").isBlank(), r.text("word")));
  }

  @Test
  void whatAWordDraws_isBoughtOrDone_orSaysWhyNot() throws IOException {
    Files.copy(RARE, dir.resolve("rare.groovy"));
    Files.writeString(dir.resolve("others.groovy"), OTHERS);
    String said = drawn("rare") + drawn("others");
    String scripts = Files.readString(RARE) + OTHERS;
    List<String> open = new ArrayList<>();
    for (DataRow row : WORDS.rows()) {
      if (row.text("draws").equals("yes")) {
        String name = row.text("word").replaceAll(".* ", "");
        assertTrue(scripts.matches("(?s).*\\b" + name + "\\b.*"), name + " stands in no script");
        if (!said.contains(row.text("answer"))) {
          open.add(row.text("word") + ": " + row.text("answer"));
        }
      }
    }
    assertEquals(List.of(), open);
  }

  private String drawn(String name) throws IOException {
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    StringBuilder said = new StringBuilder();
    Map<String, String> files = Run.files(dir.resolve("out/" + name));
    for (String table : List.of("materials-orders-by-phase", "materials-labour", "work-elements")) {
      said.append(files.get("tables/" + table + ".csv"));
    }
    return said.toString().replace('\u00a0', ' ');
  }
}
