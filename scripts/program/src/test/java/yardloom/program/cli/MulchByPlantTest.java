package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Worked yard: chips by what grows in a bed, from the script to the take-off.
 *
 * <p>The plan asks for 11 in on perennial beds. Strawberries bear 3 in (Missouri Botanical Garden,
 * read), raspberry canes come up through 6 in (as asparagus does: a column of 2021, read),
 * blueberry bushes bear a foot (memory), and so does a bed without plants. Beds of 4 by 9, 4 by 10,
 * 6 by 8 and 4 by 15 ft: 36 × 3 / 12 = 9 cu ft, 40 × 6 / 12 = 20, 48 × 11 / 12 = 44, 60 × 11 / 12 =
 * 55, of 27 cu ft a yard: 0.33, 0.74, 1.63 and 2.04. A bed of thyme, 4 by 7 ft, has 5 in, as it
 * says itself: 28 × 5 / 12 = 11.67, 0.43.
 */
class MulchByPlantTest {
  private static final String PLAN =
      """
      plan 'Mulch'
      site 'somewhere', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 60.ft), point(0.ft, 60.ft)])
      sheetMulch { chips perennial: 11.inch }
      bed('a', rect(5.ft, 5.ft, 4.ft, 9.ft), use: 'perennial') { plant 'garden strawberry' }
      bed('b', rect(15.ft, 5.ft, 4.ft, 10.ft), use: 'perennial') { plant 'red raspberry' }
      bed('c', rect(25.ft, 5.ft, 6.ft, 8.ft), use: 'perennial') { plant 'highbush blueberry' }
      bed 'd', rect(35.ft, 5.ft, 4.ft, 15.ft), use: 'perennial'
      bed('e', rect(45.ft, 5.ft, 4.ft, 7.ft), use: 'perennial') { plant 'thyme' ; mulch 5.inch }
      """;

  @TempDir private Path dir;

  @Test
  void chips_lieAsDeepAsThePlantsBear_unlessTheBedSaysOtherwise() throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), PLAN);
    Run.in(dir, "draw", "plan.groovy", "--out", "out", "--as", "csv");
    Map<String, String> files = Run.files(dir.resolve("out"));
    String takeOff = named(files, "take-off.csv");
    assertEquals("0.33", chips(takeOff, "Bed a"), takeOff);
    assertEquals("0.74", chips(takeOff, "Bed b"));
    assertEquals("1.63", chips(takeOff, "Bed c"));
    assertEquals("2.04", chips(takeOff, "Bed d"));
    assertEquals("0.43", chips(takeOff, "Bed e"));
    String said = Run.in(dir, "check", "plan.groovy").out();
    assertTrue(
        said.contains("on bed \"a\" (garden strawberry, 3 in), bed \"b\" (red raspberry, 6 in"),
        said);
    assertTrue(said.contains("Chips lie 5 in deep on thyme, which bears 3 in."), said);
  }

  private static String named(Map<String, String> files, String end) {
    return files.entrySet().stream()
        .filter(e -> e.getKey().endsWith(end))
        .findFirst()
        .orElseThrow(() -> new AssertionError(files.keySet()))
        .getValue();
  }

  private static String chips(String takeOff, String bed) {
    List<String> header = List.of(takeOff.lines().findFirst().orElseThrow().split(","));
    String row =
        takeOff
            .lines()
            .filter(l -> l.startsWith(bed + ","))
            .findFirst()
            .orElseThrow(() -> new AssertionError(takeOff));
    return row.split(",")[header.indexOf("chips_yd3")];
  }
}
