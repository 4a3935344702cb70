package yardloom.climate.normals;

import java.util.Locale;
import java.util.Map;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.unit.Temperature;

/** The climates that plans may name, for a reader. */
public final class ClimateList {
  private ClimateList() {}

  /** By name, with what tells them apart. */
  public static Catalogue climates() {
    return new Catalogue(
        "climates",
        "Monthly normals that plans may name",
        ClimateCatalogue.shipped().names().stream().sorted().map(ClimateList::row).toList());
  }

  private static Catalogue.Row row(String name) {
    ClimateNormals normals = ClimateCatalogue.shipped().climate(name);
    double rainM = normals.months().stream().mapToDouble(m -> m.rain().metres()).sum();
    return new Catalogue.Row(
        name,
        Map.of(
            "place",
            normals.place(),
            "rain",
            String.format(Locale.ROOT, "%.1f in (%.0f mm) a year", rainM / 0.0254, rainM * 1000),
            "hottest",
            normals.hottestDays().map(ClimateList::both).orElse(""),
            "coldest",
            both(
                normals.months().stream()
                    .map(m -> m.dailyMin().orElse(m.mean()))
                    .min(Temperature::compareTo)
                    .orElseThrow()),
            "source",
            normals.source().cite()));
  }

  private static String both(Temperature t) {
    return String.format(Locale.ROOT, "%.0f °F (%.0f °C)", t.fahrenheit(), t.celsius());
  }
}
