package yardloom.materials;

import yardloom.kernel.fact.FactKey;
import yardloom.materials.model.Surface;

/** Facts between this plugin's own calculators and tables. */
public final class MaterialFacts {
  /** The ground that receives layers, without overlaps. */
  public static final FactKey<Surface> SURFACES = FactKey.many("materials.surfaces", Surface.class);

  private MaterialFacts() {}
}
