package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/** How much water a kind likes beside others of a garden; what shares a valve should agree. */
public enum WaterClass {
  LOW,
  MEDIUM,
  HIGH;

  private static final Map<String, Said> SHIPPED =
      PlantCatalogue.byPlant(
          WaterClass.class,
          "water.csv",
          row ->
              new Said(
                  Choices.parse(WaterClass.class, row.text("class")),
                  PlantCatalogue.sources().cited(row, "source")));

  /** The class of a kind, and who says so. */
  public record Said(WaterClass of, Source source) {}

  /** By catalogue name; none for plants that no row is for. */
  public static Optional<Said> of(Plant plant) {
    return plant.trait(Said.class, SHIPPED);
  }

  /** Whether one watering can suit both: classes next to each other may share a valve. */
  public boolean sharesWith(WaterClass other) {
    return Math.abs(ordinal() - other.ordinal()) < 2;
  }
}
