package yardloom.planting.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.harvest.PlantYields;
import yardloom.planting.harvest.Yield;
import yardloom.planting.traits.Growth;

class PlantCatalogueTest {
  private static final OutsideRows FAO56 = OutsideRows.of(PlantCatalogueTest.class, "fao56.csv");
  private static final OutsideRows FAO56_STAGES =
      OutsideRows.of(PlantCatalogueTest.class, "fao56-stages.csv");
  private static final OutsideRows PUBLISHED_YIELDS =
      OutsideRows.of(PlantCatalogueTest.class, "published-yields.csv");
  private static final OutsideRows TRAPS = OutsideRows.of(PlantCatalogueTest.class, "traps.csv");
  private static final OutsideRows SPACINGS =
      OutsideRows.of(PlantCatalogueTest.class, "spacings.csv");

  private final PlantCatalogue catalogue = PlantCatalogue.shipped();

  /** Kinds of what was meant, not what looks alike; a misspelt name is put right. */
  @ParameterizedTest
  @CsvSource({
    "pepper, Did you mean `sweet pepper`?",
    "Perry pear, Did you mean `Asian pear` or `European pear` or `prickly pear`?",
    "tomatoe, Did you mean `tomato`?",
    "sweet peper, Did you mean `sweet pepper`?",
  })
  void unknownPlant_isToldItsKinds(String said, String hint) {
    PlanException e = assertThrows(PlanException.class, () -> catalogue.plant(said));
    assertTrue(e.getMessage().contains("'" + said + "'. " + hint + " ["), e.getMessage());
  }

  /** Of trees the figures in grass follow, of crops without them nothing. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "fao56.csv", numLinesToSkip = 1)
  void crops_areThoseOfFao56(
      String id,
      String plant,
      String kc,
      String inGrass,
      double heightM,
      double rootLowM,
      double rootHighM,
      double easyShare) {
    Plant found = catalogue.plant(plant);
    Crop crop = found.draw().crop();
    FAO56.same(id, "kc", kc, text(crop.kc()));
    FAO56.same(
        id,
        "inGrass",
        Optional.ofNullable(inGrass).orElse("none"),
        crop.inGrass().map(PlantCatalogueTest::text).orElse("none"));
    FAO56.check(id, "heightM", heightM, crop.height().orElseThrow().metres(), 1e-12);
    FAO56.check(id, "rootLowM", rootLowM, crop.roots().orElseThrow().low().metres(), 1e-12);
    FAO56.check(id, "rootHighM", rootHighM, crop.roots().orElseThrow().high().metres(), 1e-12);
    FAO56.same(id, "easyShare", easyShare, crop.roots().orElseThrow().easyShare());
    assertEquals(Standing.READ, found.draw().source().standing(), id);
    assertFalse(found.draw().standsIn(), id);
  }

  private static String text(Crop.Coefficients kc) {
    return String.format(Locale.ROOT, "%.2f/%.2f/%.2f", kc.initial(), kc.middle(), kc.end());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "fao56-stages.csv", numLinesToSkip = 1)
  void stages_areThoseOfFao56(
      String id, String plant, int initial, int development, int middle, int late, int total) {
    Crop.Stages stages = catalogue.plant(plant).draw().crop().stages().orElseThrow();
    FAO56_STAGES.same(
        id,
        "",
        List.of(initial, development, middle, late, total),
        List.of(
            stages.initial(),
            stages.development(),
            stages.middle(),
            stages.late(),
            stages.total()));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "published-yields.csv", numLinesToSkip = 1)
  void yields_areThoseOfTheirSources(
      String id, String plant, String per, double lowLb, double highLb) {
    Yield found = PlantYields.of(PlantCatalogue.shipped().plant(plant)).orElseThrow();
    PUBLISHED_YIELDS.same(id, "per", per, Choices.text(found.per()));
    PUBLISHED_YIELDS.check(id, "lowLb", lowLb, found.low().pounds(), 1e-9);
    PUBLISHED_YIELDS.check(id, "highLb", highLb, found.high().pounds(), 1e-9);
    assertFalse(isRecalled(found), id);
  }

  /** Trap 14: what plant data sets say of family and hardiness, and what is so. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "traps.csv", numLinesToSkip = 1)
  void familiesAndHardiness_areNotThoseOfTheDataSets(
      String id, String plant, String what, String wrong, String right) {
    Plant found = catalogue.plant(plant);
    String said =
        what.equals("family") ? found.family().name() : Choices.text(found.growth().season());
    TRAPS.same(id, "", right, said);
    assertNotEquals(wrong, said, id);
  }

  /** The names that FAO's ECOCROP still has, and those of crop groups. */
  @Test
  void families_areAcceptedNames_andOneOfEachGenus() {
    Set<String> old =
        Set.of(
            "Alliaceae",
            "Caprifoliaceae",
            "Chenopodiaceae",
            "Compositae",
            "Cruciferae",
            "Labiatae",
            "Leguminosae",
            "Liliaceae",
            "Umbelliferae");
    Map<String, String> genera = new TreeMap<>();
    for (Plant plant : catalogue.all()) {
      assertTrue(plant.family().name().matches("[A-Z][a-z]+aceae"), plant.name());
      // Honeysuckles kept that name when elders left it.
      boolean kept = plant.botanical().startsWith("Lonicera");
      assertFalse(old.contains(plant.family().name()) && !kept, plant.name());
      String genus = plant.botanical().split(" ")[0];
      String other = genera.putIfAbsent(genus, plant.family().name());
      assertTrue(other == null || other.equals(plant.family().name()), plant.name());
    }
  }

