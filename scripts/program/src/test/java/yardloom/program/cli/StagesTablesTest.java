package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tables that have a part for each stage. Stages of which only one buys what has a price: its table
 * of visits has a column of cost that the other's lacks, and the joined one must hold both,
 * whichever comes first.
 */
class StagesTablesTest {
  private static final String YARD =
      """
      plan 'Priced in part', units: 'metric'
      lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 16.m), point(0.m, 16.m)])
      stage('one', from: '2027-04-05') { FIRST }
      stage('two', from: '2028-04-03') { SECOND }
      """;

  private static final String ITEM =
      "item 'boulders', count: 7, price: 13.money, hours: 2, phase: 'earth'";
  private static final String BED =
      "bed('herbs', rect(2.m, 2.m, 6.m, 1.2.m), use: 'perennial') { plant 'sage' }";

  @TempDir private Path dir;

  /** 7 boulders at 13 are 91. */
  @ParameterizedTest
  @CsvSource({"true, one, two", "false, two, one"})
  void visits_ofAStageWithoutPrices_haveABlankCost(boolean first, String priced, String bare)
      throws IOException {
    String script = YARD.replace("FIRST", first ? ITEM : BED).replace("SECOND", first ? BED : ITEM);
    Files.writeString(dir.resolve("part.groovy"), script);
    Run run = Run.in(dir, "draw", "part.groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    List<String> rows =
        Run.files(dir.resolve("out/part")).get("tables/work-visits.csv").lines().toList();
    assertTrue(
        rows.get(0).startsWith("group,visit,") && rows.get(0).endsWith(",cost"), rows.get(0));
    assertTrue(
        rows.stream().anyMatch(r -> r.startsWith(priced + ",all") && r.endsWith(",91")), "" + rows);
    assertTrue(
        rows.stream().anyMatch(r -> r.startsWith(bare + ",all") && r.endsWith(",")), "" + rows);
  }

  /**
   * Rows every 30 cm on beds of 120 and 90 cm: 4 × 6 m = 24 m and 3 × 5 m = 15 m of dripline, each
   * bought in its stage; the timer once.
   */
  @Test
  void partsOfTheWatering_areListedInTheStageThatBuysThem() throws IOException {
    String dripped =
        "tap 'tap', point(1.m, 1.m)\n%s"
            .formatted(
                YARD.replace(
                        "FIRST",
                        "bed('first', rect(2.m, 2.m, 6.m, 1.2.m)) { plant 'sage'; drip emitter:"
                            + " 2.lph, spacing: 30.cm }")
                    .replace(
                        "SECOND",
                        "bed('second', rect(2.m, 5.m, 5.m, 0.9.m)) { plant 'sage'; drip emitter:"
                            + " 2.lph, spacing: 30.cm }"));
    Files.writeString(dir.resolve("parts.groovy"), dripped);
    Run run = Run.in(dir, "draw", "parts.groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    String parts = Run.files(dir.resolve("out/parts")).get("tables/irrigation-parts.csv");
    assertTrue(parts.contains("\none,\"dripline, 2.0 L/h every 30 cm\",24.00,"), parts);
    assertTrue(parts.contains("\ntwo,\"dripline, 2.0 L/h every 30 cm\",15.00,"), parts);
    assertTrue(parts.contains("\none,timer,") && !parts.contains("\ntwo,timer,"), parts);
  }
}
