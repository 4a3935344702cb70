package yardloom.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.Volume;
import yardloom.materials.load.BulkData;
import yardloom.materials.mulch.formula.MulchLimits;
import yardloom.materials.pile.Pile;
import yardloom.materials.surface.formula.Cardboard;

/** Soil checks M01 to M27. */
class MulchFormulaTest {
  private static final Volume YARD = Volume.cubicYards(1);
  private static final Angle REPOSE = Angle.degrees(37);

  @Test
  void compost_bigField_isExactNotByRoundedFactor() {
    // M04 and trap 3: published with the factor 0.0031: 434.
    double yd3 = Area.squareFeet(350 * 200).deep(Length.inches(2)).cubicYards();
    assertEquals(432.10, yd3, 0.01);
    assertEquals(434, yd3, 434 * 0.005);
    assertNotEquals(350 * 200 * 2 * 0.0031, yd3, 1.5);
  }

  @Test
  void acreInches_becomeYards() {
    // M08: 0.202 acre-in (source prints 27).
    double acre = Unit.ACRE.toSi(1);
    assertEquals(27.16, Area.squareMetres(acre).deep(Length.inches(0.202)).cubicYards(), 0.01);
  }

  @ParameterizedTest
  @CsvSource({
    // M09, M10, M11, M12: likely pounds per cubic yard and tolerance.
    "compost, 1100, 0.0910",
    "topsoil, 2400, 0.10",
    "sand, 2600, 0.10",
    "gravel, 2750, 0.10",
    "mixed wood mulch saturated, 628, 0.10",
    "pine bark saturated, 636, 0.10",
    "compost saturated, 1724, 0.10",
    "sandy loam saturated, 2056, 0.10",
    "wood-chip mulch, 600, 0.20",
    "brush loose, 250, 0.20",
    "leaves loose, 150, 0.20",
    "leaves vacuumed, 400, 0.20",
    "leaves wet, 550, 0.20"
  })
  void density_publishedTables_spanTheirTolerance(String material, double lb, double share) {
    var density = BulkData.poundsPerCubicYard(material);
    assertEquals(lb, density.likely(), 1e-9);
    assertEquals(lb * (1 - share), density.low(), lb * 0.002);
    assertEquals(lb * (1 + share), density.high(), lb * 0.002);
  }

  @Test
  void topsoil_webPageOf1080Pounds_isNotInRange() {
    // Trap 12
    var density = BulkData.poundsPerCubicYard("topsoil");
    assertTrue(density.low() > 1080 * 1.5);
  }

  @ParameterizedTest
  @CsvSource({
    // M13, M14, M15: stockpile table of constructionwork.com; exact formula within its rounding.
    "26.5, 10, 68, 68.09",
    "53, 20, 545, 544.7",
    "186, 70, 23375, 23482"
  })
  void cone_stockpileTable_agrees(double dFt, double hFt, double published, double exact) {
    double yd3 = new Pile.Cone(Length.feet(dFt), Length.feet(hFt)).volume().cubicYards();
    assertEquals(published, yd3, published * 0.005);
    assertEquals(exact, yd3, exact * 1e-4);
  }

  @Test
  void cone_fromHeightOrVolume_followsTheAngle() {
    // M16, M17
    assertEquals(68.30, Pile.coneOfHeight(Length.feet(10), REPOSE).volume().cubicYards(), 0.01);
    Pile.Cone cone = Pile.coneHolding(Volume.cubicYards(10), REPOSE);
    assertEquals(5.271, cone.height().feet(), 0.001);
    assertEquals(13.988, cone.diameter().feet(), 0.001);
    assertEquals(10, cone.volume().cubicYards(), 1e-9);
  }

  @Test
  void windrow_withHalfConeEnds_isExact() {
    // M18
    Pile.Windrow w = Pile.windrow(Length.feet(8), Length.feet(12), REPOSE);
    assertEquals(3.0142, w.height().feet(), 0.0001);
    assertEquals(195.19, w.volume().cubicFeet(), 0.01);
    assertEquals(7.229, w.volume().cubicYards(), 0.001);
    Pile.Windrow back = Pile.windrowHolding(w.volume(), Length.feet(8), REPOSE);
    assertEquals(12, back.ridge().feet(), 1e-9);
  }

