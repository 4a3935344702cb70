package yardloom.kernel.plan;

import java.util.Locale;

/** The kinds of things on a plan, in the order in which tables list them. */
public enum ElementKind {
  LOT,
  BUILDING,
  STRUCTURE,
  FENCE,
  PAVING,
  TREE,
  PATH,
  BED,
  MULCHED_GROUND,
  WATER_POINT,
  ROOF,
  UTILITY,
  KEEP_OUT;

  /** The word for it in messages and tables. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
