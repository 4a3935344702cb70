package yardloom.soil;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;
import yardloom.soil.amendment.formula.BufferLime;
import yardloom.soil.amendment.formula.Fertilizer;
import yardloom.soil.amendment.formula.LimeByTexture;
import yardloom.soil.amendment.formula.OrganicMatter;
import yardloom.soil.amendment.formula.PhAmendment;
import yardloom.soil.compost.formula.BulkMass;
import yardloom.soil.compost.formula.Shrinkage;
import yardloom.soil.lead.LeadScreening;
import yardloom.soil.lead.LeadScreening.Outcome;
import yardloom.soil.texture.formula.FieldTexture;
import yardloom.soil.texture.formula.FieldTexture.Feel;
import yardloom.soil.texture.formula.ProfileWater;
import yardloom.soil.texture.formula.SaxtonRawls;
import yardloom.soil.texture.formula.TextureClass;
import yardloom.soil.texture.formula.TextureRule;

/** What formulas still take at the ends of their ranges, and what not. Worked beside each. */
class SoilFormulaLimitsTest {
  private static final Area HALF = Area.squareFeet(500);

  private static void refused(Executable what) {
    PlanException refused = assertThrows(PlanException.class, what);
    assertEquals(ProblemCode.OUT_OF_RANGE, refused.problems().get(0).code());
  }

  /**
   * North Carolina Department of Agriculture, note to the table of factors: acidity 1.2 (buffer pH
   * 6.3) × 0.625 (pH 5 to 6: 1 / 1.6) is 0.75 ton an acre; 750 lb on half an acre.
   */
  @Test
  void bufferLime_ofThePublishedExample() {
    assertEquals(1.2, BufferLime.acidity(6.3), 1e-9);
    assertEquals(10.4, BufferLime.acidity(4), 1e-9);
    assertEquals(0, BufferLime.acidity(6.6), 1e-9);
    assertEquals(750, BufferLime.lime(5, 6, 6.3, Area.squareFeet(21_780)).pounds(), 1e-6);
    assertEquals(0, BufferLime.lime(3, 3, 6.3, HALF).pounds(), 1e-9);
    refused(() -> BufferLime.acidity(3.9));
    refused(() -> BufferLime.acidity(6.7));
    refused(() -> BufferLime.lime(2.9, 6, 6.3, HALF));
    refused(() -> BufferLime.lime(5, 4.9, 6.3, HALF));
    refused(() -> BufferLime.lime(5, 6.6, 6.3, HALF));
  }

  /**
   * University of Tennessee: 2 lb of sulfur on 1000 sq ft for each tenth, split above 30 lb: 1.5
   * units on silt loam are just 30; 15 lb on 500 sq ft. Two units on clay are 2 × 20 × 4/3 = 53.3,
   * 26.67 on 500 sq ft: 17.78 now, 8.89 later.
   */
  @Test
  void sulfur_goesByTheArea_andIsSplitAboveThirtyPounds() {
    PhAmendment.Doses once = PhAmendment.sulfur(7, 5.5, PhAmendment.Ground.SILT_LOAM, HALF);
    assertEquals(15, once.first().pounds(), 1e-9);
    assertEquals(Mass.ZERO, once.later());
    PhAmendment.Doses twice = PhAmendment.sulfur(8, 6, PhAmendment.Ground.CLAY, HALF);
    assertEquals(17.78, twice.first().pounds(), 0.005);
    assertEquals(8.89, twice.later().pounds(), 0.005);
    assertEquals(0, PhAmendment.sulfur(10, 10, PhAmendment.Ground.SAND, HALF).first().pounds());
    assertEquals(0, PhAmendment.sulfur(3.5, 3.5, PhAmendment.Ground.SAND, HALF).first().pounds());
    refused(() -> PhAmendment.sulfur(6, 6.1, PhAmendment.Ground.SAND, HALF));
    refused(() -> PhAmendment.sulfur(10.1, 7, PhAmendment.Ground.SAND, HALF));
    refused(() -> PhAmendment.sulfur(6, 3.4, PhAmendment.Ground.SAND, HALF));
  }

  @Test
  void purityAndGrades_takeTheEndsOfTheirRanges() {
    // Burnt lime neutralises up to 1.8 times as much as pure carbonate.
    assertEquals(10, PhAmendment.correctedForPurity(Mass.pounds(18), 180).pounds(), 1e-9);
    refused(() -> PhAmendment.correctedForPurity(Mass.pounds(18), 0));
    refused(() -> PhAmendment.correctedForPurity(Mass.pounds(18), 181));
    Fertilizer.Grade grade = Fertilizer.Grade.parse("5-10-15");
    assertEquals(new Fertilizer.Grade(5, 10, 15), grade);
    assertEquals(40, Fertilizer.productFor(Mass.pounds(2), grade).pounds(), 1e-9);
    assertEquals(0, new Fertilizer.Grade(0, 0, 100).nitrogen());
    refused(() -> new Fertilizer.Grade(-1, 0, 0));
    refused(() -> new Fertilizer.Grade(1, -1, 0));
    refused(() -> new Fertilizer.Grade(1, 0, -1));
    refused(() -> new Fertilizer.Grade(40, 40, 21));
    refused(() -> new Fertilizer.Grade(47, 0, 0));
    refused(() -> Fertilizer.productFor(Mass.pounds(2), new Fertilizer.Grade(0, 20, 0)));
    assertThrows(PlanException.class, () -> Fertilizer.Grade.parse("5-10"));
    assertThrows(PlanException.class, () -> Fertilizer.Grade.parse("5-x-10"));
  }

