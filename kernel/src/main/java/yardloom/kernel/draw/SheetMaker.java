package yardloom.kernel.draw;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetTopic;
import yardloom.kernel.table.Table;

/** Offers sheets of its own beside the site plan; none if the plan gives no reason for one. */
public interface SheetMaker {
  /** Plugin and name. */
  String id();

  /** The facts it reads; each may be absent. */
  default Set<FactKey<?>> reads() {
    return Set.of();
  }

  /** What it is about, if it takes in tables that offer themselves for that. */
  default Optional<SheetTopic> topic() {
    return Optional.empty();
  }

  /**
   * Its sheets.
   *
   * @param offered tables of all plugins for its topic that are not empty, in the plugins' order
   */
  default List<SheetPlan> make(Plan plan, Facts facts, List<Table> offered) {
    return make(plan, facts);
  }

  List<SheetPlan> make(Plan plan, Facts facts);
}
