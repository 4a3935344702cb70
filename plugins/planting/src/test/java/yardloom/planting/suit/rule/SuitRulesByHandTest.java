package yardloom.planting.suit.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.facts.SoilAcidity;
import yardloom.facts.SoilProfile;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.traits.ChillNeeds;
import yardloom.site.lot.LotWords;

/** Rules at the borders of what they let pass; the needs are those of the shipped tables. */
class SuitRulesByHandTest {
  private static final Source SAYS = Source.commonPractice("told by the test");

  private final PlanKit kit = PlanKit.us();
  private final List<Candidate> plants = new ArrayList<>();
  private Optional<SoilAcidity> acidity = Optional.empty();
  private Optional<SoilProfile> soil = Optional.empty();
  private Optional<Household> household = Optional.empty();

  private static Point ft(double x, double y) {
    return new Point(Length.feet(x), Length.feet(y));
  }

  /** A tree at some feet from the left, 12 ft wide. */
  private Candidate tree(String name, String plant, double xFt, Optional<Variety> variety) {
    Candidate tree =
        new Candidate(
            PlantCatalogue.shipped().plant(plant),
            new ElementId(ElementKind.TREE, name),
            SourceRef.NONE,
            List.of(ft(xFt, 10)),
            Length.feet(12),
            false,
            false,
            variety);
    plants.add(tree);
    return tree;
  }

  private Candidate tree(String plant, double xFt) {
    return tree(plant + plants.size(), plant, xFt, Optional.empty());
  }

  private final Map<ElementId, Integer> valves = new HashMap<>();

