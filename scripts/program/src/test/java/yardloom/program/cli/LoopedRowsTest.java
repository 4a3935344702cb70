package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows of data of several kinds, looped over without a type being written. */
class LoopedRowsTest {
  private static final String LOT =
      """
      plan 'Rows', units: 'us'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 60.ft), point(0.ft, 60.ft)])
      """;

  private static final String ROWS =
      "def rows = [['north', 4.ft, 'tomato', 40.ft, 2], ['south', 3.5.ft, 'kale', 30.ft, 3]]\n";

  @TempDir private Path dir;

  private Run checked(String script) throws IOException {
    Files.writeString(dir.resolve("rows.groovy"), LOT + script);
    return Run.in(dir, "draw", "rows.groovy", "--as", "csv");
  }

  /** 20 × 4 ft and 20 × 3.5 ft: 80 and 70 sq ft. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "for (row in rows) { bed(\"bed ${row[0]}\", rect(5.ft, row[3], 20.ft, row[1]), use:"
            + " 'annual') { plant row[2] } }",
        "rows.each { name, depth, kind, y, count ->\n"
            + "  bed(\"bed $name\", rect(5.ft, y, 20.ft, depth), use: 'annual') { plant kind }\n"
            + "}",
        "rows.each { row ->\n"
            + "  Length depth = row[1]\n"
            + "  String kind = row[2]\n"
            + "  bed(\"bed ${row[0]}\", rect(5.ft, row[3], 10.ft * 2, depth), use: 'annual') {"
            + " plant kind }\n"
            + "}",
        "def maps = [[name: 'north', depth: 4.ft, kind: 'tomato', y: 40.ft], [name: 'south', depth:"
            + " 3.5.ft, kind: 'kale', y: 30.ft]]\n"
            + "for (m in maps) { bed(\"bed ${m.name}\", rect(5.ft, m.y, 20.ft, m.depth), use:"
            + " 'annual') { plant m.kind } }",
      })
  void rows_giveEachWordItsKind(String loop) throws IOException {
    Run run = checked(ROWS + loop + "\n");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    String beds = Run.files(dir.resolve("yardloom-out/rows")).get("tables/beds.csv");
    assertTrue(beds.matches("(?s).*bed north,[^\n]*\\b80\\b.*"), beds);
    assertTrue(beds.matches("(?s).*bed south,[^\n]*\\b70\\b.*"), beds);
  }

  @Test
  void numbersOfRows_mayStandWhereNumbersAreNeeded() throws IOException {
    Run run =
        checked(
            ROWS
                + "for (row in rows) { item \"stakes ${row[0]}\", count: row[4], price: 2.money,"
                + " phase: 'finish' }\n");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    String cost = Run.files(dir.resolve("yardloom-out/rows")).get("tables/materials-cost.csv");
    assertTrue(cost.contains("stakes north,4") && cost.contains("stakes south,6"), cost);
  }

  /** The second row has a text where its bed needs a length; it is told with line and kinds. */
  @Test
  void rowWithAnotherKind_isToldWhereItIsTaken() throws IOException {
    Run run =
        checked(
            ROWS.replace("3.5.ft", "'wide'")
                + "for (row in rows) {\n"
                + "  bed(\"bed ${row[0]}\", rect(5.ft, row[3], 20.ft, row[1]))\n"
                + "}\n");
    assertEquals(ExitCode.PLAN, run.code(), run.out());
    assertTrue(run.err().contains("rows.groovy:5"), run.err());
    assertTrue(run.err().contains("needs a length"), run.err());
    assertTrue(run.err().contains("got a text"), run.err());
  }

  /**
   * A value of a row is taken for what it is compared with or added to: 40 ft is more than 35 ft,
   * the bed lies at 40 - 2 ft and is 4 + 1 ft deep, 20 × 5 ft = 100 sq ft; both depths are 7.5 ft.
   */
  @Test
  void valueOfARow_isComparedAndAdded() throws IOException {
    Run run =
        checked(
            ROWS
                + "Length sum = 0.ft\n"
                + "for (row in rows) {\n"
                + "  sum = sum + row[1]\n"
                + "  if (row[0] == 'north' && row[3] > 35.ft && row[2] > 'a' && row[4] <= 2) {\n"
                + "    bed(row[0], rect(5.ft, row[3] - 2.ft, 20.ft, 1.ft + row[1]))\n"
                + "  }\n"
                + "}\n"
                + "if (sum == 7.5.ft) { note 'sum', at: point(1.ft, 1.ft) }\n"
                + "for (row in rows.findAll { it[3] < 35.ft }) {\n"
                + "  bed(\"${row[0]} too\", rect(5.ft, row[3], 20.ft, 2.ft))\n"
                + "}\n");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    String beds = Run.files(dir.resolve("yardloom-out/rows")).get("tables/beds.csv");
    assertTrue(beds.matches("(?s).*north,[^\n]*\\b100\\b.*"), beds);
    assertTrue(beds.contains("south too") && !beds.contains("north too"), beds);
  }

  /** Twice a value of unknown kind is of unknown kind; half of none is nothing. */
  @Test
  void valueOfARow_isMultipliedOnceItsTypeIsSaid() throws IOException {
    Run run = checked(ROWS + "for (row in rows) { def twice = row[1] * 2 }\n");
    assertEquals(ExitCode.PLAN, run.code(), run.out());
    assertTrue(run.err().contains("as in Length depth = row[1]"), run.err());
  }

  @Test
  void rowOfAnotherKind_isToldWhereItIsAdded() throws IOException {
    Run run =
        checked(
            ROWS.replace("30.ft, 3", "'far', 3")
                + "for (row in rows) { note row[0], at: point(1.ft, row[3] + 1.ft) }\n");
    assertEquals(ExitCode.PLAN, run.code(), run.out());
    assertTrue(run.err().contains("rows.groovy:4"), run.err());
    assertTrue(run.err().contains("needs a length, such as 4.ft; got a text"), run.err());
  }

  /** What can never be right is refused before anything runs. */
  @Test
  void kindThatNoRowHas_isRefusedBeforeItRuns() throws IOException {
    Run run =
        checked(
            "def names = ['a', 'b']\nfor (n in names) { bed(n, rect(5.ft, n, 20.ft, 4.ft)) }\n");
    assertEquals(ExitCode.PLAN, run.code(), run.out());
    assertTrue(run.err().contains("rows.groovy:4:38: `rect`: y needs a length"), run.err());
  }
}
