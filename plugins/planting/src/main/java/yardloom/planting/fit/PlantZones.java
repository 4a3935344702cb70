package yardloom.planting.fit;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.planting.catalogue.PlantCatalogue;

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
    SourceTable sources = PlantCatalogue.sources();
    Map<String, Zones> zones = new TreeMap<>();
    for (DataRow row : DataTable.shipped(PlantZones.class, "zones.csv").rows()) {
      String plant = PlantCatalogue.shipped().plant(row.text("plant")).name();
      Source source = sources.cited(row, "source");
      zones.put(plant, new Zones((int) row.number("coldest"), (int) row.number("warmest"), source));
    }
    return zones;
  }
}
