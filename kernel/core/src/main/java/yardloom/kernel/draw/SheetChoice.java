package yardloom.kernel.draw;

import java.util.List;
import yardloom.kernel.plan.AttributeKey;

/**
 * Which sheets a plan wants.
 *
 * @param ids as in {@link SheetPlan#id}
 */
public record SheetChoice(List<String> ids) {
  /** What the plan says; absent for the usual set. */
  public static final AttributeKey<SheetChoice> KEY =
      new AttributeKey<>("draw.sheets", SheetChoice.class);

  public SheetChoice {
    ids = List.copyOf(ids);
  }
}
