package yardloom.kernel.table;

import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** Makes one table from plan and facts; an empty table is left out. */
public interface TableMaker {
  /** The table's id. */
  String id();

  /** The facts it reads; each may be absent. */
  default Set<FactKey<?>> reads() {
    return Set.of();
  }

  /** Which sheets of other makers may show it; none unless it says so. */
  default Set<? extends SheetUse> uses() {
    return Set.of();
  }

  Table make(Plan plan, Facts facts);
}
