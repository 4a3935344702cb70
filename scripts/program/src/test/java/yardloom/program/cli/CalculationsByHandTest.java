package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The take-off of the demos by pocket calculator, from nothing but the printed appendix.
 *
 * <p>Source: a cubic yard is 27 cu ft, a foot 12 in: area × depth / 324. A cubic metre: area × cm /
 * 100.
 */
class CalculationsByHandTest {
  private static final Pattern HEAD = Pattern.compile("^\\[(\\d+)] (.+) = ([0-9.,]+) (cu yd|m³)$");
  private static final Pattern AREA = Pattern.compile("^ +A?.*area.* = ([0-9.,]+) (sq ft|m²).*");
  private static final Pattern DEPTH = Pattern.compile("^ +depth = ([0-9.,]+) (in|cm).*");

  private static double number(String text) {
    return Double.parseDouble(text.replace(",", ""));
  }

  @ParameterizedTest
  @CsvSource({"urbana-yard", "seattle-corner", "san-francisco-slope"})
  void layersOfTheDemos_recomputedFromThePrintedText_agree(String demo) {
    // Numbers and units hold together by no-break spaces.
    List<String> lines =
        Samples.drawn(demo)
            .get("calculations.txt")
            .lines()
            .map(line -> line.replace('\u00a0', ' '))
            .toList();
    int done = 0;
    for (int i = 0; i + 3 < lines.size(); i++) {
      Matcher head = HEAD.matcher(lines.get(i));
      if (!head.matches() || !lines.get(i + 1).contains("volume = area × depth")) {
        continue;
      }
      Matcher area = AREA.matcher(lines.get(i + 2));
      Matcher depth = DEPTH.matcher(lines.get(i + 3));
      assertTrue(area.matches() && depth.matches(), lines.get(i + 2) + lines.get(i + 3));
      double divisor = depth.group(2).equals("in") ? 324 : 100;
      double byHand = number(area.group(1)) * number(depth.group(1)) / divisor;
      // Printed to two decimals of area, depth and volume.
      assertEquals(byHand, number(head.group(3)), 0.006 + byHand * 0.004, lines.get(i));
      done++;
    }
    // Every demo has more than four beds and paths.
    assertTrue(done > 4, "layers recomputed: " + done);
  }
}
