package yardloom.materials.mulch.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.formula.MulchLimits.Verdict;

class SettlingTest {
  /** A quarter of 8 cu yd in the first year, half as much in each year after it. */
  @ParameterizedTest
  @CsvSource({"1, 2", "2, 1", "3, 0.5", "4, 0.25"})
  void topUp_isTheLoss_andHalvesEachYear(int year, double cubicYards) {
    assertEquals(
        cubicYards, Settling.addedInYear(year, Volume.cubicYards(8), 0.25).cubicYards(), 1e-12);
  }

  @Test
  void sharesAndYears_outsideTheirRange_areRefused() {
    Volume laid = Volume.cubicYards(10);
    assertEquals(9, Settling.addedInYear(1, laid, 0.9).cubicYards(), 1e-12);
    assertEquals(0, Settling.addedInYear(1, laid, 0).cubicYards());
    assertThrows(PlanException.class, () -> Settling.addedInYear(0, laid, 0.25));
    assertThrows(PlanException.class, () -> Settling.addedInYear(1, laid, -0.01));
    assertThrows(PlanException.class, () -> Settling.addedInYear(1, laid, 0.91));
  }

  /** Iowa State University: 3 to 4 in round trees, 2 to 3 on heavy soil. The ends are good. */
  @ParameterizedTest
  @CsvSource({
    "2.9, false, TOO_LITTLE", "3, false, GOOD", "4, false, GOOD", "4.1, false, TOO_MUCH",
    "1.9, true, TOO_LITTLE", "2, true, GOOD", "3, true, GOOD", "3.1, true, TOO_MUCH"
  })
  void depthsRoundTrees_haveThePublishedRange(double inches, boolean heavy, Verdict expected) {
    assertEquals(expected, MulchLimits.aroundTree(Length.inches(inches), heavy));
  }

  @Test
  void gaps_mayBeJustWhatIsAsked() {
    assertTrue(MulchLimits.trunkGapIsEnough(Length.inches(6)));
    assertFalse(MulchLimits.trunkGapIsEnough(Length.inches(5.9)));
    assertTrue(MulchLimits.wallGapIsEnough(Length.inches(12)));
    assertFalse(MulchLimits.wallGapIsEnough(Length.inches(11.9)));
  }
}
