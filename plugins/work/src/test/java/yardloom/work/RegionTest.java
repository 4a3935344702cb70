package yardloom.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardloom.facts.LocalRule;
import yardloom.facts.PlanKit;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Volume;
import yardloom.materials.load.LoadWords;
import yardloom.soil.region.LocalCheckWords;
import yardloom.soil.region.RegionWords;
import yardloom.work.cost.PriceBook;
import yardloom.work.cost.PriceWords;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkWords;

class RegionTest {
  private int line;

  /** Words as the regional file says them. */
  private PlanScope regional(PlanKit kit) {
    return new PlanScope(kit.draft, new SourceRef("flats.groovy", ++line, 1));
  }

  private PlanKit inFlats() {
    PlanKit kit = PlanKit.us();
    kit.bed("rain basin", BedUse.PERENNIAL, PlanKit.box(0, 0, 50, 20));
    RegionWords.region(regional(kit), "Flats", "Level.", read(kit, "Soils"));
    return kit;
  }

  private static Source publication(PlanScope in, String title, String by, int year, String seen) {
    return RegionWords.publication(in, title, by, year, "page 3", seen);
  }

  private Source read(PlanKit kit, String title) {
    return publication(regional(kit), title, "survey", 1967, "read");
  }

  private static void rate(PlanScope in, String kind, String item, double likely, String unit) {
    Source says = publication(in, "Rates", "survey", 1990, "memory");
    switch (kind) {
      case "labour" -> WorkWords.localLabour(in, item, likely, null, null, unit, says);
      case "price" -> PriceWords.localPrice(in, item, likely, null, null, unit, says);
      case "load" -> LoadWords.localLoad(in, item, likely, null, null, unit, says);
      case "density" -> LoadWords.localDensity(in, item, likely, null, null, unit, says);
      default -> throw new IllegalArgumentException(kind);
    }
  }

  private static void soil(PlanScope in, String name, Length intake, Number available) {
    RegionWords.localSoil(
        in,
        name,
        40,
        20,
        2.5,
        intake,
        available,
        publication(in, "Survey", "survey", 1982, "read"));
  }

  private static void check(PlanScope in, Length nearer, Length intake) {
    LocalCheckWords.localCheck(
        in,
        "Basins off walls",
        "bed",
        "basin",
        nearer,
        nearer == null ? null : "building",
        null,
        intake,
        "Water nears a wall.",
        "Move it.",
        publication(in, "Rain gardens", "extension", 2010, "read"));
  }

  private static List<Finding> findings(Plan plan) {
    Results r = PlanKit.run(plan);
    return PlanKit.findings(plan, r).stream().filter(f -> f.rule().startsWith("region.")).toList();
  }

  private static double edgeHours(PlanKit kit) {
    List<TaskLoad> tasks = PlanKit.run(kit.plan()).all(TaskLoad.FACT);
    return tasks.stream()
        .filter(t -> t.task() == WorkTask.CUT_EDGE)
        .findFirst()
        .orElseThrow()
        .likely()
        .value()
        .hours();
  }

  @Test
  void soilNamed_withWaterOfItsOwn_goesBeforeTheFormula() {
    PlanKit kit = inFlats();
    soil(regional(kit), "upland loam", Length.millimetres(12), 0.2);
    RegionWords.soilNamed(kit.words(), "upland loam", 0.1, Length.inches(20));
    SoilProfile soil = PlanKit.run(kit.plan()).get(YardFacts.SOIL);
    assertEquals("loam", soil.texture());
    // 0.2 of the fine earth, a tenth rock, over 20 in: 3.6 in.
    assertEquals(3.6, soil.stored().value().inches(), 1e-9);
    assertEquals(12, soil.intakePerHour().orElseThrow().value().millimetres(), 1e-9);
    assertEquals("Survey", soil.available().source().title());
  }

  @Test
  void soilNamed_withTextureOnly_holdsThePaperTablesWater() {
    PlanKit kit = inFlats();
    soil(regional(kit), "upland loam", null, null);
    RegionWords.soilNamed(kit.words(), "upland loam", null, null);
    // Saxton and Rawls 2006, Table 3: loam, 28 − 14 = 14 % of volume.
    assertEquals(
        0.2796 - 0.1370, PlanKit.run(kit.plan()).get(YardFacts.SOIL).available().value(), 1e-4);
  }

