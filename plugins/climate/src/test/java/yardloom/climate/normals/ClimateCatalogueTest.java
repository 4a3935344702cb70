package yardloom.climate.normals;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.source.Source.Standing;

class ClimateCatalogueTest {
  private static final OutsideRows ROWS =
      OutsideRows.of(ClimateCatalogueTest.class, "published-years.csv");

  @ParameterizedTest
  @CsvFileSource(resources = "published-years.csv", numLinesToSkip = 1)
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
    ROWS.check(id, expected, found, tolerance);
  }

  /** K05: means of the hourly normals 1981-2010 of Seattle (vega-datasets 3.2.1, NOAA). */
  @Test
  void seattleMeans_areThoseOfTheHourlyNormals() {
    double[] means = {5.39, 6.11, 7.74, 9.81, 12.89, 15.56, 18.27, 18.40, 15.67, 11.24, 7.32, 4.74};
    for (int m = 0; m < 12; m++) {
      double found =
          ClimateCatalogue.shipped().climate("seattle-wa").months().get(m).mean().celsius();
      assertEquals(means[m], found, 0.02, "K05, month " + (m + 1));
    }
  }

  @Test
  void recalledFigures_saySo() {
    assertEquals(
        Standing.MEMORY,
        ClimateCatalogue.shipped().climate("urbana-il").temperatureRangeSource().standing());
    assertEquals(
        Standing.READ, ClimateCatalogue.shipped().climate("urbana-il").source().standing());
    assertEquals(
        Standing.MEMORY, ClimateCatalogue.shipped().climate("seattle-wa").source().standing());
  }
}
