package yardloom.soil.amendment;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;

/**
 * What to spread on the beds.
 *
 * @param amount a mass or a volume
 * @param when the season and how often
 */
public record AmendmentDose(String item, Derived<?> amount, String when) {
  /** What to spread on the soil. */
  public static final FactKey<AmendmentDose> FACT =
      FactKey.many("soil.amendments", AmendmentDose.class).called("amendments");
}
