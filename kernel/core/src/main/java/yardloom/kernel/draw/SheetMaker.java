package yardloom.kernel.draw;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** Offers sheets of its own beside the site plan; none if the plan gives no reason for one. */
public interface SheetMaker {
  /** Plugin and name. */
  String id();

  /** The facts it reads; each may be absent. */
  default Set<FactKey<?>> reads() {
    return Set.of();
  }

  List<SheetPlan> make(Plan plan, Facts facts);
}