  @Test
  void windrow_smallVolume_becomesACone() {
    Pile.Windrow w = Pile.windrowHolding(Volume.cubicYards(1), Length.feet(12), REPOSE);
    assertEquals(0, w.ridge().feet());
    assertEquals(1, w.volume().cubicYards(), 1e-9);
  }

  @Test
  void cone_chartReading_isNotMatched() {
    // M20: a chart gives "approximately 2000".
    double ft3 = new Pile.Cone(Length.feet(30), Length.feet(8)).volume().cubicFeet();
    assertEquals(1884.96, ft3, 0.01);
    assertNotEquals(2000, ft3, 100);
  }

  @Test
  void cone_metric_matchesWorkedExample() {
    // M21
    double m3 = new Pile.Cone(Length.metres(10), Length.metres(4)).volume().cubicMetres();
    assertEquals(104.72, m3, 0.01);
    assertEquals(167.55, m3 * 1.6, 0.01);
  }

  @Test
  void chipLoads_data_spanTheTrade() {
    // M22; trap 11: a load of "21 cubic ft" is not a truck.
    var load = BulkData.cubicYardsPerLoad("wood-chip mulch");
    assertEquals(4, load.low());
    assertEquals(15, load.high());
    assertTrue(load.low() > Volume.cubicFeet(21).cubicYards() * 2);
  }

  @ParameterizedTest
  @CsvSource({
    "3, false, GOOD", "4, false, GOOD", "5, false, TOO_MUCH", "2.5, false, TOO_LITTLE",
    "2, true, GOOD", "3, true, GOOD", "4, true, TOO_MUCH", "1, true, TOO_LITTLE"
  })
  void chipsAboutTrees_extensionRange_isHeld(
      double inches, boolean heavy, MulchLimits.Verdict verdict) {
    // M24
    assertEquals(verdict, MulchLimits.aroundTree(Length.inches(inches), heavy));
  }

  @Test
  void clearances_atTrunkAndHouse_areHeld() {
    // M24, M25
    assertTrue(MulchLimits.trunkGapIsEnough(Length.inches(6)));
    assertFalse(MulchLimits.trunkGapIsEnough(Length.inches(3)));
    assertTrue(MulchLimits.wallGapIsEnough(Length.inches(12)));
    assertFalse(MulchLimits.wallGapIsEnough(Length.inches(11)));
  }

  @ParameterizedTest
  @CsvSource({"6, 8.75, 1.3714", "8, 7.7778, 1.5429"})
  void cardboard_lappedSheet_coversLess(double lapIn, double ft2, double factor) {
    // M26
    Area effective =
        Cardboard.effectiveArea(Length.inches(48), Length.inches(36), Length.inches(lapIn));
    assertEquals(ft2, effective.squareFeet(), 0.001);
    assertEquals(factor, 12 / effective.squareFeet(), 0.0001);
  }

  @Test
  void cardboard_longBed_needsGridNotAreaCount() {
    // M27
    assertEquals(
        60,
        Cardboard.byGrid(
            Length.feet(50), Length.feet(10), Length.feet(4), Length.feet(3), Length.feet(0.5)));
    assertEquals(
        58,
        Cardboard.byArea(Area.squareFeet(500), Length.feet(4), Length.feet(3), Length.feet(0.5)));
  }

  @Test
  void degenerateInputs_areRefused() {
    assertThrows(PlanException.class, () -> Pile.coneHolding(Volume.ZERO, REPOSE));
    assertThrows(PlanException.class, () -> Pile.coneHolding(YARD, Angle.ZERO));
    assertThrows(
        PlanException.class,
        () -> Cardboard.effectiveArea(Length.feet(4), Length.feet(3), Length.feet(3)));
  }
}
