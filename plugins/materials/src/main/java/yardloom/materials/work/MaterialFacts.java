package yardloom.materials.work;

import yardloom.kernel.fact.FactKey;
import yardloom.materials.model.Haul;
import yardloom.materials.model.Surface;
import yardloom.materials.model.TipPile;

/** Facts between this plugin's own calculators and tables. */
public final class MaterialFacts {
  /** The ground that receives layers, without overlaps. */
  public static final FactKey<Surface> SURFACES = FactKey.many("materials.surfaces", Surface.class);

  /** Heaps on the tip spots of the plan. */
  public static final FactKey<TipPile> PILES = FactKey.many("materials.piles", TipPile.class);

  /** Barrow trips from the heaps. */
  public static final FactKey<Haul> HAULS = FactKey.many("materials.hauls", Haul.class);

  private MaterialFacts() {}
}
