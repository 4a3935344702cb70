package yardloom.kernel.plan;

/** Whose turn it is where a yard is made in parts, one after the other. */
public enum PartTurn {
  /** Made in an earlier part, or there before all of them: nothing is bought or done for it. */
  DONE,
  /** Made now. */
  NOW,
  /** Made in a later part: nothing is bought or done for it yet. */
  LATER;

  /** On an element: the part of the plan in which it was said. */
  public static final AttributeKey<String> PART = new AttributeKey<>("kernel.part", String.class);

  /** The part of what its own word says is built; no part of a script can be called so. */
  static final String BUILT = " built";

  /** On an element: its turn, where it is not {@link #NOW}. */
  static final AttributeKey<PartTurn> KEY = new AttributeKey<>("kernel.turn", PartTurn.class);

  /** On the plan: the turns of its parts, where they have any. */
  static final AttributeKey<PartTurns> TURNS = new AttributeKey<>("kernel.turns", PartTurns.class);
}
