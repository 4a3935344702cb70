package yardloom.water.need.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.water.timetable.formula.SoilWater;

class DemandMathTest {
  private static final OutsideRows EASY_SHARE =
      OutsideRows.of(DemandMathTest.class, "easy-share.csv");
  private static final OutsideRows ROOT_ZONE =
      OutsideRows.of(DemandMathTest.class, "root-zone.csv");

  private static double allowance(double et, double factor, double all, double special) {
    return WaterBudget.allowance(
            Length.inches(et), factor, Area.squareFeet(all), Area.squareFeet(special))
        .gallons();
  }

  /** W-01 DWR example for Fresno (read); W-02, W-06, W-07 by the ordinance's formula. */
  @ParameterizedTest
  @CsvSource({
    "W-01, 51.1, 0.7, 50000, 0, 1108870, 1",
    "W-02, 51.1, 0.7, 50000, 2000, 1127879, 1",
    "W-06, 43.0, 0.55, 2453, 68, 36784.1, 1",
    "W-07, 43.5, 0.55, 1000, 0, 14833.5, 0.1",
  })
  void allowance_ofPublishedCases(
      String id,
      double et,
      double factor,
      double all,
      double special,
      double expected,
      double tol) {
    assertEquals(expected, allowance(et, factor, all, special), tol, id);
  }

  /** A public sheet prints 28,542 gal for inputs whose product is 36,016; not an oracle. */
  @Test
  void allowance_ofMisprintedSheet_isTheArithmeticOne() {
    double gallons = allowance(35.1, 0.7, 1850, 1200);
    assertEquals(36016, gallons, 1);
    assertNotEquals(28542, gallons, 1000);
  }

  /** A completed worksheet uses the full factor for its special area too and prints 35,968. */
  @Test
  void allowance_withSpecialArea_isMoreThanTheWorksheetThatForgotIt() {
    assertTrue(allowance(43, 0.55, 2453, 68) > 35968);
    assertEquals(35968, allowance(43, 0.55, 2453, 0), 1);
  }

  @Test
  void use_ofHydrozones_isThePublishedSum() {
    double gallons =
        WaterBudget.use(Length.inches(51.1), 1, 0.71, Area.squareFeet(24_700)).gallons();
    assertEquals(1_102_177, gallons, 2); // W-03, industry page after the DWR example, read
    double line =
        WaterBudget.use(Length.inches(43), 0.617 * 0.81, 0.81, Area.squareFeet(204)).gallons();
    assertEquals(3355.64, line, 0.05); // W-05, completed worksheet 2021, read
  }

  /** W-08: a code that subtracts a quarter of the rain; computed from its formula. */
  @Test
  void allowance_lessRain() {
    Length et = WaterBudget.lessRain(Length.inches(51.1), Length.inches(11));
    assertEquals(
        32_974.7, WaterBudget.allowance(et, 0.55, Area.squareFeet(2000), Area.ZERO).gallons(), 0.5);
  }

