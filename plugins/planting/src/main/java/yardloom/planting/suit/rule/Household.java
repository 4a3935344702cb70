package yardloom.planting.suit.rule;

import yardloom.kernel.plan.AttributeKey;

/** Who lives with the garden and may put leaves and berries into the mouth. */
public record Household(boolean children, boolean pets) {
  /** On the plan. */
  public static final AttributeKey<Household> KEY =
      new AttributeKey<>("planting.household", Household.class);
}
