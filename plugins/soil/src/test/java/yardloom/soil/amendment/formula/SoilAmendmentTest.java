package yardloom.soil.amendment.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.soil.amendment.formula.Fertilizer.Grade;
import yardloom.soil.amendment.formula.PhAmendment.Doses;
import yardloom.soil.amendment.formula.PhAmendment.Ground;
import yardloom.soil.lead.LeadScreening;
import yardloom.soil.lead.LeadScreening.Outcome;

/** Soil checks N01 to N14. */
class SoilAmendmentTest {
  private static final Area THOUSAND = Area.squareFeet(1000);

  @ParameterizedTest
  @CsvSource({
    // N01, N02: University of Tennessee UTcrops, Blueberries note 1.
    "SILT_LOAM, 20.0",
    "CLAY, 26.67",
    "SAND, 13.33"
  })
  void sulfur_oneUnitForBlueberries_matchesTennessee(Ground ground, double pounds) {
    Doses doses = PhAmendment.sulfur(6.5, 5.5, ground, THOUSAND);
    assertEquals(pounds, doses.first().plus(doses.later()).pounds(), 0.01);
    assertEquals(0, doses.later().pounds());
  }

  @Test
  void sulfur_aboveThirtyPounds_isSplit() {
    // N03
    Doses doses = PhAmendment.sulfur(7.2, 5.5, Ground.SILT_LOAM, THOUSAND);
    assertEquals(34, doses.first().plus(doses.later()).pounds(), 0.01);
    assertEquals(22.67, doses.first().pounds(), 0.01);
    assertEquals(11.33, doses.later().pounds(), 0.01);
  }

  @Test
  void sulfur_toRaisePh_isRefused() {
    assertThrows(PlanException.class, () -> PhAmendment.sulfur(5.5, 6.5, Ground.SAND, THOUSAND));
  }

