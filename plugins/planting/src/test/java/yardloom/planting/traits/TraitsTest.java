package yardloom.planting.traits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/** The tables of traits against what their sources print, and laws over all rows. */
class TraitsTest {
  private static final OutsideRows PUBLISHED_PH =
      OutsideRows.of(TraitsTest.class, "published-ph.csv");
  private static final OutsideRows PUBLISHED_POLLINATION =
      OutsideRows.of(TraitsTest.class, "published-pollination.csv");

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "published-ph.csv", numLinesToSkip = 1)
  void acidity_isThatOfItsSource(String id, String plant, double low, double high, String source) {
    SoilNeed need = SoilNeed.of(PlantCatalogue.shipped().plant(plant)).orElseThrow();
    PUBLISHED_PH.check(id, "low", low, need.lowPh(), 1e-9);
    PUBLISHED_PH.check(id, "high", high, need.highPh(), 1e-9);
    assertEquals(Standing.READ, need.phSource().standing(), id);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "published-pollination.csv", numLinesToSkip = 1)
  void pollination_isThatOfItsSource(
      String id, String plant, String need, Double withinFt, String source) {
    Pollination found = Pollination.of(PlantCatalogue.shipped().plant(plant));
    PUBLISHED_POLLINATION.same(id, "need", need, Choices.text(found.need()));
    PUBLISHED_POLLINATION.same(
        id,
        "withinFt",
        Optional.ofNullable(withinFt).map(Length::feet).map(Length::toString).orElse("none"),
        found.within().map(Length::toString).orElse("none"));
    assertEquals(Standing.READ, found.source().standing(), id);
  }

  /** At least 150 kinds, most of them perennial. */
  @Test
  void catalogue_isLargeAndMostlyPerennial() {
    long all = PlantCatalogue.shipped().all().size();
    long perennial =
        PlantCatalogue.shipped().all().stream()
            .filter(p -> Growth.of(p).life() == Growth.Life.PERENNIAL)
            .count();
    assertTrue(all >= 150, "plants " + all);
    assertTrue(perennial >= 0.7 * all, "perennials " + perennial + " of " + all);
  }

  @Test
  void everyPlant_hasEveryTrait() {
    for (Plant plant : PlantCatalogue.shipped().all()) {
      String name = plant.name();
      assertTrue(SoilNeed.of(plant).isPresent(), name);
      assertTrue(WaterClass.of(plant).isPresent(), name);
      assertTrue(LeastLight.of(plant).hours() >= 1, name);
      assertEquals(
          plant.growth().season().isAnnual(), Growth.of(plant).life() == Growth.Life.ANNUAL, name);
      boolean canopy = Growth.of(plant).layer() == Growth.Layer.CANOPY;
      assertTrue(canopy || plant.growth().form() != Plant.Form.TREE, name);
      SoilNeed soil = SoilNeed.of(plant).orElseThrow();
      assertTrue(3.5 <= soil.lowPh() && soil.lowPh() < soil.highPh() && soil.highPh() <= 9, name);
    }
  }

  /** Who needs a partner says within what distance and when it blooms; who does not, neither. */
  @Test
  void crossPollinated_haveGroupDistanceAndBloom() {
    for (Plant plant : PlantCatalogue.shipped().all()) {
      Pollination p = Pollination.of(plant);
      boolean partnered = p.isCross() || p.need() == Pollination.Need.HELPS;
      assertEquals(partnered, p.within().isPresent(), plant.name());
      assertEquals(partnered, !p.group().isEmpty(), plant.name());
      if (partnered) {
        Bloom bloom = Bloom.of(plant).orElseThrow();
        assertTrue(bloom.from() <= bloom.until(), plant.name());
      }
    }
  }

  /** Legumes and the actinorhizal families of this list: oleaster and buckthorn (Ceanothus). */
  @Test
  void nitrogenFixers_areOfFamiliesThatDo() {
    Set<String> fixing = Set.of("Fabaceae", "Elaeagnaceae", "Rhamnaceae");
    for (Plant plant : PlantCatalogue.shipped().all()) {
      boolean fixes = Growth.roles(plant).contains("nitrogen fixer");
      assertFalse(fixes && !fixing.contains(plant.family().name()), plant.name());
      assertFalse(
          !fixes && plant.family().name().equals("Fabaceae"), plant.name() + " is a legume");
    }
  }

  /** Every onion, garlic and chive harms pets, as the shelter lists say of the genus. */
  @Test
  void alliums_areNamedAsHarmingPets() {
    for (Plant plant : PlantCatalogue.shipped().all()) {
      if (plant.botanical().startsWith("Allium")) {
        assertTrue(
            Hazard.of(plant).stream().anyMatch(h -> h.to() == Hazard.Whom.PETS), plant.name());
        assertTrue(plant.caution().harmful(), plant.name());
      }
    }
  }

  /** Worked by hand: days 0 to 14 and 10 to 20 share the days 10, 11, 12, 13 and 14. */
  @Test
  void bloom_isSharedOnWholeDays() {
    Bloom early = new Bloom(0, 14, PlantCatalogue.sources().source("m"));
    Bloom late = new Bloom(10, 20, PlantCatalogue.sources().source("m"));
    assertEquals(5, early.daysWith(late));
    assertEquals(5, late.daysWith(early));
    assertEquals(0, early.daysWith(late.later(5)), "15 to 25 begins a day after 14");
  }

  @Test
  void waters_nextToEachOther_shareAValve() {
    assertTrue(WaterClass.LOW.sharesWith(WaterClass.MEDIUM));
    assertFalse(WaterClass.HIGH.sharesWith(WaterClass.LOW));
  }
}
