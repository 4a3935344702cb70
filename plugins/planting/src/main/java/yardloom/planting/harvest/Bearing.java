package yardloom.planting.harvest;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * How a kind comes into bearing: nothing before its first year, then equal steps up to the year of
 * its full harvest.
 *
 * <p>References: first and full years as the rows say; the equal steps are common practice.
 *
 * @param first year with a harvest, 1 the year of planting
 * @param full first year with a full harvest, not before the first
 */
public record Bearing(int first, int full, Source source) {
  private static final Map<String, Bearing> SHIPPED =
      PlantCatalogue.byPlant(Bearing.class, "bearing.csv", Bearing::read);

  public Bearing {
    if (first < 1 || full < first) {
      throw new IllegalArgumentException("bearing from year " + first + " to " + full);
    }
  }

  /** By catalogue name; none for what is not picked. */
  public static Optional<Bearing> of(Plant plant) {
    return plant.trait(Bearing.class, SHIPPED);
  }

  /** The share of a full harvest in a year after planting, 0 to 1. */
  public double share(int year) {
    if (year < first) {
      return 0;
    }
    return Math.min(1, (year - first + 1) / (double) (full - first + 1));
  }

  private static Bearing read(DataRow row) {
    return new Bearing(
        (int) row.number("first_year"),
        (int) row.number("full_year"),
        PlantCatalogue.sources().cited(row, "source"));
  }
}
