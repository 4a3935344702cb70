package yardloom.planting.traits;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * Which layer of a garden a kind takes, and how long it lives.
 *
 * @param nativeTo the region it is native to; empty where it is not North American
 */
public record Growth(Layer layer, Life life, Source source, Optional<String> nativeTo) {
  private static final Map<String, String> NATIVE =
      PlantCatalogue.byPlant(Growth.class, "natives.csv", row -> row.text("region"));
  private static final Map<String, Growth> SHIPPED =
      PlantCatalogue.byPlant(Growth.class, "habits.csv", Growth::read);
  private static final Map<String, List<String>> ROLES =
      PlantCatalogue.listsByPlant(Growth.class, "roles.csv", row -> row.text("role"));

  /** Names the roles among the traits of a plant of the user's own. */
  public interface Role {}

  /** The place it takes above or in the ground. */
  public enum Layer {
    CANOPY,
    SHRUB,
    HERB,
    COVER,
    CLIMBER,
    ROOT
  }

  /** How long it lives. */
  public enum Life {
    ANNUAL,
    PERENNIAL
  }

  /** By catalogue name; every plant has one. */
  public static Growth of(Plant plant) {
    return plant.trait(Growth.class, SHIPPED).orElseThrow();
  }

  /** What it is good for, such as {@code nitrogen fixer}, in the order of the table. */
  public static List<String> roles(Plant plant) {
    return plant.traits(Role.class, ROLES);
  }

  private static Growth read(DataRow row) {
    return new Growth(
        Choices.parse(Layer.class, row.text("habit")),
        Choices.parse(Life.class, row.text("life")),
        PlantCatalogue.sources().cited(row, "source"),
        Optional.ofNullable(NATIVE.get(PlantCatalogue.nameIn(row))));
  }
}
