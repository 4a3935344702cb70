package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cold, chill and heat of a place against its plants, from the script to what is said. */
class PlantsInTheirClimateTest {
  @TempDir private Path dir;

  /** Four years of Seattle's days, as the climate plugin tests them. */
  private static final Path SEATTLE_DAYS =
      Path.of("../../plugins/climate/src/test/resources/yardloom/climate/frost/formula")
          .resolve("seattle-days.csv");

  private String said(String climate, String zone, String more, String plant) throws IOException {
    String planted =
        plant.startsWith("apple") || plant.endsWith("pear") || plant.startsWith("avocado")
            ? "tree('a', point(15.ft, 30.ft), crown: 10.ft, height: 10.ft, leaf: 'deciduous') {"
                + " species '%s' }"
            : "bed('a', rect(10.ft, 10.ft, 12.ft, 14.ft), use: 'perennial') { plant '%s' }";
    Files.writeString(
        dir.resolve("plan.groovy"),
        "plan 'Fit'\n"
            + "site 'somewhere', latitude: 47.61.deg, longitude: -122.33.deg, elevation: 60.m,"
            + " zone: 'America/Los_Angeles'\n"
            + "climate '%s'\nhardinessZone '%s'\n".formatted(climate, zone)
            + more
            + "\nlot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft,"
            + " 60.ft)])\n"
            + planted.formatted(plant)
            + "\n");
    Run run = Run.in(dir, "check", "plan.groovy");
    return run.out() + run.err();
  }

  private static void assertNothing(String said) {
    for (String rule : new String[] {"planting.hardiness", "planting.chill", "planting.heat"}) {
      assertFalse(said.contains(rule), said);
    }
    assertTrue(said.contains("planting."), said);
  }

  /** Staples of the maritime Northwest: the climate and zone of the sample, its days measured. */
  @ParameterizedTest
  @ValueSource(
      strings = {"apple (semi-dwarf)", "European pear", "red raspberry", "highbush blueberry"})
  void stapleOfTheNorthwest_inSeattle_isFitForIt(String plant) throws IOException {
    String record = Files.readString(SEATTLE_DAYS).replaceFirst(".*\n", "date,max,min\n");
    Files.writeString(dir.resolve("days.csv"), record);
    String days = "dailyWeather fileText('days.csv'), source: 'NOAA, 2012-2015'";
    assertNothing(said("seattle-wa", "9a", days, plant));
  }

  @Test
  void tenderPlant_inSeattle_isFound() throws IOException {
    String said = said("seattle-wa", "8b", "", "avocado");
    assertTrue(said.contains("avocado winters in zone 9 and warmer; this yard lies in zone 8b"));
  }

  @Test
  void raspberries_withLittleChill_areFound() throws IOException {
    String said =
        said("san-francisco-ca", "10b", "winterChill 312, source: 'map'", "red raspberry");
    assertTrue(
        said.contains(
            "red raspberry asks for 700 to 800 h of winter chill by variety; a usual winter here"
                + " has about 312 h"),
        said);
    assertFalse(said.contains("planting.hardiness"), said);
  }
}
