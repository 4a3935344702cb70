package yardloom.planting.placing;

import yardloom.kernel.plan.AttributeKey;

/** What planting hangs on beds and trees. */
public final class PlantingKeys {
  /** The plants of a bed, in the order in which they follow along it. */
  public static final AttributeKey<PlantChoice> PLANTS =
      new AttributeKey<>("planting.plants", PlantChoice.class);

  /** The catalogue name of a tree's species. */
  public static final AttributeKey<String> SPECIES =
      new AttributeKey<>("planting.species", String.class);

  /** Whether grass grows below a tree whose species is named. */
  public static final AttributeKey<Boolean> IN_GRASS =
      new AttributeKey<>("planting.in-grass", Boolean.class);

  private PlantingKeys() {}
}
