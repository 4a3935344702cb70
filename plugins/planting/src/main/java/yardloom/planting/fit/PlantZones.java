package yardloom.planting.fit;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.source.Source;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.data.CsvRows;

/** Hardiness zones in which the plants of the catalogue live through the winter. */
public final class PlantZones {
  private static final Map<String, Zones> SHIPPED = read();

  private PlantZones() {}

  /**
   * Whole zones, both included; varieties differ by one or two.
   *
   * @param coldest the lowest zone number
   */
  public record Zones(int coldest, int warmest, Source source) {}

  /** The zones of a plant by its catalogue name; none for annuals and plants without a figure. */
  public static Optional<Zones> of(String plant) {
    return Optional.ofNullable(SHIPPED.get(plant));
  }

  private static Map<String, Zones> read() {
    Map<String, Source> sources = PlantCatalogue.sources();
    Map<String, Zones> zones = new TreeMap<>();
    for (Map<String, String> row : CsvRows.of("zones.csv")) {
      String plant = PlantCatalogue.shipped().plant(row.get("plant")).name();
      Source source = sources.get(row.get("source"));
      if (source == null) {
        throw new IllegalStateException("zones.csv: " + plant + " has no source");
      }
      zones.put(
          plant,
          new Zones(
              Integer.parseInt(row.get("coldest")), Integer.parseInt(row.get("warmest")), source));
    }
    return zones;
  }
}
