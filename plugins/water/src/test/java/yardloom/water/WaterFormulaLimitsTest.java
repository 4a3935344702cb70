package yardloom.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.drip.formula.ApplicationRate;
import yardloom.water.drip.formula.CatchUniformity;
import yardloom.water.drip.formula.DesignUniformity;
import yardloom.water.lawn.formula.Aridity;
import yardloom.water.need.formula.Taper;
import yardloom.water.need.formula.WaterBudget;
import yardloom.water.overflow.formula.CurveNumber;
import yardloom.water.overflow.formula.RainGarden;
import yardloom.water.roof.formula.FirstFlush;
import yardloom.water.roof.formula.RainYield;
import yardloom.water.roof.formula.RoofDrainage;
import yardloom.water.soilwater.formula.RootZone;
import yardloom.water.tank.formula.Knee;

/** What formulas still take at the ends of their ranges, and what not. Worked beside each. */
class WaterFormulaLimitsTest {
  private static final Length INCH = Length.inches(1);
  private static final Area SQFT = Area.squareFeet(1);

  private static void refused(Executable what) {
    assertThrows(IllegalArgumentException.class, what);
  }

  @Test
  void uniformity_takesTheEndsOfItsRanges() {
    assertEquals(1, DesignUniformity.of(0, 1, 1), 1e-12);
    assertEquals(0, DesignUniformity.of(0.1, 1, 0), 1e-12);
    refused(() -> DesignUniformity.of(-0.01, 1, 1));
    refused(() -> DesignUniformity.of(0.1, 0, 1));
    refused(() -> DesignUniformity.of(0.1, 1, 1.01));
    refused(() -> DesignUniformity.of(0.1, 1, -0.01));
    // One of four stays dry: the low quarter is nothing, the mean 1.5.
    CatchUniformity four = CatchUniformity.of(0, 1, 2, 3);
    assertEquals(0, four.lowQuarter());
    assertEquals(0.5 / 1.5, four.lowHalf(), 1e-12);
    refused(() -> CatchUniformity.of(1, 2, 3));
    refused(() -> CatchUniformity.of(-1, 1, 2, 3));
    refused(() -> CatchUniformity.of(0, 0, 0, 0));
    refused(() -> ApplicationRate.perHour(Flow.gallonsPerHour(1), Area.ZERO));
  }

  @Test
  void allowance_takesAllAreaAsSpecial_andFullEfficiency() {
    // 10 in × 0.62 × 100 sq ft, whatever the factor.
    Area all = Area.squareFeet(100);
    assertEquals(620, WaterBudget.allowance(Length.inches(10), 0.55, all, all).gallons(), 1e-9);
    assertEquals(310, WaterBudget.use(Length.inches(10), 0.5, 1, all).gallons(), 1e-9);
    refused(() -> WaterBudget.allowance(INCH, 0.55, SQFT, Area.squareFeet(1.1)));
    refused(() -> WaterBudget.use(INCH, 0.5, 0, SQFT));
    refused(() -> WaterBudget.use(INCH, 0.5, 1.01, SQFT));
  }

  @Test
  void curveNumber_takesAHundred_andNothingAtAll() {
    assertEquals(0, CurveNumber.retention(100).inches(), 1e-12);
    refused(() -> CurveNumber.retention(0));
    refused(() -> CurveNumber.retention(100.1));
    // Number 50 holds 10 in, the first 2 of which fill before anything runs off.
    assertEquals(Length.ZERO, CurveNumber.runoff(Length.inches(2), 50));
    assertEquals(1.0 / 11, CurveNumber.runoff(Length.inches(3), 50).inches(), 1e-9);
    List<CurveNumber.Patch> none = List.of(new CurveNumber.Patch(Area.ZERO, 80));
    refused(() -> CurveNumber.composite(none));
    refused(() -> CurveNumber.weightedRunoff(INCH, none));
  }

  /** University of Rhode Island: up to 4 % 3 to 5 in, up to 7 % 6 to 7 in, up to 12 % 8 in. */
  @Test
  void rainGarden_takesTheBorderSlopes_andAllOfTheRoof() {
    assertEquals(5, RainGarden.depth(4).orElseThrow().to().inches(), 1e-9);
    assertEquals(3, RainGarden.depth(0).orElseThrow().from().inches(), 1e-9);
    refused(() -> RainGarden.depth(-0.1));
    assertEquals(1, RainGarden.area(SQFT, 1).squareFeet(), 1e-12);
    refused(() -> RainGarden.area(SQFT, 0));
    refused(() -> RainGarden.area(SQFT, 1.01));
  }

