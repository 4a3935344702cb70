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
    Site site = site(town, north, east);
    for (String name : new String[] {"New Jersey tea", "salal", "prickly pear", "yarrow", "sage"}) {
      Plant plant = PlantCatalogue.shipped().plant(name);
      assertEquals(wild.contains(name), NativeRegion.isHere(plant, Optional.of(site)), name);
    }
  }

  /**
   * Towns on either side of each bound of a region, of which one plant stands for all, by their
   * degrees (recalled): the east ends between Jamestown and Minot, North Dakota, the west begins at
   * Bismarck, between them.
   */
  @ParameterizedTest(name = "{0} in {1}: {4}")
  @CsvSource({
    "New Jersey tea, Jamestown, 46.91, -98.71, true",
    "New Jersey tea, Minot, 48.23, -101.30, false",
    "New Jersey tea, Homestead, 25.47, -80.48, true",
    "New Jersey tea, Key West, 24.56, -81.78, false",
    "New Jersey tea, Moosonee, 51.27, -80.65, true",
    "New Jersey tea, Churchill, 58.77, -94.17, false",
    "New Jersey tea, Saint John's, 47.56, -52.71, true",
    "muscadine grape, Waco, 31.55, -97.15, true",
    "muscadine grape, Abilene, 32.45, -99.73, false",
    "muscadine grape, Richmond, 37.54, -77.44, true",
    "muscadine grape, Baltimore, 39.29, -76.61, false",
    "muscadine grape, Buxton, 35.27, -75.54, true",
    "muscadine grape, Nassau, 25.05, -77.35, true",
    "muscadine grape, Bermuda, 32.30, -64.78, false",
    "anise hyssop, Denver, 39.74, -104.99, true",
    "anise hyssop, Grand Junction, 39.07, -108.55, false",
    "anise hyssop, Indianapolis, 39.77, -86.16, true",
    "anise hyssop, Louisville, 38.25, -85.76, false",
    "anise hyssop, San Antonio, 29.42, -98.49, true",
    "anise hyssop, Brownsville, 25.90, -97.50, false",
    "anise hyssop, Regina, 50.45, -104.62, true",
    "anise hyssop, Prince Albert, 53.20, -105.75, false",
    "golden currant, Bismarck, 46.81, -100.78, true",
    "golden currant, Jamestown, 46.91, -98.71, false",
    "golden currant, Hermosillo, 29.07, -110.96, true",
    "golden currant, Honolulu, 21.31, -157.86, false",
    "golden currant, Fairbanks, 64.84, -147.72, true",
    "golden currant, Utqiagvik, 71.29, -156.79, false",
    "golden currant, Nome, 64.50, -165.41, true",
    "prickly pear, Midland, 31.99, -102.08, true",
    "prickly pear, Abilene, 32.45, -99.73, false",
    "prickly pear, Bakersfield, 35.37, -119.02, true",
    "prickly pear, Salinas, 36.68, -121.66, false",
    "prickly pear, Saint George, 37.10, -113.58, true",
    "prickly pear, Moab, 38.57, -109.55, false",
    "prickly pear, Torreon, 25.54, -103.41, true",
    "prickly pear, Mazatlan, 23.25, -106.41, false",
    "salal, Santa Cruz, 36.97, -122.03, true",
    "salal, Reno, 39.53, -119.81, false",
    "salal, Wenatchee, 47.42, -120.31, false",
    "salal, San Luis Obispo, 35.28, -120.66, true",
    "salal, San Diego, 32.72, -117.16, false",
    "salal, Ketchikan, 55.34, -131.65, true",
    "salal, Fairbanks, 64.84, -147.72, false",
    "bearberry, Minneapolis, 44.98, -93.27, true",
    "bearberry, Chicago, 41.88, -87.63, false",
    "bearberry, Utqiagvik, 71.29, -156.79, true",
    "bearberry, Alert, 82.50, -62.35, false",
    "bearberry, Saint John's, 47.56, -52.71, true",
    "bearberry, Nuuk, 64.18, -51.72, false",
    "yarrow, Miami, 25.76, -80.19, true",
    "yarrow, Havana, 23.11, -82.37, false",
    "yarrow, Utqiagvik, 71.29, -156.79, true",
    "yarrow, Alert, 82.50, -62.35, false",
    "yarrow, Nome, 64.50, -165.41, true",
    "yarrow, Nuuk, 64.18, -51.72, false",
  })
  void bounds_lieBetweenTheseTowns(
      String name, String town, double north, double east, boolean here) {
    Plant plant = PlantCatalogue.shipped().plant(name);
    assertEquals(here, NativeRegion.isHere(plant, Optional.of(site(town, north, east))), town);
  }

  private static Site site(String town, double north, double east) {
    return new Site(
        town, Angle.degrees(north), Angle.degrees(east), Length.ZERO, ZoneId.of("UTC"), Angle.ZERO);
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
    Site sea = site("sea", 0, 0);
    assertTrue(
        PlantCatalogue.shipped().all().stream()
            .noneMatch(p -> NativeRegion.isHere(p, Optional.of(sea))));
  }
}
