package yardloom.work.haul;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Volume;

class WholePiecesTest {
  private static final Volume YARD = Volume.cubicYards(1);

  @ParameterizedTest
  @CsvSource({"1.0, 27", "1.5, 18", "2.0, 14", "3.0, 9"})
  void bags_perYard_roundUp(double bagFt3, int bags) {
    // M03; trap 5: 13.5 bags are 14, never 13.
    assertEquals(bags, WholePieces.of(YARD, Volume.cubicFeet(bagFt3)));
  }

  @ParameterizedTest
  @CsvSource({"3, 9", "6, 5"})
  void barrows_perYard_areWholeTrips(double barrowFt3, int trips) {
    // M07
    assertEquals(trips, WholePieces.of(YARD, Volume.cubicFeet(barrowFt3)));
  }

  @Test
  void pieceOfNoVolume_isRefused() {
    assertThrows(PlanException.class, () -> WholePieces.of(YARD, Volume.ZERO));
  }
}
