package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/** Hours of winter chill that the plants of the catalogue ask for. */
public final class ChillNeeds {
  private static final Map<String, Need> SHIPPED =
      PlantCatalogue.byPlant(ChillNeeds.class, "chill.csv", ChillNeeds::need);

  private ChillNeeds() {}

  /**
   * Hours below 45 °F (7 °C) in a winter.
   *
   * @param low what the varieties that ask for least need
   * @param high what those that ask for most need; empty where the source gives a least only
   */
  public record Need(double low, OptionalDouble high, Source source) {}

  /** By catalogue name; none for plants that no source gives one for. */
  public static Optional<Need> of(Plant plant) {
    return plant.trait(Need.class, SHIPPED);
  }

  private static Need need(DataRow row) {
    return new Need(
        row.number("low_h"), row.maybe("high_h"), PlantCatalogue.sources().cited(row, "source"));
  }
}
