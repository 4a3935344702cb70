package yardloom.materials.mulch;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/** What the words of beds, paths and trees hang on them. */
public final class GroundKeys {
  /** On a bed or path: the depth of chips as laid. */
  public static final AttributeKey<Length> MULCH_DEPTH =
      new AttributeKey<>("materials.mulch-depth", Length.class);

  /** On a bed: the depth of compost as laid. */
  public static final AttributeKey<Length> COMPOST_DEPTH =
      new AttributeKey<>("materials.compost-depth", Length.class);

  /** On a bed or path: no cardboard here. */
  public static final AttributeKey<Boolean> NO_CARDBOARD =
      new AttributeKey<>("materials.no-cardboard", Boolean.class);

  /** On a tree that stands outside the beds: a mulched ring of this width from the trunk. */
  public static final AttributeKey<Length> TREE_RING =
      new AttributeKey<>("materials.tree-ring", Length.class);

  private GroundKeys() {}
}
