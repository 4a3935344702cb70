package yardloom.site.setback;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * Marks a keep-out as the drain field of a septic system.
 *
 * @param beds how far beds of annuals keep away from it
 */
public record DrainField(Length beds) {
  public static final AttributeKey<DrainField> KEY =
      new AttributeKey<>("site.drain-field", DrainField.class);

  static final Length USUAL = Length.feet(10);
}