  @Test
  void lime_fromAPhToItself_isNone_andNothingLowersIt() {
    for (LimeByTexture.Ground ground : LimeByTexture.Ground.values()) {
      assertEquals(0, LimeByTexture.lime(3, 3, ground, HALF).pounds(), 1e-9);
      assertTrue(LimeByTexture.lime(6, 8.5, ground, HALF).pounds() > 0);
    }
    refused(() -> LimeByTexture.lime(6, 5.9, LimeByTexture.Ground.LOAM, HALF));
    refused(() -> LimeByTexture.lime(2.9, 6, LimeByTexture.Ground.LOAM, HALF));
    refused(() -> LimeByTexture.lime(6, 8.6, LimeByTexture.Ground.LOAM, HALF));
    assertEquals(LimeByTexture.Ground.SAND, LimeByTexture.ground(TextureClass.LOAMY_SAND));
    assertEquals(LimeByTexture.Ground.SANDY_LOAM, LimeByTexture.ground(TextureClass.SANDY_LOAM));
    assertEquals(LimeByTexture.Ground.LOAM, LimeByTexture.ground(TextureClass.SILT));
    assertEquals(LimeByTexture.Ground.CLAY_LOAM, LimeByTexture.ground(TextureClass.SANDY_CLAY));
  }

  /**
   * 10 m² × 0.2 m × 1400 kg/m³ × 0.05 = 140 kg of organic matter; compost of 500 kg/m³, 0.3 of it
   * water and 0.4 of the rest organic has 140 kg in a cubic metre.
   */
  @Test
  void compost_bringsTheOrganicMatterThatIsWanted() {
    OrganicMatter.Compost compost = new OrganicMatter.Compost(500, 0.4, 0.3);
    Area bed = Area.squareMetres(10);
    Length deep = Length.metres(0.2);
    assertEquals(1, OrganicMatter.compostFor(bed, deep, 1400, 0.05, compost).cubicMetres(), 1e-9);
    assertEquals(4, OrganicMatter.compostFor(bed, deep, 1400, 0.2, compost).cubicMetres(), 1e-9);
    assertEquals(0, OrganicMatter.compostFor(bed, deep, 1400, 0, compost).cubicMetres());
    refused(() -> OrganicMatter.compostFor(bed, deep, 0, 0.05, compost));
    refused(() -> OrganicMatter.compostFor(bed, deep, 1400, -0.01, compost));
    refused(() -> OrganicMatter.compostFor(bed, deep, 1400, 0.21, compost));
    assertEquals(1, new OrganicMatter.Compost(500, 1, 0).organicShare());
    refused(() -> new OrganicMatter.Compost(0, 0.4, 0.3));
    refused(() -> new OrganicMatter.Compost(500, 0, 0.3));
    refused(() -> new OrganicMatter.Compost(500, 1.1, 0.3));
    refused(() -> new OrganicMatter.Compost(500, 0.4, -0.1));
    refused(() -> new OrganicMatter.Compost(500, 0.4, 1));
  }

  @Test
  void heaps_mayLoseNothing_butNotAll() {
    Volume yard = Volume.cubicYards(1);
    assertEquals(1, Shrinkage.finished(yard, 0).cubicYards(), 1e-12);
    assertEquals(0.4, Shrinkage.finished(yard, 0.6).cubicYards(), 1e-12);
    refused(() -> Shrinkage.finished(yard, 1));
    refused(() -> Shrinkage.finished(yard, -0.1));
    refused(() -> BulkMass.of(yard, 0));
  }

  /**
   * EPA, 17 January 2024: 200 ppm, 100 with other sources; 400 ppm before. A limit is not above.
   */
  @ParameterizedTest
  @CsvSource({
    "0, false, BELOW",
    "100, false, BELOW",
    "101, false, BELOW_UNLESS_OTHER_SOURCES",
    "200, false, BELOW_UNLESS_OTHER_SOURCES",
    "201, false, ABOVE",
    "100, true, BELOW",
    "101, true, ABOVE",
    "400, true, ABOVE",
    "401, false, ABOVE_FORMER_LEVEL"
  })
  void lead_isScreenedByTheLevelsOf2024(double ppm, boolean others, Outcome expected) {
    assertEquals(expected, LeadScreening.of(ppm, others));
  }

  @Test
  void lead_isNeverLessThanNothing() {
    refused(() -> LeadScreening.of(-1, false));
  }

