package yardloom.planting.traits;

import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * Whether a kind bears alone, and who helps it.
 *
 * <p>References: [1] Washington State University, Tree Fruit, pollination: crossing is essential
 * for apples, pears, most sweet cherries and most Japanese plums; others as their rows say.
 *
 * @param group kinds of one group pollinate each other
 * @param within how near a partner must stand
 */
public record Pollination(Need need, String group, Optional<Length> within, Source source) {
  private static final Map<String, Pollination> SHIPPED =
      PlantCatalogue.byPlant(Pollination.class, "pollination.csv", Pollination::read);

  /** What it takes to bear. */
  public enum Need {
    /** It is not grown for what follows the flower. */
    NONE,
    /** One plant bears. */
    SELF,
    /** One plant bears, with a partner more. */
    HELPS,
    /** Another variety or an unrelated plant. */
    PARTNER,
    /** A plant of the other sex. */
    MALE_AND_FEMALE
  }

  /** By catalogue name; every plant has one. */
  public static Pollination of(Plant plant) {
    return plant.trait(Pollination.class, SHIPPED).orElseThrow();
  }

  /** Whether a plant alone bears nothing worth picking. */
  public boolean isCross() {
    return need == Need.PARTNER || need == Need.MALE_AND_FEMALE;
  }

  private static Pollination read(DataRow row) {
    return new Pollination(
        Choices.parse(Need.class, row.text("need")),
        row.text("group"),
        row.maybe("within_ft").isPresent()
            ? Optional.of(Length.feet(row.maybe("within_ft").getAsDouble()))
            : Optional.empty(),
        PlantCatalogue.sources().cited(row, "source"));
  }
}
