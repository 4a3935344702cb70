package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;

/**
 * Published figures about water through the plan's own words and printed tables. Each row of {@code
 * water-rows.csv} bears its source, and says what holds it: a plan (here), another test, or that no
 * plan can reach it and why.
 */
class PublishedWaterRowsTest {
  private static final Set<String> TESTS =
      Set.of("NeedByHandTest", "LawnWaterTest", "FrictionTest", "PublishedRowsTest");

  private static final String HEAD =
      """
      plan 'Rows', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(99.ft, 0.ft), point(99.ft, 99.ft), point(0.ft, 99.ft)])
      """;

  private static final OutsideRows ROWS =
      OutsideRows.of(PublishedWaterRowsTest.class, "water-rows.csv");

  private final Set<String> done = new TreeSet<>();

  @ParameterizedTest
  @CsvFileSource(resources = "water-rows.csv", numLinesToSkip = 1)
  void row_isHeldOrHasItsReason(
      String id,
      String quantity,
      String expected,
      Double tolerance,
      String source,
      String mark,
      String through) {
    assertTrue(!source.isBlank() && !mark.isBlank(), id);
    if (!through.equals("plan")) {
      assertTrue(
          TESTS.contains(through) || through.startsWith("no plan: ") && through.length() > 60, id);
      ROWS.met(id, "", "met in " + through.replaceFirst("^no plan: ", ""), "" + tolerance);
      return;
    }
    List<String> values = List.of(expected.split(";"));
    List<String> got = new ArrayList<>();
    switch (id) {
      case "D-12" -> christiansen(values, tolerance, got);
      case "D-13" -> makers(values, got);
      case "G-05" -> fromHouse(values, got);
      case "N-01" -> establishment(values, got);
      case "N-02" -> frequency(values, got);
      case "N-03" -> shrubs(values, got);
      case "N-04" -> nation(values, got);
      case "N-06" -> intake(values, got);
      case "W-09" -> allowance(values, got);
      default -> throw new AssertionError("no plan for " + id);
    }
    ROWS.met(id, "", String.join(" and ", got), "" + tolerance);
  }

  /** What a plan printed, to as many digits as it is held by. */
  private static double kept(List<String> got, double value) {
    got.add(new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString());
    return value;
  }

  private static String kept(List<String> got, String text) {
    got.add(text);
    return text;
  }

  private static double number(Drawn drawn, String table, String row, String column) {
    return Double.parseDouble(drawn.printed(table, row, column));
  }

  /** Readings spread evenly from 90 to 100 and from 80 to 100, so varying by 10 and 20 percent. */
  private static void christiansen(List<String> values, double tolerance, List<String> got) {
    int[] least = {90, 80};
    for (int i = 0; i < 2; i++) {
      StringBuilder readings = new StringBuilder();
      for (int k = 0; k <= 20; k++) {
        readings.append(k == 0 ? "" : ", ").append(100 - (100 - least[i]) * k / 20.0);
      }
      Drawn drawn = Drawn.of(HEAD + "catchTest 'row', [" + readings + "]\n");
      assertEquals(
          Double.parseDouble(values.get(i)),
          kept(got, number(drawn, "catch-test", "row", "christiansen")),
          tolerance);
    }
  }

  /** What a short level row keeps of evenness is 1 − 1.27 × the variation as made. */
  private static void makers(List<String> values, List<String> got) {
    Drawn drawn =
        Drawn.of(
            HEAD
                + "bed('short', rect(10.ft, 10.ft, 4.ft, 1.ft), use: 'perennial') { drip emitter:"
                + " 0.5.gph, spacing: 12.inch }\n");
    double made = 100 * (1 - drawn.exact("drip-hydraulics", "short", "design")) / 1.27;
    kept(got, made);
    assertTrue(made >= Double.parseDouble(values.get(0)), "" + made);
    assertTrue(made <= Double.parseDouble(values.get(1)), "" + made);
  }

  private static void fromHouse(List<String> values, List<String> got) {
    double feet = Double.parseDouble(values.get(0));
    assertEquals(1, tooNear(feet - 0.5));
    assertEquals(0, tooNear(feet + 0.5));
    got.add("found at " + (feet - 0.5) + " and not at " + (feet + 0.5));
  }

  private static long tooNear(double feet) {
    Drawn drawn =
        Drawn.of(
            HEAD
                + "building('house', rect(20.ft, 20.ft, 30.ft, 20.ft), eaves: 9.ft)\n"
                + "roof 'back', rect(20.ft, 20.ft, 30.ft, 10.ft), surface: 'metal'\n"
                + "basin('hollow', rect("
                + (50 + feet)
                + ".ft, 20.ft, 20.ft, 15.ft), drains: 'back', depth: 6.inch, storm: 1.inch)\n");
    return drawn.outcome().findings().stream()
        .filter(f -> f.text().contains("from a building"))
        .count();
  }