  /** Thien 1979: no ball sand, no ribbon loamy sand, then breaks at one and at two inches. */
  @ParameterizedTest
  @CsvSource({
    "false, 3, SMOOTH, SAND",
    "true, 0, SMOOTH, LOAMY_SAND",
    "true, 0.9, GRITTY, SANDY_LOAM",
    "true, 1, GRITTY, SANDY_CLAY_LOAM",
    "true, 1.9, SMOOTH, SILTY_CLAY_LOAM",
    "true, 2, NEITHER, CLAY"
  })
  void ribbon_goesByItsLength(boolean ball, double inches, Feel feel, TextureClass expected) {
    assertEquals(expected, FieldTexture.ribbon(ball, Length.inches(inches), feel));
  }

  @Test
  void jar_mayLackALayer_butNotAll() {
    Length four = Length.inches(4);
    Length one = Length.inches(1);
    assertArrayEquals(new double[] {80, 20}, FieldTexture.jar(four, Length.ZERO, one), 1e-9);
    assertArrayEquals(new double[] {0, 20}, FieldTexture.jar(Length.ZERO, four, one), 1e-9);
    assertArrayEquals(new double[] {20, 0}, FieldTexture.jar(one, four, Length.ZERO), 1e-9);
    refused(() -> FieldTexture.jar(Length.ZERO, Length.ZERO, Length.ZERO));
    refused(() -> FieldTexture.jar(Length.inches(-1), four, one));
    refused(() -> FieldTexture.jar(four, Length.inches(-1), one));
    refused(() -> FieldTexture.jar(four, one, Length.inches(-1)));
  }

  /** Very low below 7.5 cm, low below 15, moderate up to 22.5. */
  @ParameterizedTest
  @CsvSource({
    "7.4, VERY_LOW",
    "7.5, LOW",
    "14.9, LOW",
    "15, MODERATE",
    "22.5, MODERATE",
    "22.6, HIGH"
  })
  void storage_hasThePublishedLimits(double cm, ProfileWater.StorageClass expected) {
    assertEquals(expected, ProfileWater.storageClass(Length.metres(cm / 100)));
  }

  @ParameterizedTest
  @CsvSource({"75, RAPID", "74, MODERATE", "5, MODERATE", "4.9, SLOW"})
  void intake_hasThePublishedLimits(double mmPerHour, ProfileWater.IntakeClass expected) {
    assertEquals(expected, ProfileWater.intakeClass(mmPerHour));
  }

  @Test
  void waterPoints_areFittedUpToTheirLimits() {
    assertTrue(SaxtonRawls.of(0.4, 0.6, 0).wilting() > SaxtonRawls.of(0.4, 0.2, 0).wilting());
    assertTrue(
        SaxtonRawls.of(0, 0.3, 8).fieldCapacity() > SaxtonRawls.of(0, 0.3, 0).fieldCapacity());
    refused(() -> SaxtonRawls.of(-0.01, 0.2, 2));
    refused(() -> SaxtonRawls.of(0.4, -0.01, 2));
    refused(() -> SaxtonRawls.of(0.7, 0.4, 2));
    refused(() -> SaxtonRawls.of(0.1, 0.61, 2));
    refused(() -> SaxtonRawls.of(0.4, 0.2, -0.1));
    refused(() -> SaxtonRawls.of(0.4, 0.2, 8.1));
  }

  /** Corners of the texture triangle where a border belongs to one side. Sand, clay. */
  @ParameterizedTest
  @CsvSource({
    "85, 0, LOAMY_SAND",
    "70, 0, SANDY_LOAM",
    "20, 0, SILT",
    "8, 12, SILT_LOAM",
    "50, 0, SILT_LOAM",
    "52, 7, LOAM",
    "53, 7, SANDY_LOAM",
    "20, 27, SILTY_CLAY_LOAM",
    "21, 27, CLAY_LOAM",
    "45, 27, CLAY_LOAM",
    "46, 27, SANDY_CLAY_LOAM",
    "0, 40, SILTY_CLAY",
    "20, 40, SILTY_CLAY",
    "21, 40, CLAY",
    "45, 40, CLAY",
    "46, 35, SANDY_CLAY",
    "53, 20, SANDY_CLAY_LOAM",
    "52, 20, LOAM"
  })
  void borders_belongToOneClass(double sand, double clay, TextureClass expected) {
    assertEquals(expected, TextureRule.classify(sand, clay));
  }

  @Test
  void coarseAndHeavy_areApart() {
    assertTrue(TextureClass.SANDY_CLAY_LOAM.isHeavy());
    assertFalse(TextureClass.SILT.isHeavy());
    assertTrue(TextureClass.SANDY_LOAM.isCoarse());
    assertFalse(TextureClass.LOAM.isCoarse());
    // All sand there is, and all clay.
    assertEquals(TextureClass.SAND, TextureRule.classify(100, 0));
    assertEquals(TextureClass.CLAY, TextureRule.classify(0, 100));
    List<Executable> outside =
        List.of(
            () -> TextureRule.classify(-1, 50),
            () -> TextureRule.classify(50, -1),
            () -> TextureRule.classify(51, 50));
    outside.forEach(SoilFormulaLimitsTest::refused);
  }
}