  @Test
  void soilNamed_unknown_isRefusedAtItsPlaceWithTheNearest() {
    PlanKit kit = inFlats();
    soil(regional(kit), "upland loam", null, null);
    RegionWords.soilNamed(kit.words(), "uplnd loam", null, null);
    Plan plan = kit.plan();
    PlanException e = assertThrows(PlanException.class, () -> PlanKit.run(plan));
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
    assertEquals("test.groovy", e.problems().get(0).place().file());
    assertTrue(e.getMessage().contains("Did you mean `upland loam`?"), e.getMessage());
  }

  @Test
  void labour_planOverRegionOverGeneric() {
    PlanKit generic = inFlats();
    // The shipped row is 0.03 h for a foot.
    double feet = edgeHours(generic) / 0.03;
    PlanKit kit = inFlats();
    rate(regional(kit), "labour", "cut edge", 0.1, "ft");
    assertEquals(feet * 0.1, edgeHours(kit), 1e-9);
    rate(kit.words(), "labour", "cut edge", 1, "m");
    assertEquals(feet * 0.3048, edgeHours(kit), 1e-9);
  }

  @Test
  void price_planOverRegionOverDemo_whateverTheOrder() {
    PlanKit kit = inFlats();
    PriceWords.demonstrationPrices(kit.words());
    assertEquals(15, likelyChips(kit), 1e-9);
    rate(regional(kit), "price", "wood-chip mulch", 12, "yd3");
    assertEquals(12, likelyChips(kit), 1e-9);
    PriceWords.price(kit.words(), "wood-chip mulch", Money.amount(9), null, null, "yd3");
    assertEquals(9, likelyChips(kit), 1e-9);
  }

  private static double likelyChips(PlanKit kit) {
    Plan plan = kit.plan();
    return PriceBook.of(plan, PlanKit.run(plan).find(YardFacts.REGION))
        .find("wood-chip mulch", "", Volume.cubicYards(1))
        .orElseThrow()
        .perUnit()
        .likely();
  }

  @Test
  void loadAndDensity_metric_areTheSameTrucks() {
    PlanKit kit = inFlats();
    rate(regional(kit), "load", "wood-chip mulch", 7.64554857984, "m3");
    rate(regional(kit), "density", "wood-chip mulch", 300, "kg/m3");
    Results r = PlanKit.run(kit.plan());
    // NIST SP 811: 1 cu yd = 0.764554857984 m³; 300 kg/m³ = 505.66 lb/cu yd. The bed of 1000 sq ft
    // takes 10 in of chips, 30.86 cu yd, and a tenth more: 34 cu yd, four loads of 10 cu yd.
    BulkLoads loads =
        r.all(YardFacts.LOADS).stream()
            .filter(l -> l.item().equals("wood-chip mulch"))
            .findFirst()
            .orElseThrow();
    assertEquals(34, loads.order().value().cubicYards(), 1e-9);
    assertEquals(4, loads.likely().value());
    assertEquals(34 * 505.66, loads.heaviest().value().pounds(), 0.5);
  }

