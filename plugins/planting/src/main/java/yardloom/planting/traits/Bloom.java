package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * When a kind is in bloom, in days after the last frost of spring; negative before it.
 *
 * @param from the first day
 * @param until the last day, not before the first
 */
public record Bloom(int from, int until, Source source) {
  private static final Map<String, Bloom> SHIPPED =
      PlantCatalogue.byPlant(Bloom.class, "bloom.csv", Bloom::read);

  /** By catalogue name; none for what is picked before it blooms. */
  public static Optional<Bloom> of(Plant plant) {
    return plant.trait(Bloom.class, SHIPPED);
  }

  /** The same bloom some days later. */
  public Bloom later(int days) {
    return new Bloom(from + days, until + days, source);
  }

  /** On how many days both are in bloom; 0 if on none. */
  public int daysWith(Bloom other) {
    return Math.max(0, Math.min(until, other.until) - Math.max(from, other.from) + 1);
  }

  private static Bloom read(DataRow row) {
    return new Bloom(
        (int) row.number("from_days"),
        (int) row.number("until_days"),
        PlantCatalogue.sources().cited(row, "source"));
  }
}
