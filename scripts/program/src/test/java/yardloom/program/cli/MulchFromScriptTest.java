package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a script says of the mulch reaches the tables. Source of the values: geometry and 324 sq ft
 * an inch deep to the cubic yard, by hand in each test.
 */
class MulchFromScriptTest {
  private static final String YARD =
      """
      plan 'Mulch', units: 'us'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 80.ft), point(0.ft, 80.ft)])
      bed 'long', rect(10.ft, 10.ft, 54.ft, 12.ft), use: 'perennial'
      """;

  @TempDir Path dir;

  private List<String> table(String id, String more) throws IOException {
    Path script = dir.resolve("mulch.groovy");
    Files.writeString(script, YARD + more);
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out", "--as", "csv");
    assertTrue(run.code() <= ExitCode.FINDINGS, run.err());
    return Files.readAllLines(dir.resolve("out/mulch/tables/" + id + ".csv"));
  }

  private double chipsYd3(String more) throws IOException {
    String[] bed = table("materials-take-off", more).get(1).split(",");
    return Double.parseDouble(bed[bed.length - 1]);
  }

  @Test
  void mulchDepth_bedOf648SquareFeet_isAreaTimesDepth() throws IOException {
    assertEquals(20.0, chipsYd3("sheetMulch { chips perennial: 10.inch }\n"), 0.005);
  }

  @Test
  void edgeTaper_twoFeet_leavesAFrustum() throws IOException {
    // 648, 52 × 10 and 50 × 8 sq ft: (648 + 4 × 520 + 400) / 6 = 521.33; × 10 / 324 = 16.09.
    assertEquals(
        16.09, chipsYd3("sheetMulch { chips perennial: 10.inch, edgeTaper: 2.ft }\n"), 0.005);
  }

  @Test
  void wallGap_houseAtTheBed_staysBare() throws IOException {
    // A strip of 1 ft off 54 × 12: 594 sq ft; × 10 / 324 = 18.33.
    String house = "building 'house', rect(10.ft, 22.ft, 54.ft, 20.ft), eaves: 10.ft\n";
    assertEquals(18.33, chipsYd3(house + "sheetMulch { chips perennial: 10.inch }\n"), 0.01);
  }

  @Test
  void settling_aFifth_setsTheTopUpOfEachYear() throws IOException {
    List<String> rows =
        table("materials-top-up", "sheetMulch { chips perennial: 10.inch, settling: 0.2 }\n");
    // 20 cu yd lose 4, then half as much each year.
    assertEquals(List.of("1,4.00", "2,2.00", "3,1.00"), rows.subList(1, 4));
  }

  @Test
  void prices_ofBagAndBulk_moveTheBreakEven() throws IOException {
    String prices =
        """
        price 'mulch bag, 2 cu ft', 4.5.money
        price 'wood-chip mulch', 35.money, per: 'yd3'
        price 'delivery of bulk', %s.money
        """;
    // 13.5 bags of 4.5 are 60.75 a yard: 60 / (60.75 - 35) = 2.33; twice the delivery, 4.66.
    assertTrue(
        table("materials-bags-or-bulk", prices.formatted(60)).stream()
            .anyMatch(r -> r.contains("mulch") && r.endsWith("2.33")));
    assertTrue(
        table("materials-bags-or-bulk", prices.formatted(120)).stream()
            .anyMatch(r -> r.contains("mulch") && r.endsWith("4.66")));
  }
}