  /** Soil reference, trap 11: a page says a truck holds 21 cubic feet and means yards. */
  @Test
  void load_ofTwentyOneCubicFeet_isRefusedWithBothUnits() {
    PlanKit kit = inFlats();
    PlanException e =
        assertThrows(
            PlanException.class, () -> rate(regional(kit), "load", "wood-chip mulch", 21, "ft3"));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("0.8 cu yd (0.6 m³)"), e.getMessage());
    // The yards that it means are a truck, and so are the 30 of another firm (M22).
    rate(regional(kit), "load", "wood-chip mulch", 21, "yd3");
    rate(kit.words(), "load", "wood-chip mulch", 30, "yd3");
  }

  @Test
  void localRule_planOverRegionOverGeneric() {
    PlanKit kit = inFlats();
    rule(regional(kit), "septic", "Ask the county.");
    rule(regional(kit), "wells", "Ask the state.");
    rule(kit.words(), "septic", "On the sewer.");
    List<LocalRule> rules = PlanKit.run(kit.plan()).all(YardFacts.LOCAL_RULES);
    var inForce = rules.stream().collect(Collectors.groupingBy(LocalRule::topic));
    assertEquals("On the sewer.", inForce.get("septic").get(0).text());
    assertEquals("Flats", inForce.get("wells").get(0).region());
    assertEquals("most places", inForce.get("street").get(0).region());
  }

  private static void rule(PlanScope in, String topic, String text) {
    RegionWords.localRule(in, topic, text, "code", 2020, null);
  }

  @Test
  void check_nearAWall_tellsPlaceValueAndLimit() {
    PlanKit kit = inFlats();
    kit.house(PlanKit.box(0, 26, 20, 20));
    check(regional(kit), Length.feet(10), null);
    Finding f = findings(kit.plan()).get(0);
    assertEquals("region.basins-off-walls", f.rule());
    assertEquals(Severity.WARNING, f.severity());
    assertEquals("test.groovy", f.place().file());
    assertTrue(f.text().contains("6 ft from building \"house\"; the limit is 10 ft"), f.text());
    // A strip of the bed within 10 ft: 4 ft deep over the house's 20 ft, and a rounded end.
    double marked = f.where().orElseThrow().area().squareFeet();
    assertTrue(marked > 80 && marked < 80 + 4 * 10, () -> "marked " + marked);
  }

  @Test
  void check_atTheLimitOrOnQuickSoil_isQuiet() {
    PlanKit far = inFlats();
    far.house(PlanKit.box(0, 30, 20, 20));
    check(regional(far), Length.feet(10), null);
    assertEquals(List.of(), findings(far.plan()));

    PlanKit quick = inFlats();
    soil(regional(quick), "loam", Length.millimetres(5), null);
    RegionWords.soilNamed(quick.words(), "loam", null, null);
    check(regional(quick), null, Length.millimetres(5));
    assertEquals(List.of(), findings(quick.plan()));
  }

  @Test
  void check_onSoilNotGiven_saysThatItCouldNotBeMade() {
    PlanKit kit = inFlats();
    check(regional(kit), null, Length.millimetres(5));
    Finding f = findings(kit.plan()).get(0);
    assertEquals(Severity.NOTE, f.severity());
    assertEquals("flats.groovy", f.place().file());
    assertTrue(f.text().contains("could not be made"));
  }

  @Test
  void statements_withoutSourceOrSense_areRefusedAtTheirPlace() {
    PlanKit kit = inFlats();
    refused(ProblemCode.MISSING_OPTION, () -> publication(regional(kit), " ", "survey", 0, "read"));
    refused(ProblemCode.MISSING_OPTION, () -> publication(regional(kit), "t", "", 0, "read"));
    refused(
        ProblemCode.OUT_OF_RANGE,
        () -> RegionWords.localSoil(regional(kit), "x", 40, 20, 2, null, 22, read(kit, "t")));
    refused(ProblemCode.MISSING_OPTION, () -> check(regional(kit), null, null));
    refused(ProblemCode.UNKNOWN_WORD, () -> rate(regional(kit), "labour", "cut edge", 0.1, "yd3"));
    refused(
        ProblemCode.UNKNOWN_WORD, () -> rate(regional(kit), "load", "wood-chip mulhc", 3, "yd3"));
    refused(ProblemCode.OUT_OF_RANGE, () -> rate(regional(kit), "load", "compost", 0, "yd3"));
    refused(
        ProblemCode.DUPLICATE, () -> RegionWords.region(regional(kit), "B", "b", read(kit, "t")));
    rate(regional(kit), "labour", "cut edge", 0.1, "ft");
    refused(ProblemCode.DUPLICATE, () -> rate(regional(kit), "labour", "cut edge", 0.2, "ft"));
    rate(regional(kit), "price", "compost", 30, "yd3");
    refused(ProblemCode.DUPLICATE, () -> rate(regional(kit), "price", "compost", 35, "yd3"));
    // Another unit is another price, and the plan itself may go before its regional file.
    rate(regional(kit), "price", "compost", 3, "piece");
    rate(kit.words(), "labour", "cut edge", 0.2, "ft");
  }

  private static void refused(ProblemCode code, Runnable word) {
    PlanException e = assertThrows(PlanException.class, word::run);
    assertEquals(code, e.problems().get(0).code());
    assertEquals("flats.groovy", e.problems().get(0).place().file());
  }
}
