package yardloom.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.drip.formula.ApplicationRate;
import yardloom.water.drip.formula.DesignUniformity;
import yardloom.water.lawn.formula.Aridity;
import yardloom.water.need.formula.WaterBudget;
import yardloom.water.overflow.formula.CurveNumber;
import yardloom.water.overflow.formula.RainGarden;
import yardloom.water.roof.formula.FirstFlush;
import yardloom.water.roof.formula.RainYield;
import yardloom.water.timetable.formula.CycleSoak;
import yardloom.water.timetable.formula.RainSaved;
import yardloom.water.timetable.formula.RunTime;
import yardloom.water.timetable.formula.SoilWater;

/** What each formula takes at the ends of its range, and refuses just beyond; by hand. */
class FormulaLimitsTest {
  private static Length mm(double millimetres) {
    return Length.millimetres(millimetres);
  }

  private static void refused(Executable beyond) {
    assertThrows(IllegalArgumentException.class, beyond);
  }

  @Test
  void shares_goFromNothingToAll() {
    Area roof = Area.squareMetres(50);
    assertEquals(0, RainYield.of(roof, mm(10), 0).litres(), 1e-9);
    assertEquals(500, RainYield.of(roof, mm(10), 1).litres(), 1e-9);
    assertEquals(0, RainYield.of(roof, Length.ZERO, 1).litres(), 1e-9);
    refused(() -> RainYield.of(roof, mm(10), 1.001));
    assertEquals(1, DesignUniformity.of(0, 1, 1), 1e-12);
    assertEquals(0, DesignUniformity.of(0, 1, 0), 1e-12);
    refused(() -> DesignUniformity.of(-0.001, 1, 1));
    refused(() -> DesignUniformity.of(0, 0, 1));
    refused(() -> DesignUniformity.of(0, 1, 1.001));
    assertEquals(2, RunTime.of(mm(10), mm(5), 1).hours(), 1e-9);
    assertEquals(0, RunTime.of(Length.ZERO, mm(5), 1).hours(), 1e-9);
    refused(() -> RunTime.of(mm(10), mm(5), 0));
    refused(() -> RunTime.of(mm(10), mm(5), 1.001));
    refused(() -> RunTime.of(mm(10), Length.ZERO, 1));
    assertEquals(50, RainGarden.area(roof, 1).squareMetres(), 1e-9);
    refused(() -> RainGarden.area(roof, 0));
    refused(() -> RainGarden.area(roof, 1.001));
  }

  /** 40 in × 0.62 gal × 100 sq ft are 2,480 gal, by any factor where all of it is special. */
  @Test
  void waterBudget_takesAllGroundAsSpecial_andNoLoss() {
    Length et = Length.inches(40);
    Area all = Area.squareFeet(100);
    assertEquals(2480, WaterBudget.allowance(et, 0.55, all, all).gallons(), 1e-6);
    refused(() -> WaterBudget.allowance(et, 0.55, all, Area.squareFeet(100.1)));
    assertEquals(1240, WaterBudget.use(et, 0.5, 1, all).gallons(), 1e-6);
    refused(() -> WaterBudget.use(et, 0.5, 0, all));
    refused(() -> WaterBudget.use(et, 0.5, 1.001, all));
  }

  /** The extension's depths change above 4, 7 and 12 percent. */
  @ParameterizedTest
  @CsvSource({"0, 3, 5", "4, 3, 5", "4.01, 6, 7", "7, 6, 7", "7.01, 8, 8", "12, 8, 8"})
  void rainGarden_isDeeperOnSteeperGround(double percent, double from, double to) {
    RainGarden.Depth depth = RainGarden.depth(percent).orElseThrow();
    assertEquals(from, depth.from().inches(), 1e-9);
    assertEquals(to, depth.to().inches(), 1e-9);
    assertTrue(RainGarden.depth(12.01).isEmpty());
    refused(() -> RainGarden.depth(-0.01));
  }

  /**
   * Number 100 holds nothing back, so that all rain runs off; 0 has no meaning, nor has no ground.
   */
  @Test
  void curveNumber_goesUpToAHundred() {
    assertEquals(0, CurveNumber.retention(100).inches(), 1e-12);
    assertEquals(2, CurveNumber.runoff(Length.inches(2), 100).inches(), 1e-12);
    refused(() -> CurveNumber.retention(0));
    refused(() -> CurveNumber.retention(100.1));
    List<CurveNumber.Patch> none = List.of(new CurveNumber.Patch(Area.squareMetres(0), 80));
    refused(() -> CurveNumber.composite(none));
    refused(() -> CurveNumber.weightedRunoff(mm(20), none));
  }

  /** 10 mm of 20 that count last two days at 5 a day; of 30 only 20 stay: four days. */
  @Test
  void rainSaves_whatTheRootsCanHold() {
    assertEquals(2, RainSaved.of(mm(10), mm(20), mm(5)).days(), 1e-9);
    assertEquals(4, RainSaved.of(mm(30), mm(20), mm(5)).days(), 1e-9);
    assertEquals(0, RainSaved.of(Length.ZERO, mm(20), mm(5)).days(), 1e-9);
    refused(() -> RainSaved.of(mm(10), mm(20), Length.ZERO));
  }

  /** The glossary's drylands end at a ratio of 0.65: 649 mm of rain against 1,000, not 651. */
  @Test
  void dryland_isBelowTheRatio() {
    assertTrue(Aridity.isDry(mm(649), mm(1000)));
    assertFalse(Aridity.isDry(mm(651), mm(1000)));
    assertFalse(Aridity.isDry(Length.ZERO, Length.ZERO));
  }

  @Test
  void nothing_isNotDividedBy() {
    refused(() -> ApplicationRate.perHour(Flow.litresPerHour(10), Area.squareMetres(0)));
    assertEquals(0, FirstFlush.of(Area.squareMetres(10), Length.ZERO).litres(), 1e-12);
    refused(() -> FirstFlush.of(Area.squareMetres(10), mm(-1)));
    refused(() -> FirstFlush.pipe(Volume.litres(10), Length.ZERO));
    refused(() -> CycleSoak.longestTurn(mm(5), mm(10), mm(10)));
    assertEquals(0, CycleSoak.soak(TimeSpan.minutes(9), mm(10), mm(10)).minutes(), 1e-12);
    assertEquals(0, SoilWater.total(0.2, 0.2, Length.metres(1)).metres(), 1e-12);
    refused(() -> SoilWater.total(0.2, 0.21, Length.metres(1)));
  }

  /** Down to the ready water nothing is short, at the total all; half-way between, half. */
  @Test
  void stress_fallsFromReadyToTotal() {
    assertEquals(1, SoilWater.stress(mm(80), mm(40), mm(40)), 1e-12);
    assertEquals(0.5, SoilWater.stress(mm(80), mm(40), mm(60)), 1e-12);
    assertEquals(0, SoilWater.stress(mm(80), mm(40), mm(80)), 1e-12);
  }
}
