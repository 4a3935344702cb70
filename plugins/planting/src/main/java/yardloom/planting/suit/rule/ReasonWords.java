package yardloom.planting.suit.rule;

import java.util.Locale;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/** Lengths and names as reasons print them. */
public final class ReasonWords {
  private ReasonWords() {}

  /** In both unit systems, the plan's own first. */
  public static String both(Plan plan, Length length) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.1f ft", length.feet()),
            String.format(Locale.ROOT, "%.2f m", length.metres()));
  }
}