  private static Drawn trees() {
    StringBuilder trees = new StringBuilder(HEAD);
    for (int inches = 1; inches <= 4; inches++) {
      trees.append(
          "tree('t%d', point(%d.ft, 50.ft), crown: 9.ft, height: 12.ft, trunk: %d.inch, standing:"
                  .formatted(inches, 20 * inches, inches)
              + " false)\n");
    }
    return Drawn.of(trees.toString());
  }

  /** Caliper 1 to 4 in: 1.5, 3, 4.5, 6 years; 1 to 1.5 … 4 to 6 gal. */
  private static void establishment(List<String> values, List<String> got) {
    for (int inches = 1; inches <= 4; inches++) {
      String tree = "t" + inches;
      assertEquals(
          inches * Double.parseDouble(values.get(0)),
          kept(got, number(trees(), "establishment", tree, "years")),
          0.001);
      assertEquals(
          inches * Double.parseDouble(values.get(1)),
          kept(got, trees().exact("establishment", tree, "least") / 0.003785411784),
          0.001);
      assertEquals(
          inches * Double.parseDouble(values.get(2)),
          kept(got, trees().exact("establishment", tree, "most") / 0.003785411784),
          0.001);
    }
  }

  private static void frequency(List<String> values, List<String> got) {
    assertEquals(values.get(0), kept(got, trees().printed("establishment", "t2", "weeks-1-2")));
    assertEquals(values.get(1), kept(got, trees().printed("establishment", "t2", "weeks-3-12")));
    assertEquals(values.get(2), kept(got, trees().printed("establishment", "t2", "later")));
  }

  private static void shrubs(List<String> values, List<String> got) {
    String note = trees().tables().get("establishment").notes().get(0);
    values.forEach(v -> assertTrue(note.contains(kept(got, v)), note));
  }

  private static void nation(List<String> values, List<String> got) {
    String lawn = "formerLawn 'cool season'\nbed('b', rect(10.ft, 10.ft, 10.ft, 10.ft))\n";
    String note = String.join(" ", notes(HEAD + lawn));
    values.forEach(
        v -> assertTrue(note.contains(kept(got, v) + " gal") || note.contains(v + " %"), note));
    String metric = HEAD.replace("units: 'us'", "units: 'metric'") + lawn;
    assertTrue(notes(metric).stream().noneMatch(n -> n.contains("WaterSense")));
  }

  private static List<String> notes(String plan) {
    return Drawn.of(plan).tables().get("water-against-lawn").notes();
  }

  /** The lower end of its texture's range is what designs take. */
  private static void intake(List<String> values, List<String> got) {
    String[] textures = {"sandy loam", "loam", "clay loam", "clay"};
    for (int i = 0; i < 4; i++) {
      Drawn drawn = Drawn.of(HEAD + "soilTexture '" + textures[i] + "', organic: 2\n");
      double mm = 1000 * drawn.exact("materials-soil", textures[i], "intake");
      kept(got, mm);
      String[] range = values.get(i).split("-");
      assertTrue(mm >= Double.parseDouble(range[0]) - 1e-9, textures[i] + " " + mm);
      assertTrue(mm <= Double.parseDouble(range[1]) + 1e-9, textures[i] + " " + mm);
    }
  }

  /** 43 in × 0.62 × 0.55 × 100 sq ft: the factor holds where the plan says none. */
  private static void allowance(List<String> values, List<String> got) {
    Drawn drawn =
        Drawn.of(
            HEAD
                + "waterAllowance yearlyEt: 43.inch\n"
                + "bed('sage', rect(10.ft, 10.ft, 10.ft, 10.ft)) { plantFactor 0.3 }\n");
    double gallons = 43 * 0.62 * Double.parseDouble(values.get(0)) * 100;
    assertEquals(gallons, number(drawn, "water-allowance", "Allowance", "use"), 0.6);
    assertEquals(values.get(3), drawn.printed("water-allowance", "sage", "efficiency"));
    String note = String.join(" ", drawn.tables().get("water-allowance").notes());
    values.forEach(v -> assertTrue(note.contains(kept(got, v)), note));
  }

  /** What the issue names as absent. */
  @Test
  void rowsOfTheIssue_areAllListed() throws Exception {
    List<String> asked =
        List.of(
            "HF-02", "HF-10", "HF-31", "D-12", "D-13", "N-01", "N-02", "N-03", "N-04", "N-05",
            "N-06", "U-05", "R-11", "G-03", "G-05", "HF-29", "W-04", "W-09");
    try (var in = PublishedWaterRowsTest.class.getResourceAsStream("water-rows.csv")) {
      new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .forEach(line -> done.add(line.substring(0, line.indexOf(','))));
    }
    assertEquals(new TreeSet<>(asked), done);
  }
}