  /**
   * A household that plants a fruit is told what it brings. By hand: 50 to 100 pomegranates (from
   * memory) of half a pound are 25 to 50 lb; 30 to 40 quarts of sour cherries (from memory) at 56
   * lb to the bushel of 32 are 52.5 to 70 lb.
   */
  @Test
  void everyFruit_hasAYield() {
    for (Plant plant : catalogue.all()) {
      if (Growth.roles(plant).contains("fruit")) {
        assertTrue(PlantYields.of(plant).isPresent(), plant.name());
      }
    }
    Yield pomegranate = PlantYields.of(catalogue.plant("pomegranate")).orElseThrow();
    assertEquals(25, pomegranate.low().pounds(), 1e-9);
    assertEquals(50, pomegranate.high().pounds(), 1e-9);
    Yield cherry = PlantYields.of(catalogue.plant("sour cherry")).orElseThrow();
    assertEquals(52.5, cherry.low().pounds(), 1e-9);
    assertEquals(70, cherry.high().pounds(), 1e-9);
  }

  @Test
  void everyPlantWithAYield_hasAFirstHarvest() {
    for (Plant plant : catalogue.all()) {
      assertTrue(
          PlantYields.of(plant).isEmpty() || PlantYields.first(plant).isPresent(), plant.name());
    }
    assertTrue(isRecalled(PlantYields.of(PlantCatalogue.shipped().plant("tomato")).orElseThrow()));
    assertTrue(
        PlantYields.of(PlantCatalogue.shipped().plant("sage")).isEmpty(),
        "given as one plant a household");
  }

  @ParameterizedTest
  @CsvFileSource(resources = "spacings.csv", numLinesToSkip = 1)
  void spacings_areThoseOfExtensionSheets(
      String id, String plant, String measure, double lowIn, double highIn) {
    Plant found = catalogue.plant(plant);
    SizeRange range = measure.equals("rows") ? found.size().rows() : found.size().inRow();
    SPACINGS.check(id, "lowIn", lowIn, range.low().inches(), 1e-9);
    SPACINGS.check(id, "highIn", highIn, range.high().inches(), 1e-9);
    assertEquals(Standing.READ, range.source().standing(), id);
  }

  @Test
  void coefficientsBorrowedFromAnotherCrop_areSaidToBeUnverified() {
    Plant pawpaw = catalogue.plant("pawpaw");
    assertTrue(pawpaw.draw().standsIn());
    assertTrue(pawpaw.unverified().contains("crop coefficient"));
    assertFalse(catalogue.plant("tomato").unverified().contains("crop coefficient"));
  }