  @Test
  void roof_takesNoRain_noLossAndNoFlush() {
    assertEquals(Volume.ZERO, FirstFlush.of(SQFT, Length.ZERO));
    refused(() -> FirstFlush.of(SQFT, Length.inches(-1)));
    refused(() -> FirstFlush.pipe(Volume.gallons(1), Length.ZERO));
    assertEquals(Volume.ZERO, RainYield.of(SQFT, Length.ZERO, 1));
    assertEquals(Volume.ZERO, RainYield.of(SQFT, INCH, 0));
    assertEquals(1.0 / 12, RainYield.of(SQFT, INCH, 1).cubicFeet(), 1e-12);
    refused(() -> RainYield.of(SQFT, Length.inches(-1), 1));
    refused(() -> RainYield.of(SQFT, INCH, -0.1));
    refused(() -> RoofDrainage.drained(SQFT, Length.ZERO));
  }

  /** From (2, 10) to (10, 30) the straight line is at 15 where x is 4, at 25 where it is 8. */
  @Test
  void knee_isFoundOnACurveThatStartsAnywhere() {
    List<Double> x = List.of(2.0, 4.0, 8.0, 10.0);
    assertEquals(1, Knee.of(x, List.of(10.0, 25.0, 28.0, 30.0))); // 10 above, then 3
    assertEquals(2, Knee.of(x, List.of(10.0, 16.0, 29.0, 30.0))); // 1 above, then 4
    assertEquals(0, Knee.of(x, List.of(10.0, 10.0, 10.0, 10.0)));
    assertEquals(0, Knee.of(x, List.of(10.0, 11.0, 12.0, 30.0)), "never above the line");
    assertEquals(0, Knee.of(List.of(5.0), List.of(7.0)));
  }

  /** 65 in of rain for 100 in of evapotranspiration are the limit, and not dry. */
  @Test
  void aridity_andTaper_ofPublishedSteps() {
    assertFalse(Aridity.isDry(Length.inches(65), Length.inches(100)));
    assertTrue(Aridity.isDry(Length.inches(64.9), Length.inches(100)));
    assertEquals(List.of(14, 16, 15), Taper.STEPS.stream().map(Taper.Step::days).toList());
    assertEquals(List.of(14, 8, 5), Taper.STEPS.stream().map(Taper.Step::waterings).toList());
    // 0.2 in a day for three days at 0.9, and at the least of 0.7 where the table says 0.3.
    assertEquals(0.54, Taper.depth(0.9, Length.inches(0.2), 3).inches(), 1e-12);
    assertEquals(0.42, Taper.depth(0.3, Length.inches(0.2), 3).inches(), 1e-12);
  }

  /**
   * Soil that holds 10 mm under plants that would draw 8: the first day 8; the easy share is 0.5 +
   * 0.04 × (5 − 8) = 0.38, so Ks = 2 / 6.2 and the second day would draw 2.58 mm, but 2 are left.
   */
  @Test
  void roots_drawNoMoreThanIsThere() {
    RootZone.Day dry = new RootZone.Day(0, 8, 1, 0.1);
    RootZone.Sum two = RootZone.run(List.of(dry, dry), 0.1, 0.5, false);
    assertEquals(10, two.useMm(), 1e-9);
    assertEquals(1, two.shortDays());
    // Three millimetres of rain on the second day are within reach of the roots.
    RootZone.Sum rained =
        RootZone.run(List.of(dry, new RootZone.Day(3, 8, 1, 0.1)), 0.1, 0.5, false);
    assertEquals(8 + 8 * 2 / 6.2, rained.useMm(), 1e-9);
    // A day on which nothing would be drawn is not short, however dry the soil.
    RootZone.Day winter = new RootZone.Day(0, 8, 0, 0.1);
    RootZone.Sum three = RootZone.run(List.of(dry, dry, winter), 0.1, 0.5, false);
    assertEquals(1, three.shortDays());
    // Rain of a fifth of the day's evapotranspiration counts.
    assertEquals(
        1, RootZone.run(List.of(new RootZone.Day(1, 5, 1, 0.1)), 0.1, 0.5, false).rainMm());
    assertEquals(0.15, RootZone.rootM(0.8, 0, 0, 0), 1e-12, "a plant that never grows");
  }
}
