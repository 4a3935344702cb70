package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plants keep off the tap that the drip hangs on. */
class TapByHandTest {
  private static final String YARD =
      """
      plan 'Taps', units: 'us'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
      ownPlant('bush', like: 'red currant', source: publication('x', by: 'y', seen: 'read')) { grown spacing: 4.ft, rows: 4.ft, spread: 5.ft, height: 6.ft }
      bed('row', rect(10.ft, 10.ft, 16.ft, 4.ft), use: 'perennial') { plant 'bush', spacing: 4.ft, rowSpacing: 4.ft%s }
      tap 'hose', point(%s.ft, %s.ft), source: 'mains'
      """;

  /**
   * Bushes at 12, 16, 20 and 24 ft, all 12 ft north, 5 ft wide: 2.5 ft each. At (14, 13.4) the tap
   * is √(2² + 1.4²) = 2.44 ft from two, at (14, 13.6) 2.56 ft; at (12, 14.4) 2.4 ft from one.
   */
  @ParameterizedTest(name = "tap at {0}, {1}: {2}")
  @CsvSource({"14, 13.4, 2", "14, 13.6, 0", "12, 14.4, 1", "40, 12, 0"})
  void tapsUnderGrownPlants_areFound(String x, String y, int near) {
    List<String> said =
        Drawn.of(YARD.formatted("", x, y)).outcome().findings().stream()
            .filter(f -> f.rule().equals("planting.taps"))
            .map(f -> f.text())
            .toList();
    assertEquals(near == 0 ? 0 : 1, said.size(), said.toString());
    if (near > 0) {
      assertTrue(said.get(0).startsWith(near + " of bush will grow over"), said.get(0));
      assertTrue(said.get(0).endsWith("keep 2.5 ft (0.76 m) free"), said.get(0));
    }
  }
}
