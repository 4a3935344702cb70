package yardloom.planting.placing;

import yardloom.kernel.plan.AttributeKey;

/** What planting hangs on beds and trees. */
public final class PlantingKeys {
  /** The plants of a bed, in the order in which they follow along it. */
  public static final AttributeKey<PlantChoice> PLANTS =
      new AttributeKey<>("planting.plants", PlantChoice.class);

  /** The plants of a bed whose lines say where they stand. */
  public static final AttributeKey<Placed> PLACED =
      new AttributeKey<>("planting.placed", Placed.class);

  /** The kinds of a bed that are thinned later. */
  public static final AttributeKey<Thinned> THINNED =
      new AttributeKey<>("planting.thinned", Thinned.class);

  /** The kinds of a bed that follow others on their ground. */
  public static final AttributeKey<Next> NEXT = new AttributeKey<>("planting.next", Next.class);

  /** Why the kinds of a bed follow as written, though tall ones shade low ones. */
  public static final AttributeKey<String> KEPT_ORDER =
      new AttributeKey<>("planting.kept-order", String.class);

  /** The catalogue name of a tree's species. */
  public static final AttributeKey<String> SPECIES =
      new AttributeKey<>("planting.species", String.class);

  /** As what a tree whose species is named is bought. */
  public static final AttributeKey<String> STOCK =
      new AttributeKey<>("planting.stock", String.class);

  /** Whether grass grows below a tree whose species is named. */
  public static final AttributeKey<Boolean> IN_GRASS =
      new AttributeKey<>("planting.in-grass", Boolean.class);

  private PlantingKeys() {}
}
