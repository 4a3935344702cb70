package yardloom.soil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import yardloom.facts.PlanKit;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.soil.region.LocalCheckWords;
import yardloom.soil.region.RegionWords;
import yardloom.soil.texture.SoilList;
import yardloom.soil.texture.SoilWords;

/** Words of soil and region to the printed tables, worked by hand. */
class SoilTablesTest {
  private static PlanKit yard(UnitSystem units) {
    PlanKit kit = new PlanKit(units);
    kit.bed("rain basin", BedUse.PERENNIAL, PlanKit.box(0, 0, 50, 20));
    return kit;
  }

  /** Words as the regional file says them. */
  private static PlanScope regional(PlanKit kit) {
    return new PlanScope(kit.draft, new SourceRef("flats.groovy", kit.next().line(), 1));
  }

  private static Source survey(PlanKit kit) {
    return RegionWords.publication(regional(kit), "Survey", "agency", 1982, "table 15", "read");
  }

  private static void soil(
      PlanKit kit, String name, Number organic, Length intake, Number available) {
    RegionWords.localSoil(regional(kit), name, 40, 20, organic, intake, available, survey(kit));
  }

  private static PlanKit inFlats(UnitSystem units) {
    PlanKit kit = yard(units);
    RegionWords.region(regional(kit), "Flats", "Level.", survey(kit));
    soil(kit, "upland loam", 2.5, Length.inches(0.5), 0.2);
    soil(kit, "lowland loam", 4, null, null);
    return kit;
  }

  private static List<String> printed(String id, PlanKit kit) {
    Plan plan = kit.plan();
    return PlanKit.printed(id, plan, PlanKit.run(plan));
  }

  private static void refused(ProblemCode code, Executable word) {
    PlanException e = assertThrows(PlanException.class, word);
    assertEquals(code, e.problems().get(0).code(), e.getMessage());
  }

  /**
   * 0.2 of the fine earth, a tenth of it rock: 18 % of 20 in are 3.6 in (9.14 cm), which is low
   * (7.5 to 15 cm); half an inch an hour, 12.7 mm, is moderate (5 to 75 mm).
   */
  @Test
  void soilNamed_isPrintedAsTheSurveySays() {
    PlanKit kit = inFlats(UnitSystem.US);
    RegionWords.soilNamed(kit.words(), "upland loam", 0.1, Length.inches(20));
    assertEquals(
        List.of("loam | 40 | 20 | 18 | 20.0 | 3.60 | low | 0.50 | moderate"),
        printed("materials-soil", kit));
  }

  /** Only the soil that was chosen is printed, in the plan's units; half an inch is 12.7 mm. */
  @Test
  void region_printsItsSoilAndChecks_withSources() {
    for (UnitSystem units : UnitSystem.values()) {
      PlanKit kit = inFlats(units);
      RegionWords.soilNamed(kit.words(), "upland loam", null, null);
      LocalCheckWords.localCheck(
          regional(kit),
          "Basins off walls",
          "bed",
          "basin",
          Length.feet(10),
          "building",
          null,
          null,
          "Water nears a wall.",
          "Move it.",
          survey(kit));
      String intake = units == UnitSystem.US ? "0.50 in" : "12.7 mm";
      List<String> rows = printed("materials-region", kit);
      assertEquals(3, rows.size());
      assertTrue(rows.get(0).startsWith("region | Flats | Level. | Survey"), rows.get(0));
      assertTrue(
          rows.get(1)
              .startsWith(
                  "soil | upland loam | sand 40 %, clay 20 %, organic 2.5 %, available water 20 %,"
                      + " intake "
                      + intake
                      + " per hour | Survey"),
          rows.get(1));
      assertTrue(rows.get(2).startsWith("check | Basins off walls | Move it. | "), rows.get(2));
    }
  }

  @Test
  void withoutRegion_theTableIsEmpty() {
    assertEquals(List.of(), printed("materials-region", yard(UnitSystem.US)));
    assertEquals(List.of(), printed("materials-soil", yard(UnitSystem.US)));
  }

