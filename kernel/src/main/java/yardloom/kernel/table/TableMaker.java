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

  /** The sheets on which it stands too, beside those of its own plugin. */
  default Set<SheetTopic> offeredTo() {
    return Set.of();
  }

  Table make(Plan plan, Facts facts);
}
