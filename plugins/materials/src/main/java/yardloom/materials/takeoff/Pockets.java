package yardloom.materials.takeoff;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Volume;

/**
 * Compost in the pockets through which perennials are planted.
 *
 * @param plants plants in perennial beds
 */
public record Pockets(Derived<Integer> plants, Derived<Volume> compost) {
  /** Compost in planting pockets, if the plan asks for it. */
  public static final FactKey<Pockets> FACT =
      FactKey.one("materials.pockets", Pockets.class).called("planting pockets");
}
