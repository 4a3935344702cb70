package yardloom.planting.fit;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.PlantCatalogue;

/** How hot the days of the hottest month may be for the plants that a source gives it for. */
public final class HeatLimits {
  private static final Map<String, Limit> SHIPPED = read();

  private HeatLimits() {}

  /**
   * Where its heat begins to harm.
   *
   * @param day mean daily maximum of the hottest month
   */
  public record Limit(Temperature day, Source source) {}

  /** By catalogue name; none for plants that no source gives one for. */
  public static Optional<Limit> of(String plant) {
    return Optional.ofNullable(SHIPPED.get(plant));
  }

  private static Map<String, Limit> read() {
    SourceTable sources = PlantCatalogue.sources();
    Map<String, Limit> limits = new TreeMap<>();
    for (DataRow row : DataTable.shipped(HeatLimits.class, "heat.csv").rows()) {
      String plant = PlantCatalogue.shipped().plant(row.text("plant")).name();
      Temperature day = Temperature.fahrenheit(row.number("day_f"));
      limits.put(plant, new Limit(day, sources.cited(row, "source")));
    }
    return limits;
  }
}
