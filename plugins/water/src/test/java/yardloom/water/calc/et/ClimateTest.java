package yardloom.water.calc.et;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.facts.ClimateNormals;
import yardloom.water.data.ClimateCatalogue;

class ClimateTest {
  @ParameterizedTest
  @CsvFileSource(resources = "climates.csv", numLinesToSkip = 1)
  void shippedClimate_sumsToThePublishedYear(
      String id, String climate, String quantity, double expected, double tolerance) {
    ClimateNormals normals = ClimateCatalogue.shipped().climate(climate);
    double found =
        quantity.startsWith("annual rain")
            ? normals.months().stream().mapToDouble(m -> m.rain().inches()).sum()
            : normals.months().stream()
                .mapToDouble(m -> m.mean().fahrenheit())
                .average()
                .orElseThrow();
    assertEquals(expected, found, tolerance, id);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "hargreaves.csv", numLinesToSkip = 1)
  void hargreaves_ofPublishedCases(
      String id,
      double maxC,
      double minC,
      double meanC,
      Double latitude,
      Integer day,
      Double raMj,
      double expected,
      double tolerance) {
    double ra =
        raMj == null
            ? SolarDay.of(Math.toRadians(latitude), day).radiationMm()
            : raMj * SolarDay.MM_PER_MJ;
    assertEquals(expected, Hargreaves.et0MmPerDay(meanC, maxC, minC, ra), tolerance, id);
  }
}
