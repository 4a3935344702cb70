package yardloom.program.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaperScaleTest {
  /** By hand: 1000 / 96; 1000 / 50; 25.4 / (10 × 0.3048) = 1000 / 120; 1000 / (4 × 12). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1/8\" = 1'-0\" | 10.416667",
        "1:50 | 20",
        "1\" = 10' | 8.333333",
        "1/4\" = 1'-0\" (1:48) | 20.833333",
        "as noted | 0"
      })
  void scale_asTitleBlocksWriteIt_givesPaperForAMetre(String scale, double wanted) {
    assertEquals(wanted, PaperScale.millimetresPerMetre(scale), 1e-6);
  }
}
