package yardloom.planting.traits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.plan.Site;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

class NativeRegionTest {
  /**
   * Towns and what grows wild about them, recalled from the ranges of the species: New Jersey tea
   * of the eastern prairies and woods, salal of the Pacific coast, prickly pear of the southwestern
   * deserts, yarrow of the whole continent, sage of none of it.
   */
  @ParameterizedTest(name = "{0}: {3}")
  @CsvSource({
    "Urbana, 40.1, -88.2, 'New Jersey tea, yarrow'",
    "Seattle, 47.6, -122.3, 'salal, yarrow'",
    "Phoenix, 33.4, -112.1, 'prickly pear, yarrow'",
    "Lyon, 45.8, 4.8, ''",
  })
  void isHere_whereItGrowsWild(String town, double north, double east, String wild) {
    Site site =
        new Site(
            town,
            Angle.degrees(north),
            Angle.degrees(east),
            Length.ZERO,
            ZoneId.of("UTC"),
            Angle.ZERO);
    for (String name : new String[] {"New Jersey tea", "salal", "prickly pear", "yarrow", "sage"}) {
      Plant plant = PlantCatalogue.shipped().plant(name);
      assertEquals(wild.contains(name), NativeRegion.isHere(plant, Optional.of(site)), name);
    }
  }

  @ParameterizedTest
  @CsvSource({"yarrow, true", "salal, true", "sage, false"})
  void withoutASite_allOfTheContinent(String name, boolean here) {
    Plant plant = PlantCatalogue.shipped().plant(name);
    assertEquals(here, NativeRegion.isHere(plant, Optional.empty()));
  }

  /** Each region of the shipped table has its bounds: no yard is in all of them. */
  @org.junit.jupiter.api.Test
  void everyShippedRegion_isBounded() {
    Site sea =
        new Site(
            "sea", Angle.degrees(0), Angle.degrees(0), Length.ZERO, ZoneId.of("UTC"), Angle.ZERO);
    assertTrue(
        PlantCatalogue.shipped().all().stream()
            .noneMatch(p -> NativeRegion.isHere(p, Optional.of(sea))));
  }
}
