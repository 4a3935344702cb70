package yardloom.planting.traits;

import java.util.List;
import java.util.Map;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * Which part of a kind harms whom. What is not listed is not known to be harmless.
 *
 * @param part the part that harms
 */
public record Hazard(Whom to, String part, Source source) {
  private static final Map<String, List<Hazard>> SHIPPED =
      PlantCatalogue.listsByPlant(Hazard.class, "hazards.csv", Hazard::read);

  /** Who is harmed. */
  public enum Whom {
    CHILDREN,
    PETS
  }

  /** By catalogue name, in the order of the table. */
  public static List<Hazard> of(Plant plant) {
    return plant.traits(Hazard.class, SHIPPED);
  }

  private static Hazard read(DataRow row) {
    return new Hazard(
        Choices.parse(Whom.class, row.text("to")),
        row.text("what"),
        PlantCatalogue.sources().cited(row, "source"));
  }
}
