package yardloom.planting.fit;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.planting.catalogue.PlantCatalogue;

/** Hours of winter chill that the plants of the catalogue ask for. */
public final class ChillNeeds {
  private static final Map<String, Need> SHIPPED = read();

  private ChillNeeds() {}

  /**
   * Hours below 45 °F (7 °C) in a winter.
   *
   * @param low what the varieties that ask for least need
   * @param high what those that ask for most need; empty where the source gives a least only
   */
  public record Need(double low, OptionalDouble high, Source source) {}

  /** By catalogue name; none for plants that no source gives one for. */
  public static Optional<Need> of(String plant) {
    return Optional.ofNullable(SHIPPED.get(plant));
  }

  private static Map<String, Need> read() {
    SourceTable sources = PlantCatalogue.sources();
    Map<String, Need> needs = new TreeMap<>();
    for (DataRow row : DataTable.shipped(ChillNeeds.class, "chill.csv").rows()) {
      String plant = PlantCatalogue.shipped().plant(row.text("plant")).name();
      Need need = new Need(row.number("low_h"), row.maybe("high_h"), sources.cited(row, "source"));
      needs.put(plant, need);
    }
    return needs;
  }
}
