package yardloom.planting.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.harvest.PlantYields;
import yardloom.planting.harvest.Yield;

class PlantCatalogueTest {
  private final PlantCatalogue catalogue = PlantCatalogue.shipped();

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
    Crop crop = found.crop();
    assertEquals(kc, text(crop.kc()), id);
    assertEquals(Optional.ofNullable(inGrass), crop.inGrass().map(PlantCatalogueTest::text), id);
    assertEquals(heightM, crop.height().orElseThrow().metres(), 1e-12, id);
    assertEquals(rootLowM, crop.roots().orElseThrow().low().metres(), 1e-12, id);
    assertEquals(rootHighM, crop.roots().orElseThrow().high().metres(), 1e-12, id);
    assertEquals(easyShare, crop.roots().orElseThrow().easyShare(), id);
    assertEquals(Standing.READ, found.cropSource().standing(), id);
    assertFalse(found.cropStandsIn(), id);
  }

  private static String text(Crop.Coefficients kc) {
    return String.format(Locale.ROOT, "%.2f/%.2f/%.2f", kc.initial(), kc.middle(), kc.end());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "fao56-stages.csv", numLinesToSkip = 1)
  void stages_areThoseOfFao56(
      String id, String plant, int initial, int development, int middle, int late, int total) {
    Crop.Stages stages = catalogue.plant(plant).crop().stages().orElseThrow();
    assertEquals(
        List.of(initial, development, middle, late, total),
        List.of(
            stages.initial(), stages.development(), stages.middle(), stages.late(), stages.total()),
        id);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "published-yields.csv", numLinesToSkip = 1)
  void yields_areThoseOfTheirSources(
      String id, String plant, String per, double lowLb, double highLb) {
    Yield found = PlantYields.of(plant).orElseThrow();
    assertEquals(per, Choices.text(found.per()), id);
    assertEquals(lowLb, found.low().pounds(), 1e-9, id);
    assertEquals(highLb, found.high().pounds(), 1e-9, id);
    assertFalse(isRecalled(found), id);
  }

  /** Trap 14: what plant data sets say of family and hardiness, and what is so. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "traps.csv", numLinesToSkip = 1)
  void familiesAndHardiness_areNotThoseOfTheDataSets(
      String id, String plant, String what, String wrong, String right) {
    Plant found = catalogue.plant(plant);
    String said = what.equals("family") ? found.family() : Choices.text(found.season());
    assertEquals(right, said, id);
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
      assertTrue(plant.family().matches("[A-Z][a-z]+aceae"), plant.name());
      assertFalse(old.contains(plant.family()), plant.name());
      String genus = plant.botanical().split(" ")[0];
      String other = genera.putIfAbsent(genus, plant.family());
      assertTrue(other == null || other.equals(plant.family()), plant.name());
    }
  }

  @Test
  void everyPlantWithAYield_hasAFirstHarvest() {
    for (Plant plant : catalogue.all()) {
      assertTrue(
          PlantYields.of(plant.name()).isEmpty() || PlantYields.first(plant.name()).isPresent(),
          plant.name());
    }
    assertTrue(isRecalled(PlantYields.of("tomato").orElseThrow()));
    assertTrue(PlantYields.of("sage").isEmpty(), "given as one plant a household");
  }

  @ParameterizedTest
  @CsvFileSource(resources = "spacings.csv", numLinesToSkip = 1)
  void spacings_areThoseOfExtensionSheets(
      String id, String plant, String measure, double lowIn, double highIn) {
    Plant found = catalogue.plant(plant);
    SizeRange range = measure.equals("rows") ? found.rows() : found.inRow();
    assertEquals(lowIn, range.low().inches(), 1e-9, id);
    assertEquals(highIn, range.high().inches(), 1e-9, id);
    assertEquals(Standing.READ, range.source().standing(), id);
  }

  @Test
  void coefficientsBorrowedFromAnotherCrop_areSaidToBeUnverified() {
    Plant pawpaw = catalogue.plant("pawpaw");
    assertTrue(pawpaw.cropStandsIn());
    assertTrue(pawpaw.unverified().contains("crop coefficient"));
    assertFalse(catalogue.plant("tomato").unverified().contains("crop coefficient"));
  }

  @Test
  void rhubarb_warnsOfItsLeaves_fromAReadSource() {
    Plant rhubarb = catalogue.plant("Rhubarb");
    assertTrue(rhubarb.harmful());
    assertTrue(rhubarb.caution().startsWith("LEAVES TOXIC"));
    assertEquals(Standing.READ, rhubarb.cautionSource().standing());
  }

  private static boolean isRecalled(Yield yield) {
    return yield.sources().stream().anyMatch(s -> s.standing() == Source.Standing.MEMORY);
  }
}