  private Optional<Reason> judge(SuitRule rule, Candidate plant) {
    Plan plan = kit.plan();
    return rule.judge(
        plant,
        new Yard(
            plan,
            plants,
            Optional.empty(),
            new Yard.Weather(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
            new Yard.Ground(acidity, soil),
            valves,
            household));
  }

  private static String suits(Optional<Reason> reason) {
    return reason.map(r -> r.suits().name()).orElse("FITS");
  }

  /**
   * Apples want pH 6.0 to 7.0: half a unit below passes and a whole one above; twice that is a
   * condition, more a failure. Blueberries want 4.2 to 5.2, half a unit either way.
   */
  @ParameterizedTest
  @CsvSource({
    "apple (dwarf), 5.5, FITS",
    "apple (dwarf), 5.4, FITS_IF",
    "apple (dwarf), 5.0, FITS_IF",
    "apple (dwarf), 4.9, DOES_NOT_FIT",
    "apple (dwarf), 8.0, FITS",
    "apple (dwarf), 8.1, FITS_IF",
    "apple (dwarf), 9.1, DOES_NOT_FIT",
    "highbush blueberry, 5.7, FITS",
    "highbush blueberry, 5.8, FITS_IF",
    "highbush blueberry, 6.3, DOES_NOT_FIT"
  })
  void acidity_isLetPassByHalfAUnit(String plant, double found, String expected) {
    acidity = Optional.of(new SoilAcidity(Derived.by("told", SAYS).gives(found), Optional.empty()));
    assertEquals(expected, suits(judge(new AcidityRule(), tree(plant, 20))));
  }

  @ParameterizedTest
  @CsvSource({
    "5.2, bring the soil to pH 6.0 with lime and test",
    "8.5, bring the soil to pH 7.0 with sulfur and test",
    "4.5, lime over years",
    "9.5, grow it in a tub"
  })
  void acidity_saysWhatToDo(double found, String todo) {
    acidity = Optional.of(new SoilAcidity(Derived.by("told", SAYS).gives(found), Optional.empty()));
    String said = judge(new AcidityRule(), tree("apple (dwarf)", 20)).orElseThrow().todo();
    assertTrue(said.startsWith(todo), said);
  }

  /**
   * A plan that brings the soil to 6.5 makes a condition of what would fail; to 5.2 it does not.
   */
  @Test
  void acidity_thatThePlanAmends_isACondition() {
    Candidate apple = tree("apple (dwarf)", 20);
    acidity = Optional.of(new SoilAcidity(Derived.by("told", SAYS).gives(4.5), Optional.of(6.5)));
    Reason amended = judge(new AcidityRule(), apple).orElseThrow();
    assertEquals(Suits.FITS_IF, amended.suits());
    assertTrue(amended.todo().startsWith("bring the soil to pH 6.5 first"), amended.todo());
    acidity = Optional.of(new SoilAcidity(Derived.by("told", SAYS).gives(4.5), Optional.of(5.2)));
    assertEquals("DOES_NOT_FIT", suits(judge(new AcidityRule(), apple)));
    acidity = Optional.empty();
    assertEquals("FITS", suits(judge(new AcidityRule(), apple)));
  }

  /**
   * Blueberries stand well at 5.6; a plan that limes to 6.5, 1.3 above what they want, spoils that.
   * Apples (6.0 to 7.0) bear 5.6 and 6.5; sulfur that brings 6.5 to 5.2 spoils it for them.
   */
  @Test
  void acidity_thatThePlanSpoils_isACondition() {
    acidity = Optional.of(new SoilAcidity(Derived.by("told", SAYS).gives(5.6), Optional.of(6.5)));
    Reason limed = judge(new AcidityRule(), tree("highbush blueberry", 20)).orElseThrow();
    assertEquals(Suits.FITS_IF, limed.suits());
    assertTrue(limed.text().contains("the plan brings the soil to 6.5"), limed.text());
    assertTrue(limed.todo().startsWith("keep lime off its bed"), limed.todo());
    assertEquals("FITS", suits(judge(new AcidityRule(), tree("apple (dwarf)", 40))));
    acidity = Optional.of(new SoilAcidity(Derived.by("told", SAYS).gives(6.5), Optional.of(5.2)));
    Reason soured = judge(new AcidityRule(), tree("apple (dwarf)", 60)).orElseThrow();
    assertTrue(soured.todo().startsWith("keep sulfur off its bed"), soured.todo());
  }

  /** Elder harms children by its raw berries and pets; apple seeds pets only. */
  @ParameterizedTest
  @CsvSource({
    "American elderberry, true, true, 'may harm children: raw berries, stems, leaves; pets:'",
    "American elderberry, true, false, 'may harm children: raw berries, stems, leaves'",
    "apple (dwarf), true, true, 'may harm pets: seeds and leaves'",
    "apple (dwarf), true, false, ",
    "apple (dwarf), false, true, 'may harm pets: seeds and leaves'"
  })
  void hazards_areToldToWhomTheyConcern(
      String plant, boolean children, boolean pets, String expected) {
    household = Optional.of(new Household(children, pets));
    String said = judge(new HazardRule(), tree(plant, 20)).map(Reason::text).orElse("");
    assertTrue(expected == null ? said.isEmpty() : said.startsWith(expected), said);
  }

  @Test
  void withoutAWordOfTheHousehold_nothingIsSaid() {
    assertEquals("FITS", suits(judge(new HazardRule(), tree("apple (dwarf)", 20))));
  }

  private static SoilProfile clay(boolean heavy) {
    return new SoilProfile(
        "clay",
        heavy,
        Length.feet(2),
        Derived.by("told", SAYS).gives(0.16),
        Derived.by("told", SAYS).gives(Length.inches(3)),
        Optional.empty());
  }

  /** Apples want good drainage, American plums bear any, amaranth is gone before winter. */
  @Test
  void drainage_concernsPerennialsOnHeavySoil() {
    soil = Optional.of(clay(true));
    Reason said = judge(new DrainageRule(), tree("apple (dwarf)", 20)).orElseThrow();
    assertEquals(Suits.FITS_IF, said.suits());
    assertEquals("it wants well-drained soil; clay drains slowly", said.text());
    assertEquals("drainage", said.rule());
    assertEquals("FITS", suits(judge(new DrainageRule(), tree("American plum", 20))));
    assertEquals("FITS", suits(judge(new DrainageRule(), tree("amaranth", 20))));
    soil = Optional.of(clay(false));
    assertEquals("FITS", suits(judge(new DrainageRule(), tree("apple (dwarf)", 20))));
  }

  /** Varieties ask for 800 to 1000 h: fewer is a failure, between a matter of the variety. */
  @ParameterizedTest
  @CsvSource({"799, DOES_NOT_FIT", "800, FITS_IF", "999, FITS_IF", "1000, FITS"})
  void chill_hasALeastAndAMost(double hours, String expected) {
    ChillNeeds.Need need = new ChillNeeds.Need(800, OptionalDouble.of(1000), SAYS);
    assertEquals(expected, suits(ChillRule.judge(need, hours)));
  }

  @Test
  void chill_saysWhatIsAskedAndWhatIsThere() {
    assertEquals(
        "asks for 800 to 1000 h of winter chill by variety; a usual winter here has about 790 h"
            + " below 45 °F (7 °C)",
        ChillRule.judge(new ChillNeeds.Need(800, OptionalDouble.of(1000), SAYS), 790)
            .orElseThrow()
            .text());
    ChillNeeds.Need only = new ChillNeeds.Need(800, OptionalDouble.empty(), SAYS);
    assertEquals("FITS", suits(ChillRule.judge(only, 800)));
    assertTrue(
        ChillRule.judge(only, 700)
            .orElseThrow()
            .text()
            .startsWith("asks for 800 h of winter chill or more;"));
  }

  /** A wall ends at 10 ft; half of 12 ft is 6. */
  @Test
  void treesKeepHalfTheirWidthFromWalls() {
    kit.house(PlanKit.box(0, 0, 10, 20));
    Reason near = judge(new LineRule(), tree("apple (dwarf)", 15)).orElseThrow();
    assertEquals(
        "grown, it is 12.0 ft (3.66 m) wide and stands 5.0 ft (1.52 m) from building house",
        near.text().replace('\u00a0', ' ').replace("\"", ""));
    assertTrue(near.todo().contains("6.0 ft (1.83 m) from the wall"), near.todo());
    assertEquals("FITS", suits(judge(new LineRule(), tree("apple (dwarf)", 16))));
    assertEquals("FITS", suits(judge(new LineRule(), tree("amaranth", 15))));
  }

  /** The lot ends at 50 ft: at 46 ft a tree of 6 ft either way hangs 2 ft over it. */
  @Test
  void treesKeepWithinTheLotLine() {
    LotWords.lot(kit.words(), List.of(ft(0, -50), ft(50, -50), ft(50, 50), ft(0, 50)), null);
    Reason over = judge(new LineRule(), tree("apple (dwarf)", 46)).orElseThrow();
    assertTrue(over.text().contains("hangs 2.0 ft (0.61 m) over the lot line"), over.text());
    assertEquals("FITS", suits(judge(new LineRule(), tree("apple (dwarf)", 44))));
  }

  private static Optional<Variety> variety(
      String name, boolean selfFruitful, Variety.Blooms blooms) {
    return Optional.of(new Variety("apple (dwarf)", List.of(name), selfFruitful, blooms));
  }

  /** Arbor Day: apples within 50 ft. Two trees whose varieties nobody names are a condition. */
  @Test
  void appleAlone_bearsNothing_withAnotherVarietyIt_does() {
    Candidate apple = tree("apple (dwarf)", 0);
    Reason alone = judge(new PartnerRule(), apple).orElseThrow();
    assertEquals(Suits.DOES_NOT_FIT, alone.suits());
    assertTrue(alone.text().endsWith("; the plan has none"), alone.text());
    tree("apple (standard)", 51);
    String far = judge(new PartnerRule(), apple).orElseThrow().text();
    assertTrue(far.endsWith("; the nearest stands 51.0 ft (15.54 m) away"), far);
    tree("apple (dwarf)", 50);
    Reason unsaid = judge(new PartnerRule(), apple).orElseThrow();
    assertEquals(Suits.FITS_IF, unsaid.suits());
    assertTrue(unsaid.text().endsWith("the plan does not say which varieties they are"));
  }

  @Test
  void twoOfOneVariety_bearNothing_twoVarietiesDo_andSelfFruitfulAlone() {
    Candidate red = tree("a", "apple (dwarf)", 0, variety("Red", false, Variety.Blooms.MIDSEASON));
    tree("b", "apple (dwarf)", 20, variety("Red", false, Variety.Blooms.MIDSEASON));
    Reason one = judge(new PartnerRule(), red).orElseThrow();
    assertEquals(Suits.DOES_NOT_FIT, one.suits());
    assertTrue(one.text().endsWith("all in reach are Red"), one.text());
    tree("c", "apple (dwarf)", 30, variety("Gold", false, Variety.Blooms.MIDSEASON));
    assertEquals("FITS", suits(judge(new PartnerRule(), red)));
    Candidate self = tree("d", "apple (dwarf)", 900, variety("Own", true, Variety.Blooms.LATE));
    assertEquals("FITS", suits(judge(new PartnerRule(), self)));
  }

  /**
   * Apples bloom for 15 days: a week early and a week late have one day together, which is too
   * little; early and usual have eight.
   */
  @Test
  void bloomsApart_areNoHelp() {
    Candidate early = tree("a", "apple (dwarf)", 0, variety("Red", false, Variety.Blooms.EARLY));
    tree("b", "apple (dwarf)", 20, variety("Gold", false, Variety.Blooms.LATE));
    String apart = judge(new PartnerRule(), early).orElseThrow().text();
    assertTrue(apart.endsWith("; what stands in reach blooms at another time"), apart);
    tree("c", "apple (dwarf)", 30, variety("Green", false, Variety.Blooms.MIDSEASON));
    assertEquals("FITS", suits(judge(new PartnerRule(), early)));
  }

  /** Pears of two species bloom together for a week and need no named varieties. */
  @Test
  void twoSpeciesOfAGroup_areSureToBear() {
    Candidate pear = tree("European pear", 0);
    tree("Asian pear", 100);
    assertEquals("FITS", suits(judge(new PartnerRule(), pear)));
    assertEquals("FITS", suits(judge(new PartnerRule(), tree("apricot", 0))));
  }

  /**
   * Apricots like little water, bananas much, apples some (all recalled): apricots and bananas do
   * not share a valve; the apricot is told, since it is the one that suffers.
   */
  @Test
  void dryAndThirstyKinds_doNotShareAValve() {
    Candidate apricot = tree("apricot", 0);
    Candidate banana = tree("banana", 30);
    Candidate apple = tree("apple (dwarf)", 60);
    assertEquals("FITS", suits(judge(new WaterRule(), apricot)));
    valves.put(apricot.in(), 3);
    valves.put(apple.in(), 3);
    valves.put(banana.in(), 4);
    assertEquals("FITS", suits(judge(new WaterRule(), apricot)));
    valves.put(banana.in(), 3);
    Reason said = judge(new WaterRule(), apricot).orElseThrow();
    assertEquals(Suits.FITS_IF, said.suits());
    assertEquals("it likes low water; valve 3 also waters banana, which likes much", said.text());
    assertEquals("water", said.rule());
    assertEquals("FITS", suits(judge(new WaterRule(), banana)));
  }
}
