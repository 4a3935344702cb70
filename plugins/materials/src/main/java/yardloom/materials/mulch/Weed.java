package yardloom.materials.mulch;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * A weed that outlasts a plain sheet mulch, and what to do about it.
 *
 * @param advice what to do first
 * @param layers layers of cardboard over it, at least 1
 * @param extraChips chips on top of the depth that is usual
 * @param source of the advice
 * @param extraSource of layers and extra chips
 */
public record Weed(
    String name, String advice, int layers, Length extraChips, Source source, Source extraSource) {
  /** On the plan, a bed or a path, any number: tough weeds. */
  public static final AttributeKey<Weed> KEY = new AttributeKey<>("materials.weed", Weed.class);
}
