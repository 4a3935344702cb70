package yardloom.materials.takeoff;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;

/**
 * Compost in the pockets through which perennials are planted.
 *
 * @param plants new plants in perennial beds
 * @param compost for all of them
 * @param withShrubs the part for those that are planted before the cardboard, such as shrubs
 */
public record Pockets(
    Derived<Integer> plants, Derived<Volume> compost, Derived<Volume> withShrubs) {
  /** The part for what is planted through the cardboard. */
  Derived<Volume> throughCardboard() {
    return Derived.by("all − with shrubs", Source.plan("planting pockets"))
        .from("all", compost)
        .from("with shrubs", withShrubs)
        .gives(compost.value().minus(withShrubs.value()));
  }

  /** Compost in planting pockets, if the plan asks for it. */
  public static final FactKey<Pockets> FACT =
      FactKey.one("materials.pockets", Pockets.class).called("planting pockets");
}
