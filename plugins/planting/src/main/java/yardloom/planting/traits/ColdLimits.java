package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * The coldest hardiness zone in which each plant of the catalogue lives through the winter.
 *
 * <p>A zone tells how cold a winter gets and nothing else: summers may be hot or cool in one zone.
 * Heat and chill have tables of their own.
 */
public final class ColdLimits {
  private static final Map<String, Limit> SHIPPED =
      PlantCatalogue.byPlant(ColdLimits.class, "zones.csv", ColdLimits::limit);

  private ColdLimits() {}

  /**
   * A whole zone; varieties differ by one or two.
   *
   * @param coldest the lowest zone number in which it winters
   */
  public record Limit(int coldest, Source source) {}

  /** The limit of a plant by its catalogue name; none for annuals and plants without a figure. */
  public static Optional<Limit> of(Plant plant) {
    return plant.trait(Limit.class, SHIPPED);
  }

  private static Limit limit(DataRow row) {
    return new Limit((int) row.number("coldest"), PlantCatalogue.sources().cited(row, "source"));
  }
}
