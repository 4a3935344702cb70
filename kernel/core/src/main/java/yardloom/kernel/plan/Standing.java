package yardloom.kernel.plan;

import yardloom.kernel.unit.Length;

/**
 * Whether an element is there before the work begins: what stands is kept and protected, what is
 * new is bought, built or planted. The one place that knows; everything else asks {@link
 * Element#standing()}.
 *
 * @param stands whether it is there already
 * @param said whether the script says so; otherwise it is taken by kind
 */
public record Standing(boolean stands, boolean said) {
  /** What a script says with {@code standing:}. */
  public static final AttributeKey<Boolean> KEY =
      new AttributeKey<>("kernel.standing", Boolean.class);

  /** Nurseries sell thicker trees hardly ever, and nobody plants them by hand. */
  public static final Length THICKEST_PLANTED = Length.inches(4);

  static Standing of(Element element) {
    if (element.turn() != PartTurn.NOW) {
      return new Standing(true, true);
    }
    return element
        .attributes()
        .get(KEY)
        .map(stands -> new Standing(stands, true))
        .orElseGet(() -> new Standing(usually(element), false));
  }

  /**
   * Without a word of the script: beds, paths and mulched ground are to be made, what is built is
   * there, a tree is there if its trunk is thicker than {@link #THICKEST_PLANTED} (common practice,
   * no source).
   */
  private static boolean usually(Element element) {
    if (element instanceof Element.Tree tree) {
      return tree.trunk().compareTo(THICKEST_PLANTED) > 0;
    }
    return !(element instanceof Element.Bed
        || element instanceof Element.Path
        || element instanceof Element.MulchedGround);
  }
}
