package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/** How hot the days of the hottest month may be for the plants that a source gives it for. */
public final class HeatLimits {
  private static final Map<String, Limit> SHIPPED =
      PlantCatalogue.byPlant(HeatLimits.class, "heat.csv", HeatLimits::limit);

  private HeatLimits() {}

  /**
   * Where its heat begins to harm.
   *
   * @param day mean daily maximum of the hottest month
   */
  public record Limit(Temperature day, Source source) {}

  /** By catalogue name; none for plants that no source gives one for. */
  public static Optional<Limit> of(Plant plant) {
    return plant.trait(Limit.class, SHIPPED);
  }

  private static Limit limit(DataRow row) {
    Temperature day = Temperature.fahrenheit(row.number("day_f"));
    return new Limit(day, PlantCatalogue.sources().cited(row, "source"));
  }
}
