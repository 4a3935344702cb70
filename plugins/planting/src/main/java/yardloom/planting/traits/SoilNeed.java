package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * The soil in which a kind does best; beyond it growth is less, not nothing.
 *
 * <p>References: [1] FAO, ECOCROP, optimum pH of each species; [2] University of Idaho Extension,
 * Blueberries, 2012; others as their rows say.
 *
 * @param lowPh the most acid soil of its best range
 * @param highPh the most alkaline
 */
public record SoilNeed(
    double lowPh, double highPh, Source phSource, Drainage drainage, Source drainageSource) {
  private static final Map<String, SoilNeed> SHIPPED =
      PlantCatalogue.byPlant(SoilNeed.class, "soil.csv", SoilNeed::read);

  /** How wet it may stand. */
  public enum Drainage {
    /** Rots or dies back where water stands in winter. */
    GOOD,
    /** Bears heavy soil. */
    ANY,
    /** Wants soil that does not dry out, well drained or not. */
    MOIST,
    /** Grows in wet ground. */
    WET
  }

  /** By catalogue name; none for plants that no row is for. */
  public static Optional<SoilNeed> of(Plant plant) {
    return plant.trait(SoilNeed.class, SHIPPED);
  }

  private static SoilNeed read(DataRow row) {
    return new SoilNeed(
        row.number("ph_low"),
        row.number("ph_high"),
        PlantCatalogue.sources().cited(row, "ph_source"),
        Choices.parse(Drainage.class, row.text("drainage")),
        PlantCatalogue.sources().cited(row, "drainage_source"));
  }
}
