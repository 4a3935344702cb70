package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;

/** Gutters, from plan text to the printed table and the finding. */
class GutterByHandTest {
  /** 40 ft by 20 ft: 800 sq ft. */
  private static final String YARD =
      """
      plan 'Gutter', units: 'us'
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 60.ft), point(0.ft, 60.ft)])
      roof 'barn', rect(10.ft, 10.ft, 40.ft, 20.ft), surface: 'metal'
      cloudburst %s.inch, source: 'by hand'
      """;

  private static Drawn drawn(double rain, String more) {
    return Drawn.of(YARD.formatted(rain) + more);
  }

  private static List<String> findings(Drawn drawn) {
    return drawn.outcome().findings().stream()
        .filter(f -> f.rule().equals("water.downspout"))
        .map(f -> f.text())
        .toList();
  }

  private static String downspout(int x) {
    return "downspout point(" + x + ".ft, 9.ft), roof: 'barn', inside: 3.inch\n";
  }

  /**
   * Plumbing code, from memory: at 1 in an hour and 1/16 in a foot a half-round gutter of 5 in
   * drains 2,500, of 6 in 3,840 sq ft. At 4 in an hour 625 and 960: 800 sq ft take 6 in. Two
   * downspouts share them, 400 each: 5 in. At 1/4 in a foot twice as much runs: 5 in drain 1,250.
   */
  @Test
  void width_followsRainShareAndFall() {
    assertEquals("6.0", drawn(4, "").printed("roof-drainage", "barn", "gutter"));
    assertEquals(
        "5.0", drawn(4, downspout(10) + downspout(50)).printed("roof-drainage", "barn", "gutter"));
    Drawn steep = drawn(4, downspout(10) + "gutter 'barn', width: 5.inch, fall: 0.0208333333\n");
    assertEquals("5.0", steep.printed("roof-drainage", "barn", "gutter"));
    assertEquals("1250", steep.printed("roof-drainage", "barn", "gutter-drains"));
    assertEquals(List.of(), findings(steep));
  }

  /** 5 in at the usual fall drain 625 of 800 sq ft to the one downspout, 3 in across. */
  @Test
  void narrowGutter_isAFinding() {
    List<String> found = findings(drawn(4, downspout(10) + "gutter 'barn', width: 5.inch\n"));
    assertEquals(1, found.size(), found.toString());
    assertTrue(
        found
            .get(0)
            .contains(
                "the gutter of 'barn' drains, to each downspout, 625 sq ft (58.1 m²) of its 800 sq"
                    + " ft (74.3 m²)"),
        found.get(0));
    assertEquals(
        List.of(),
        findings(drawn(4, downspout(10) + downspout(50) + "gutter 'barn', width: 5.inch\n")));
    assertTrue(
        findings(drawn(4, "gutter 'shed', width: 5.inch\n"))
            .get(0)
            .startsWith("there is no roof 'shed' for the gutter"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "gutter 'barn', width: 2.inch; a gutter is 3 in (76 mm) to 10 in (254 mm) wide",
        "gutter 'barn', width: 5.ft; check the unit",
        "gutter 'barn', width: 5.inch, fall: 0.2; falls 0.001 to 0.05",
        "gutter 'barn', width: 5.inch, fall: 0; falls 0.001 to 0.05",
      })
  void nonsense_isRefused(String statement, String says) {
    PlanException refused = assertThrows(PlanException.class, () -> drawn(4, statement + "\n"));
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  @Test
  void secondGutter_isRefused() {
    assertThrows(
        PlanException.class,
        () -> drawn(4, "gutter 'barn', width: 5.inch\ngutter 'barn', width: 6.inch\n"));
  }

  /** The width that the table names never makes a finding, the one below it always does. */
  @Property(tries = 12, seed = "20261128")
  void tableAndFinding_agree(@ForAll @IntRange(min = 2, max = 9) int rain) {
    Drawn without =
        Drawn.without(List.of("sun", "materials"), YARD.formatted(rain) + downspout(10));
    String width = without.printed("roof-drainage", "barn", "gutter");
    Drawn as =
        Drawn.without(
            List.of("sun", "materials"),
            YARD.formatted(rain) + downspout(10) + "gutter 'barn', width: " + width + ".inch\n");
    assertTrue(findings(as).stream().noneMatch(f -> f.contains("gutter")), width + " at " + rain);
    double less = Double.parseDouble(width) - 1;
    Drawn narrow =
        Drawn.without(
            List.of("sun", "materials"),
            YARD.formatted(rain) + downspout(10) + "gutter 'barn', width: " + less + ".inch\n");
    assertTrue(findings(narrow).stream().anyMatch(f -> f.contains("gutter")), less + " at " + rain);
  }
}