  @Test
  void soilThatNobodyNamed_isRefused_withThoseThatAre() {
    PlanKit kit = inFlats(UnitSystem.US);
    RegionWords.soilNamed(kit.words(), "uplnd loam", null, null);
    PlanException e = assertThrows(PlanException.class, () -> PlanKit.run(kit.plan()));
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("Named are: "), e.getMessage());
    PlanKit bare = yard(UnitSystem.US);
    RegionWords.soilNamed(bare.words(), "upland loam", null, null);
    PlanException none = assertThrows(PlanException.class, () -> PlanKit.run(bare.plan()));
    assertTrue(none.getMessage().contains("No soil is named; include"), none.getMessage());
  }

  /** Without a depth the roots use 24 in: 0.2 × 24 = 4.8 in. */
  @Test
  void soilNamed_hasTwoFeetOfRoots_andNoRock_ifNothingIsSaid() {
    PlanKit kit = inFlats(UnitSystem.US);
    RegionWords.soilNamed(kit.words(), "upland loam", null, null);
    Results results = PlanKit.run(kit.plan());
    SoilProfile soil = results.get(YardFacts.SOIL);
    assertEquals(24, soil.depth().inches(), 1e-9);
    assertEquals(4.8, soil.stored().value().inches(), 1e-9);
  }

  @Test
  void soilsOutsideTheirRanges_areRefused_thoseAtTheEndsNot() {
    PlanKit kit = yard(UnitSystem.US);
    soil(kit, "a", 0, null, 0.6);
    soil(kit, "b", 100, Length.millimetres(1000), null);
    refused(ProblemCode.OUT_OF_RANGE, () -> soil(kit, "c", -1, null, null));
    refused(ProblemCode.OUT_OF_RANGE, () -> soil(kit, "c", 101, null, null));
    refused(ProblemCode.OUT_OF_RANGE, () -> soil(kit, "c", 2, null, 0));
    refused(ProblemCode.OUT_OF_RANGE, () -> soil(kit, "c", 2, null, 0.61));
    refused(ProblemCode.OUT_OF_RANGE, () -> soil(kit, "c", 2, Length.ZERO, null));
    refused(ProblemCode.OUT_OF_RANGE, () -> soil(kit, "c", 2, Length.metres(1.01), null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        () -> RegionWords.localSoil(regional(kit), "d", 80, 30, 2, null, null, survey(kit)));
  }

  @Test
  void theYardHasOneSoil_ofSomeDepth() {
    PlanKit kit = yard(UnitSystem.US);
    Length deep = Length.metres(5);
    refused(ProblemCode.OUT_OF_RANGE, () -> RegionWords.soilNamed(kit.words(), "a", -0.1, deep));
    refused(ProblemCode.OUT_OF_RANGE, () -> RegionWords.soilNamed(kit.words(), "a", 1, deep));
    refused(
        ProblemCode.OUT_OF_RANGE, () -> RegionWords.soilNamed(kit.words(), "a", 0, Length.ZERO));
    refused(
        ProblemCode.OUT_OF_RANGE,
        () -> RegionWords.soilNamed(kit.words(), "a", 0, Length.metres(5.1)));
    refused(ProblemCode.OUT_OF_RANGE, () -> SoilWords.soil(kit.words(), 40, 20, -1, 0.1, deep));
    refused(ProblemCode.OUT_OF_RANGE, () -> SoilWords.soil(kit.words(), 40, 20, 101, 0.1, deep));
    refused(ProblemCode.OUT_OF_RANGE, () -> SoilWords.soil(kit.words(), 40, 20, 2, -0.1, deep));
    refused(ProblemCode.OUT_OF_RANGE, () -> SoilWords.soil(kit.words(), 40, 20, 2, 1, deep));
    refused(ProblemCode.OUT_OF_RANGE, () -> SoilWords.soil(kit.words(), 40, 20, 2, 0, Length.ZERO));
    RegionWords.soilNamed(kit.words(), "a", 0, deep);
    refused(ProblemCode.DUPLICATE, () -> RegionWords.soilNamed(kit.words(), "b", 0, deep));
    refused(ProblemCode.DUPLICATE, () -> SoilWords.soil(kit.words(), 40, 20, 2, 0, deep));
    PlanKit flats = inFlats(UnitSystem.US);
    refused(
        ProblemCode.DUPLICATE,
        () -> RegionWords.region(regional(flats), "Hills", "Steep.", survey(flats)));
  }

  private static void check(PlanKit kit, Length nearer, String to, String toNamed, Length intake) {
    LocalCheckWords.localCheck(
        kit.words(), "x", "bed", null, nearer, to, toNamed, intake, "Say.", "Do.", survey(kit));
  }

  @Test
  void checks_needACondition_andBothHalvesOfADistance() {
    PlanKit kit = yard(UnitSystem.US);
    Length ten = Length.feet(10);
    refused(ProblemCode.MISSING_OPTION, () -> check(kit, null, null, null, null));
    refused(ProblemCode.MISSING_OPTION, () -> check(kit, ten, null, null, null));
    refused(ProblemCode.MISSING_OPTION, () -> check(kit, null, "building", null, ten));
    refused(ProblemCode.MISSING_OPTION, () -> check(kit, null, null, "shed", ten));
    refused(ProblemCode.OUT_OF_RANGE, () -> check(kit, Length.ZERO, "building", null, null));
    refused(ProblemCode.OUT_OF_RANGE, () -> check(kit, null, null, null, Length.ZERO));
  }

  /** Every texture is listed, from light to heavy; the sources have no figure for silt alone. */
  @Test
  void textures_areListedWithTheirWater() {
    List<Catalogue.Row> rows = SoilList.soils().rows();
    assertEquals(12, rows.size());
    assertEquals("sand", rows.get(0).name());
    assertEquals("clay", rows.get(11).name());
    for (Catalogue.Row row : rows) {
      assertEquals(
          !row.name().equals("silt"),
          row.traits().get("available").contains(" of its depth is water for plants ("),
          row.toString());
    }
  }
}
