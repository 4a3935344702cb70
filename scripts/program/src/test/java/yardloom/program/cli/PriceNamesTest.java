package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.table.DataTable;

/** Prices are found by name, so every row of the shipped book must be for something on a bill. */
class PriceNamesTest {
  /** Beds in frames with drip from a tap, tended by the rows' names as a book of the plan's own. */
  private static final String SCRIPT =
      """
      plan 'Priced', units: 'us'
      site 'here', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(-9.ft, -9.ft), point(60.ft, -9.ft), point(60.ft, 72.ft), point(-9.ft, 72.ft)])
      tap 'tap', point(-3.ft, 5.ft)
      supply flow: 14.gpm, pressure: 60.psi
      bed('roots', rect(0.ft, 0.ft, 20.ft, 4.ft), use: 'annual') {
        frame '2x10', stock: 8.ft
        drip emitter: 1.gph, spacing: 6.inch, rowSpacing: 16.inch
        plant 'kale'
      }
      // Four thirsty beds on one valve: the line forks and changes its size.
      for (i in 0..2) {
        bed("roots ${i + 2}", rect(34.ft, 20.ft + 10.ft * i, 20.ft, 4.ft), use: 'annual') {
          frame '2x10', stock: 8.ft
          drip emitter: 1.gph, spacing: 6.inch, rowSpacing: 16.inch
          plant 'kale'
        }
      }
      // One row, which needs neither tee nor elbow.
      bed('edge', rect(0.ft, 18.ft, 12.ft, 1.ft), use: 'annual') {
        drip emitter: 1.gph, spacing: 6.inch, rowSpacing: 16.inch
        plant 'kale'
      }
      bed('berries', rect(0.ft, 10.ft, 30.ft, 4.ft), use: 'perennial') {
        drip emitter: 1.gph, spacing: 6.inch, rowSpacing: 16.inch
        plant 'garden strawberry'
      }
      fence 'boards', line([point(40.ft, -8.ft), point(58.ft, -8.ft)]), height: 6.ft, standing: false
      fence 'mesh', line([point(40.ft, -5.ft), point(58.ft, -5.ft)]), height: 6.ft, made: 'mesh', standing: false
      gate 'gate', point(45.ft, -8.ft)
      wall 'bank', line([point(40.ft, 0.ft), point(58.ft, 0.ft)]), height: 2.ft, retains: true, standing: false
      steps 'climb', line([point(59.ft, 0.ft), point(59.ft, 4.ft)]), rise: 2.ft, width: 2.ft, standing: false
      paving 'slab', rect(40.ft, 4.ft, 5.ft, 5.ft), surface: 'concrete', standing: false
      paving 'walk', rect(46.ft, 4.ft, 5.ft, 5.ft), surface: 'gravel', standing: false
      paving 'flags', rect(52.ft, 4.ft, 5.ft, 5.ft), surface: 'flagstone', standing: false
      pavers 'bricks', rect(40.ft, 10.ft, 5.ft, 5.ft)
      // Every form in which plants are bought.
      bed('nursery', rect(0.ft, 30.ft, 24.ft, 16.ft), use: 'perennial') {
        drip emitter: 1.gph, spacing: 6.inch, rowSpacing: 16.inch
        plant 'carrot'
        plant 'onion'
        plant 'sweet potato', stock: 'plug'
        plant 'potato', stock: 'tuber'
        plant 'rhubarb', stock: 'crown'
        plant 'sage', stock: 'pot 4 in'
      }
      def shrubs = ['cane', 'pot 1 gal', 'pot 2 gal', 'pot 3 gal', 'bare root 18 in', 'bare root 2 ft']
      for (i in 0..5) {
        bed("shrubs ${i}", rect(-8.ft + 10.ft * i, 51.ft, 9.ft, 8.ft), use: 'perennial') {
          drip emitter: 1.gph, spacing: 6.inch, rowSpacing: 16.inch
          plant 'red raspberry', stock: shrubs[i]
        }
      }
      def trees = ['pot 5 gal', 'pot 7 gal', 'pot 10 gal', 'pot 15 gal', 'box 24 in', 'bare root 4 ft', 'bare root 6 ft', 'balled 1 in caliper', 'balled 2 in caliper']
      for (i in 0..8) {
        tree("tree ${i}", point(4.ft + 6.ft * i, 66.ft), crown: 5.ft, height: 6.ft) { species 'peach', stock: trees[i] }
      }
      priceBook fileText('book.csv'), name: 'book.csv'
      """;

  @TempDir private static Path dir;

  /** The book under the names of its own rows; those for a whole group stand in another test. */
  private static String book() throws IOException {
    try (InputStream in =
        PriceNamesTest.class.getResourceAsStream("/yardloom/work/cost/price-demo.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Nobody spreads lime and sulfur on one yard: each is billed where the other is not. */
  @Test
  void everyRowOfTheShippedBook_isBilledInAYardOfAllTrades() throws IOException {
    Files.writeString(dir.resolve("book.csv"), book());
    assertEquals("'elemental sulfur'", unused("acidity ph: 5.2, wanted: 6.2"));
    assertEquals("'ground limestone'", unused("acidity ph: 7.2, wanted: 6.2"));
    List<String> own =
        DataTable.parse("book", book()).rows().stream()
            .map(r -> r.text("item"))
            .filter(i -> !i.startsWith("any "))
            .toList();
    assertTrue(own.size() > 8, own::toString);
  }

  /** The names that the finding says no bill has. */
  private static String unused(String soil) throws IOException {
    Files.writeString(
        dir.resolve("priced.groovy"), SCRIPT + "soilTexture 'loam'\nsoilTest { " + soil + " }\n");
    Run run = Run.in(dir, "draw", "priced.groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    String findings = Run.files(dir.resolve("out/priced")).get("findings.txt");
    Matcher told =
        Pattern.compile("nothing on this bill is called (.*): not used").matcher(findings);
    return told.find() ? told.group(1) : "";
  }

  /** The finding would tell: a name that no bill has is named in it. */
  @Test
  void aRowThatNothingIsCalled_isAFinding() throws IOException {
    Files.writeString(
        dir.resolve("book.csv"), book() + "left-handed shovels,piece,1,2,3,t,p,0,,MEMORY\n");
    Files.writeString(dir.resolve("odd.groovy"), SCRIPT);
    Run run = Run.in(dir, "draw", "odd.groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    String findings = Run.files(dir.resolve("out/odd")).get("findings.txt");
    assertTrue(findings.contains("'left-handed shovels'"), findings);
  }
}
