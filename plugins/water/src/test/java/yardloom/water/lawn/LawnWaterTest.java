package yardloom.water.lawn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.climate.ClimatePlugin;
import yardloom.climate.normals.NormalsWords;
import yardloom.facts.LawnWater;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Choices;
import yardloom.water.WaterPlugin;
import yardloom.water.lawn.FormerLawn.Turf;
import yardloom.water.lawn.formula.Aridity;
import yardloom.water.lawn.formula.TurfYear;
import yardloom.water.need.MonthlyWeather;

/** The lawn's water against the garden's. */
class LawnWaterTest {
  private static final OutsideRows PUBLISHED_TURF =
      OutsideRows.of(LawnWaterTest.class, "published-turf.csv");
  private static final OutsideRows PUBLISHED_TREE_FACTORS =
      OutsideRows.of(LawnWaterTest.class, "published-tree-factors.csv");

  private static final SourceRef HERE = new SourceRef("p.groovy", 4, 1);

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));
  private double kc = 0.5;

  private PlanScope plan() {
    return new PlanScope(draft, HERE);
  }

  /** A bed of 50 by 20 ft from the corner on, with plants of one crop coefficient. */
  private void yard(String climate, double latitude) {
    NormalsWords.climate(plan(), climate);
    draft.site(
        new Site(
            "somewhere",
            Angle.degrees(latitude),
            Angle.degrees(-100),
            Length.metres(100),
            ZoneId.of("America/Chicago"),
            Angle.ZERO),
        HERE);
    Shape bed = Shape.rectangle(Point.metres(0, 0), Length.feet(50), Length.feet(20));
    draft.add(
        new ElementId(ElementKind.BED, "b"),
        HERE,
        c -> new Element.Bed(c, bed, Element.BedUse.PERENNIAL));
  }

  private void tree(String name, double rightFt, double upFt, double trunkIn) {
    Point at = new Point(Length.feet(rightFt), Length.feet(upFt));
    draft.add(
        new ElementId(ElementKind.TREE, name),
        HERE,
        c ->
            new Element.Tree(
                c,
                at,
                Shape.circle(at, Length.feet(10)),
                Length.feet(20),
                Length.feet(30),
                Length.feet(6),
                Length.inches(trunkIn),
                Element.Leaf.DECIDUOUS));
  }

  private void plants(Plan plan, Sink out) {
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      out.give(
          YardFacts.STANDS,
          new Stand(
              bed.id(),
              HERE,
              new Stand.Kind("plant", "", Length.metres(1)),
              new Stand.Placed(List.of(bed.shape().heart()), bed.shape().area(), Optional.empty()),
              new Stand.Thirst(
                  Collections.nCopies(12, kc), Source.commonPractice("one Kc"), Optional.empty()),
              Stand.Planted.THROUGH_CARDBOARD));
    }
  }

  private Outcome outcome() {
    return new Study(
            PluginLoader.of(
                List.of(
                    new WaterPlugin(),
                    new ClimatePlugin(),
                    new Giver(Set.of(YardFacts.STANDS), this::plants))))
        .of(draft.freeze());
  }

  private static LawnWater lawn(Outcome outcome) {
    return outcome.results().find(YardFacts.LAWN_WATER).orElseThrow();
  }

  private static double inches(Outcome outcome, int month, double factor) {
    MonthlyWeather weather = outcome.results().find(MonthlyWeather.KEY).orElseThrow();
    return Math.max(
        0,
        factor * weather.referenceEt().get(month).value().inches()
            - weather.effectiveRain().get(month).value().inches());
  }

  @ParameterizedTest
  @CsvFileSource(resources = "published-turf.csv", numLinesToSkip = 1)
  void turf_hasThePublishedFigures(
      String id,
      String turf,
      double initial,
      double middle,
      double end,
      double heightM,
      double rootLowM,
      double rootHighM,
      double easyShare) {
    LawnData.Grass grass = LawnData.turf(Choices.parse(Turf.class, turf)).value();
    TurfYear year = grass.year();
    PUBLISHED_TURF.same(
        id,
        "kc",
        List.of(initial, middle, end),
        List.of(year.initial(), year.middle(), year.end()));
    PUBLISHED_TURF.check(id, "heightM", heightM, grass.height().metres(), 1e-9);
    PUBLISHED_TURF.check(id, "rootLowM", rootLowM, grass.rootsFrom().metres(), 1e-9);
    PUBLISHED_TURF.check(id, "rootHighM", rootHighM, grass.rootsTo().metres(), 1e-9);
    PUBLISHED_TURF.same(id, "easyShare", easyShare, grass.easyShare());
  }

  @ParameterizedTest
  @CsvFileSource(resources = "published-tree-factors.csv", numLinesToSkip = 1)
  void trees_haveThePublishedFactor(String id, boolean dry, double factor) {
    PUBLISHED_TREE_FACTORS.same(id, "", factor, LawnData.trees(dry).value());
  }

  @Test
  void turfYear_growsFromSpringToAutumn_orAlways() {
    TurfYear year = new TurfYear(0.8, 0.85, 0.7, Temperature.celsius(5));
    List<Temperature> cold =
        Stream.of(-5, -2, 3, 8, 14, 20, 22, 21, 17, 9, 4, -2).map(Temperature::celsius).toList();
    assertEquals(
        List.of(0.0, 0.0, 0.0, 0.8, 0.85, 0.85, 0.85, 0.85, 0.85, 0.7, 0.0, 0.0),
        year.monthly(cold));
    List<Temperature> mild = Collections.nCopies(12, Temperature.celsius(12));
    assertEquals(Collections.nCopies(12, 0.85), year.monthly(mild));
    // A southern winter lies in the middle of the year.
    List<Temperature> south =
        Stream.of(22, 21, 17, 9, 4, -2, -5, -2, 3, 8, 14, 20).map(Temperature::celsius).toList();
    assertEquals(
        List.of(0.85, 0.85, 0.85, 0.7, 0.0, 0.0, 0.0, 0.0, 0.0, 0.8, 0.85, 0.85),
        year.monthly(south));
  }

  /** Published: San Francisco's rain is half its reference ET; that of Urbana equals it. */
  @Test
  void aridity_followsTheLimitOfDrylands() {
    assertTrue(Aridity.isDry(Length.inches(19.71), Length.inches(34)));
    assertFalse(Aridity.isDry(Length.inches(41.38), Length.inches(41)));
    assertFalse(Aridity.isDry(Length.inches(65), Length.inches(100)));
    assertFalse(Aridity.isDry(Length.ZERO, Length.ZERO));
  }

  /** 1,000 sq ft at one inch are 1,000 / 12 cu ft of 1,728 / 231 gal each. */
  @Test
  void lawnAndGarden_inJuly_areNetNeedsOverTheirEfficiencies() {
    yard("urbana-il", 40.11);
    LawnWords.formerLawn(plan(), "cool season", null);
    Outcome outcome = outcome();
    LawnWater water = lawn(outcome);
    double gallonsPerInch = 1000 / 12.0 * 1728 / 231;
    assertEquals(1000, water.ground().value().squareFeet(), 1e-6);
    double july = inches(outcome, 6, 0.95);
    assertTrue(july > 1, "Urbana's July is dry enough for the test: " + july);
    assertEquals(july * gallonsPerInch / 0.75, water.lawn().get(6).value().gallons(), 1e-6);
    assertEquals(
        inches(outcome, 6, kc) * gallonsPerInch / 0.81,
        water.garden().get(6).value().gallons(),
        1e-6);
    assertEquals(0, water.lawn().get(0).value().litres(), "dormant and wet");
    Table table =
        outcome.tables().stream()
            .filter(t -> t.id().equals("water-against-lawn"))
            .findFirst()
            .orElseThrow();
    assertEquals(4, table.columns().size(), "no trees, no column of trees");
  }

  @Test
  void lessEfficientSprinklers_tookMore_inProportion() {
    yard("urbana-il", 40.11);
    LawnWords.formerLawn(plan(), "cool season", 0.5);
    double half = lawn(outcome()).lawn().get(6).value().litres();
    LawnWaterTest other = new LawnWaterTest();
    other.yard("urbana-il", 40.11);
    LawnWords.formerLawn(other.plan(), "cool season", 1.0);
    assertEquals(2 * lawn(other.outcome()).lawn().get(6).value().litres(), half, 1e-6);
  }

  /**
   * A crown 20 ft wide over a bed 20 ft deep whose far edge lies at its middle: half of 314.16 sq
   * ft, as a polygon. In the dry air of San Francisco the factor is 0.5.
   */
  @Test
  void standingTree_takesByFormerLawnUnderItsCrown_andIsSaid() {
    yard("san-francisco-ca", 37.77);
    LawnWords.formerLawn(plan(), "cool season", null);
    tree("oak", 25, 20, 12);
    tree("sapling", 15, 10, 1);
    tree("next door", 120, 120, 12);
    Outcome outcome = outcome();
    double gallonsPerInch = 50 * Math.PI / 12 * 1728 / 231;
    assertEquals(
        inches(outcome, 6, 0.5) * gallonsPerInch / 0.81,
        lawn(outcome).trees().get(6).value().gallons(),
        0.01 * gallonsPerInch);
    List<Finding> said =
        outcome.findings().stream().filter(f -> f.rule().equals("water.lawn")).toList();
    assertEquals(1, said.size());
    assertTrue(said.get(0).text().contains("under their crowns: oak, in "), said.get(0).text());
  }

  @Test
  void thirstyGarden_isSaidToTakeMore() {
    kc = 1.3;
    yard("urbana-il", 40.11);
    LawnWords.formerLawn(plan(), "warm season", 1.0);
    assertTrue(
        outcome().findings().stream()
            .anyMatch(
                f -> f.rule().equals("water.lawn") && f.text().contains("more from the tap")));
  }

  @Test
  void withoutTheWord_nothingIsCompared() {
    yard("urbana-il", 40.11);
    assertTrue(outcome().results().find(YardFacts.LAWN_WATER).isEmpty());
  }

  @Test
  void wrongEfficiency_andASecondLawn_areRefused() {
    String share =
        assertThrows(PlanException.class, () -> LawnWords.formerLawn(plan(), "cool season", 75.0))
            .getMessage();
    assertTrue(share.contains("got 75.0"), share);
    LawnWords.formerLawn(plan(), "cool season", null);
    assertThrows(PlanException.class, () -> LawnWords.formerLawn(plan(), "cool season", null));
  }
}
