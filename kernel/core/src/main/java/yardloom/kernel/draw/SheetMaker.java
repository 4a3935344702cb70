package yardloom.kernel.draw;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/**
 * Offers sheets of its own beside the site plan; none if the plan gives no reason for one. It
 * overrides one of the two methods.
 */
public interface SheetMaker {
  /** Plugin and name. */
  String id();

  /** The facts it reads; each may be absent. */
  default Set<FactKey<?>> reads() {
    return Set.of();
  }

  /** Its sheets, if it shows nothing of other makers. */
  default List<SheetPlan> make(Plan plan, Facts facts) {
    return List.of();
  }

  /**
   * Its sheets, with what other makers offer for them.
   *
   * @param offers all layers and tables that offer themselves
   */
  default List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    return make(plan, facts);
  }
}
