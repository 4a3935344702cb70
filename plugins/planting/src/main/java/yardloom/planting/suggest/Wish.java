package yardloom.planting.suggest;

import java.time.Month;
import java.util.Set;
import yardloom.kernel.plan.AttributeKey;

/**
 * What is wished of a bed.
 *
 * @param kinds how many kinds
 * @param perennials the least share of them that stays for years, 0 to 1
 * @param months in which something should be picked
 * @param littleWork whether all stay for years and none runs
 * @param natives whether all are native to where the yard lies
 */
public record Wish(
    int kinds, double perennials, Set<Month> months, boolean littleWork, boolean natives) {
  /** On beds. */
  public static final AttributeKey<Wish> KEY = new AttributeKey<>("planting.wish", Wish.class);

  public Wish {
    months = Set.copyOf(months);
  }
}
