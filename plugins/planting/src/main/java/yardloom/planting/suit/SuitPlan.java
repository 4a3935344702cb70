package yardloom.planting.suit;

import java.util.List;
import yardloom.kernel.fact.FactKey;
import yardloom.planting.suit.rule.Candidate;
import yardloom.planting.suit.rule.Reason;
import yardloom.planting.suit.rule.Yard;

/**
 * How each plant of the plan suits its place.
 *
 * @param yard what the rules knew
 */
public record SuitPlan(Yard yard, List<Line> lines) {
  /** The plugin's own fact. */
  public static final FactKey<SuitPlan> KEY =
      FactKey.one("planting.suits", SuitPlan.class).called("how plants suit their places");

  public SuitPlan {
    lines = List.copyOf(lines);
  }

  /**
   * One plant in one place.
   *
   * @param reasons why it does not simply fit, the worst first
   */
  public record Line(Candidate plant, List<Reason> reasons) {
    public Line {
      reasons = List.copyOf(reasons);
    }
  }
}