  @Test
  void rhubarb_warnsOfItsLeaves_fromAReadSource() {
    Plant rhubarb = catalogue.plant("Rhubarb");
    assertTrue(rhubarb.caution().harmful());
    assertTrue(rhubarb.caution().text().startsWith("LEAVES TOXIC"));
    assertEquals(Standing.READ, rhubarb.caution().source().standing());
  }

  /**
   * Neighbours may touch, not sit in one another: at the usual spacing each has at least half of
   * its crown's ground. Vines run among each other, sunchokes are a thicket, walnuts are thinned as
   * they grow (Rutgers FS1225 plants them at 25 to 30 ft, read).
   */
  @Test
  void spacings_leaveHalfOfTheGrownCrown() {
    Set<String> apart =
        Set.of("black walnut", "Jerusalem artichoke", "sweet potato", "winter squash");
    Set<String> crowded = new TreeSet<>();
    for (Plant plant : catalogue.all()) {
      double ground = plant.size().inRow().middle().by(plant.size().rows().middle()).squareFeet();
      double spreadFt = plant.size().spread().middle().feet();
      if (ground < 0.5 * Math.PI / 4 * spreadFt * spreadFt) {
        crowded.add(plant.name());
      }
    }
    assertEquals(apart, crowded);
  }

  /** No source has plants wider apart in the row than two grown ones are wide. */
  @Test
  void spacings_areWithinTwiceTheSpread() {
    for (Plant plant : catalogue.all()) {
      double ratio = plant.size().inRow().high().ratioTo(plant.size().spread().high());
      assertTrue(ratio <= 2, plant.name() + " " + ratio);
    }
  }

  /**
   * Orchards of the future, with very high yields, bring 1500 bushels of 42 lb an acre and catch 70
   * % of the light (Robinson and others, A Vision for Apple Orchard Systems of the Future, Cornell
   * University; fruiting-wall principles, a trade paper; both read): 1500 × 42 / 43,560 / 0.7 =
   * 2.07 lb on a square foot of crown. A garden's tree or bush brings no more.
   */
  @Test
  void yieldsOfWoodyPlants_fitTheirCrowns() {
    double most = 1500 * 42 / 43_560.0 / 0.7;
    assertEquals(2.07, most, 0.005);
    for (Plant plant : catalogue.all()) {
      Optional<Yield> yield = PlantYields.of(plant).filter(y -> y.per() == Yield.Per.PLANT);
      if (plant.growth().form().isWoody() && yield.isPresent()) {
        double spreadFt = plant.size().spread().middle().feet();
        double each = yield.get().high().pounds() / (Math.PI / 4 * spreadFt * spreadFt);
        assertTrue(each <= most, plant.name() + " " + each + " lb/sq ft of crown");
      }
    }
  }

  /** Crops that drop their leaves in FAO-56's notes; their curves start near bare ground. */
  @Test
  void evergreens_doNotDrinkLikeDeciduousTrees() {
    Set<String> deciduous =
        Set.of(
            "apples, cherries, pears",
            "apricots, peaches, stone fruit",
            "grapes (table)",
            "kiwi",
            "walnuts");
    for (Plant plant : catalogue.all()) {
      if (plant.growth().season() == Plant.Season.EVERGREEN) {
        assertFalse(deciduous.contains(plant.draw().crop().name()), plant.name());
      }
    }
  }

  /**
   * Shrubs of low water use have a species factor of 0.10 to 0.30 (Salinity Management Guide,
   * Tables 5 and 6, read for sagebrush and rock plants of dry climates; these herbs stand in).
   */
  @ParameterizedTest
  @ValueSource(strings = {"rosemary", "sage", "thyme"})
  void woodyHerbsOfDryClimates_drinkLittleAndAllYear(String name) {
    Plant herb = catalogue.plant(name);
    assertEquals("0.30/0.30/0.30", text(herb.draw().crop().kc()));
    assertEquals(Plant.Season.EVERGREEN, herb.growth().season());
    assertTrue(herb.unverified().contains("crop coefficient"));
  }

  private static boolean isRecalled(Yield yield) {
    return yield.sources().stream().anyMatch(s -> s.standing() == Source.Standing.MEMORY);
  }
}