  @ParameterizedTest(name = "{0} from pH {1}: {2} lb")
  @CsvSource({
    // Pounds on 100 square feet to pH 6.5, agroconection.com (secondary, read), times ten.
    "SANDY_LOAM, 4.5, 95",
    "LOAM, 5.0, 105",
    "CLAY_LOAM, 5.5, 105",
    "LOAM, 6.0, 40",
    // N06: Arkansas garden-centre copy of an Extension chart (secondary, read).
    "SAND, 4.5, 50",
    // Halfway between two rows by hand: (80 + 40) / 2.
    "LOAM, 5.75, 60"
  })
  void lime_toSixAndAHalf_isThePublishedTables(
      LimeByTexture.Ground ground, double ph, double pounds) {
    assertEquals(pounds, LimeByTexture.lime(ph, 6.5, ground, THOUSAND).pounds(), 1e-9);
    assertEquals(
        pounds / 2, LimeByTexture.lime(ph, 6.5, ground, Area.squareFeet(500)).pounds(), 1e-9);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"LOAM, 130", "CLAY_LOAM, 190"})
  void lime_atFourAndAHalf_isWithinFivePercentOfAnotherTable(
      LimeByTexture.Ground ground, double pounds) {
    // N06: loam 130 lb, clay 190 lb on 1000 sq ft.
    double found = LimeByTexture.lime(4.5, 6.5, ground, THOUSAND).pounds();
    assertEquals(pounds, found, pounds * 0.05);
  }

  @Test
  void lime_toAnotherTarget_isTheDifferenceOfTwoRows() {
    // Loam 5.0 to 6.0: 105 − 40; 6.0 to 6.8: 40 and 0.3 more of the last half unit's 40.
    assertEquals(65, limeOnLoam(5.0, 6.0), 1e-9);
    assertEquals(40 + 0.3 / 0.5 * 40, limeOnLoam(6.0, 6.8), 1e-9);
    assertEquals(limeOnLoam(4.0, 6.5), limeOnLoam(3.5, 6.5), 1e-9);
    assertThrows(PlanException.class, () -> limeOnLoam(6.5, 6.0));
  }

  /**
   * Pounds on 100 square feet of sandy loam at each pH (the first table), times ten; sands take 50
   * lb at 4.5 (N06) along the same course: 50 × lb / 9.5.
   */
  @ParameterizedTest(name = "pH {0}: {1} lb on 100 sq ft of sandy loam")
  @CsvSource({"4.0, 11.5", "4.5, 9.5", "5.0, 8", "5.5, 6", "6.0, 3"})
  void lime_onSand_followsTheCourseOfSandyLoam(double ph, double onHundred) {
    double loam = LimeByTexture.lime(ph, 6.5, LimeByTexture.Ground.SANDY_LOAM, THOUSAND).pounds();
    double sand = LimeByTexture.lime(ph, 6.5, LimeByTexture.Ground.SAND, THOUSAND).pounds();
    assertEquals(10 * onHundred, loam, 1e-9);
    assertEquals(50 * onHundred / 9.5, sand, 0.05);
  }

  private static double limeOnLoam(double now, double wanted) {
    return LimeByTexture.lime(now, wanted, LimeByTexture.Ground.LOAM, THOUSAND).pounds();
  }

  @Test
  void lime_ofLowPurity_needsMore() {
    // N07: Penn State AASL (source rounds to 7).
    assertEquals(7.14, PhAmendment.correctedForPurity(Mass.pounds(5), 70).pounds(), 0.01);
  }

  @Test
  void bag_otherGrade_bringsTheSameNitrogen() {
    // N09: 40 lb of 5-10-10 hold 2 lb of nitrogen; 25 lb at 8 % bring the same.
    assertEquals(25, Fertilizer.productFor(Mass.pounds(2), new Grade(8, 0, 0)).pounds(), 1e-9);
    assertEquals(40, Fertilizer.productFor(Mass.pounds(2), new Grade(5, 10, 10)).pounds(), 1e-9);
    // N08 (University of Maine Extension, Bulletin 2287): 80 lb of 5-10-15 hold 4 lb of nitrogen.
    assertEquals(80, Fertilizer.productFor(Mass.pounds(4), Grade.parse("5-10-15")).pounds(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    // N10 (gardenguides.com), N11 (Country Gardener), N12 (garden column, 23 Jan 2009).
    "3, 1000, 21, 14.2857",
    "3, 5000, 21, 71.43",
    "1, 12000, 20, 60",
    "2, 500, 20, 5"
  })
  void product_forRate_matchesWorkedExamples(
      double rate, double squareFeet, double n, double pounds) {
    Mass nitrogen = Mass.pounds(rate * squareFeet / 1000);
    assertEquals(pounds, Fertilizer.productFor(nitrogen, new Grade(n, 0, 0)).pounds(), 0.01);
  }

  @Test
  void urea_misprintedGrade_isRefused() {
    // Trap 10: 47-0-0 is printed on a page; urea is 46-0-0.
    assertThrows(PlanException.class, () -> new Grade(47, 0, 0));
    assertEquals(46, new Grade(46, 0, 0).nitrogen());
  }

  @ParameterizedTest
  @CsvSource({
    // N14: US EPA, 17 January 2024.
    "60, false, BELOW",
    "150, false, BELOW_UNLESS_OTHER_SOURCES",
    "150, true, ABOVE",
    "250, false, ABOVE",
    "450, false, ABOVE_FORMER_LEVEL",
    "200, false, BELOW_UNLESS_OTHER_SOURCES"
  })
  void lead_contents_standToScreeningLevels(double ppm, boolean others, Outcome outcome) {
    assertEquals(outcome, LeadScreening.of(ppm, others));
  }

  @Test
  void lead_source_namesItsYear() {
    assertTrue(LeadScreening.SOURCE.cite().contains("2024"));
    assertThrows(PlanException.class, () -> LeadScreening.of(Double.NaN, false));
  }

  @Test
  void organicMatter_balance_closes() {
    // Mass balance by hand: 10 m² × 0.15 m × 1300 kg/m³ × 2 % = 39 kg of organic matter;
    // compost of 650 kg/m³, 40 % moisture, half of it organic brings 195 kg/m³: 0.2 m³.
    var compost = new OrganicMatter.Compost(650, 0.5, 0.4);
    double m3 =
        OrganicMatter.compostFor(Area.squareMetres(10), Length.metres(0.15), 1300, 0.02, compost)
            .cubicMetres();
    assertEquals(0.2, m3, 1e-12);
  }

  @Test
  void organicMatter_denserCompost_needsLess() {
    var light = new OrganicMatter.Compost(500, 0.5, 0.4);
    var heavy = new OrganicMatter.Compost(1000, 0.5, 0.4);
    double a = volume(light);
    double b = volume(heavy);
    assertEquals(2, a / b, 1e-12);
    assertThrows(PlanException.class, () -> new OrganicMatter.Compost(0, 0.5, 0.4));
  }

  private static double volume(OrganicMatter.Compost compost) {
    return OrganicMatter.compostFor(Area.squareMetres(10), Length.metres(0.15), 1300, 0.02, compost)
        .cubicMetres();
  }
}
