package yardloom.kernel.draw;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;

/** Draws one layer of the site plan. */
public interface Painter {
  Layer layer();

  /** Whether the site plan shows the layer unless told otherwise. */
  default boolean shownByDefault() {
    return true;
  }

  /**
   * Whether the layer is part of the yard by which anybody finds their way: what stands and lies
   * there. Sheets of one subject show these layers under their own.
   */
  default boolean partOfYard() {
    return false;
  }

  /** The facts it reads; each may be absent. */
  default Set<FactKey<?>> reads() {
    return Set.of();
  }

  /** Which sheets of other makers may show it; none unless it says so. */
  default Set<? extends SheetUse> uses() {
    return Set.of();
  }

  List<Mark> paint(Plan plan, Facts facts);

  /** What the legend says about the marks of this plan; empty if nothing was drawn. */
  default List<LegendEntry> legend(Plan plan, Facts facts) {
    return List.of();
  }
}