  @Test
  void specialArea_largerThanAll_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> allowance(43, 0.55, 100, 101));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "easy-share.csv", numLinesToSkip = 1)
  void easyShare_ofDailyUse_isThatOfPyfao56(
      String id, double tabled, double useMm, double expected) {
    EASY_SHARE.check(id, expected, SoilWater.easyShare(tabled, Length.millimetres(useMm)), 0.001);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "root-zone.csv", numLinesToSkip = 1)
  void rootZone_ofExample36(
      String id,
      String crop,
      double rootM,
      double easyShare,
      double heldMmPerM,
      double totalMm,
      double readyMm) {
    Length total = SoilWater.total(heldMmPerM / 1000, 0, Length.metres(rootM));
    ROOT_ZONE.check(id, "totalMm", totalMm, total.millimetres(), 0.5);
    ROOT_ZONE.check(id, "readyMm", readyMm, SoilWater.ready(total, easyShare).millimetres(), 0.51);
  }

  /** Rows of pyfao56's test01 output (USDA-ARS), read. */
  @Test
  void stressAndDepletion_ofPyfao56Rows() {
    Length total = SoilWater.total(0.225, 0.100, Length.metres(0.6));
    assertEquals(75.000, total.millimetres(), 0.01); // T-04
    assertEquals(50.55, SoilWater.ready(total, 0.674).millimetres(), 0.01);
    assertEquals(0.891, stress(total, 48.58, 51.457), 0.001); // T-05
    assertEquals(0.825, stress(total, 51.439, 55.560), 0.001); // T-06
    assertEquals(42.000, depleted(75, 0, 33, total), 1e-9); // T-07
    assertEquals(12.907, depleted(6.012, 6.895, 0, total), 0.001); // T-08
  }

  private static double stress(Length total, double readyMm, double depletionMm) {
    return SoilWater.stress(total, Length.millimetres(readyMm), Length.millimetres(depletionMm));
  }

  private static double depleted(double mm, double useMm, double waterMm, Length total) {
    return SoilWater.depleted(
            Length.millimetres(mm), Length.millimetres(useMm), Length.millimetres(waterMm), total)
        .millimetres();
  }

  /** University of Minnesota Extension, read. */
  @ParameterizedTest
  @CsvSource({"1, 1.5, 1, 1.5", "2, 3, 2, 3", "3, 4.5, 3, 4.5", "4, 6, 4, 6"})
  void treeEstablishment_byTrunk(double inches, double years, double least, double most) {
    Length trunk = Length.inches(inches);
    assertEquals(years, TreeEstablishment.years(trunk), 1e-9);
    assertEquals(least, TreeEstablishment.least(trunk).gallons(), 1e-9);
    assertEquals(most, TreeEstablishment.most(trunk).gallons(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "2, 1", "3, 3", "12, 3", "13, 7"})
  void treeEstablishment_byWeek(int week, double days) {
    assertEquals(days, TreeEstablishment.interval(week).days(), 1e-9);
  }

  @Property(seed = "20261125")
  void stress_liesBetweenNoneAndFull_andIsOneUpToReadyWater(
      @ForAll @DoubleRange(min = 10, max = 200) double totalMm,
      @ForAll @DoubleRange(min = 0.1, max = 0.8) double share,
      @ForAll @DoubleRange(min = 0, max = 1) double depleted) {
    Length total = Length.millimetres(totalMm);
    Length ready = SoilWater.ready(total, share);
    double ks = SoilWater.stress(total, ready, total.times(depleted));
    assertTrue(ks >= 0 && ks <= 1);
    assertEquals(1, SoilWater.stress(total, ready, ready));
    assertEquals(0, SoilWater.stress(total, ready, total));
  }

  @Property(seed = "20261125")
  void allowance_isLinear_andUseWithinTheFactorNeverExceedsIt(
      @ForAll @DoubleRange(min = 1, max = 80) double et,
      @ForAll @DoubleRange(min = 1, max = 9000) double area,
      @ForAll @DoubleRange(min = 0.01, max = 0.55) double factor) {
    double once = allowance(et, 0.55, area, 0);
    assertEquals(2 * once, allowance(2 * et, 0.55, area, 0), once * 1e-9);
    assertEquals(2 * once, allowance(et, 0.55, 2 * area, 0), once * 1e-9);
    double use =
        WaterBudget.use(Length.inches(et), factor * 0.81, 0.81, Area.squareFeet(area)).gallons();
    assertTrue(use <= once * (1 + 1e-9));
  }

  @Property(seed = "20261125")
  void netNeed_isNeverNegative_andFallsWithRain(
      @ForAll @DoubleRange(min = 0, max = 1.3) double kc,
      @ForAll @DoubleRange(min = 0, max = 250) double etMm,
      @ForAll @DoubleRange(min = 0, max = 250) double rainMm) {
    Length dry = NetNeed.of(kc, Length.millimetres(etMm), Length.ZERO);
    Length wet = NetNeed.of(kc, Length.millimetres(etMm), Length.millimetres(rainMm));
    assertTrue(wet.metres() >= 0 && wet.compareTo(dry) <= 0);
  }
}
