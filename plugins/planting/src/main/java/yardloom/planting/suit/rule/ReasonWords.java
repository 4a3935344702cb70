package yardloom.planting.suit.rule;

import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;

/** Lengths and names as reasons print them. */
public final class ReasonWords {
  private ReasonWords() {}

  /** In both unit systems, the plan's own first. */
  public static String both(Plan plan, Length length) {
    return Say.both(Measure.LENGTH, length, plan.info().units());
  }
}
