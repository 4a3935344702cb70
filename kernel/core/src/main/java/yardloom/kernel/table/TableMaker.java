package yardloom.kernel.table;

import java.util.List;
import java.util.Optional;
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

  /** Whether sheets have to show it, or may; the report always does. */
  default OnPaper onPaper() {
    return OnPaper.IF_ROOM;
  }

  /** Who needs it first; empty for those that the plugin names. */
  default Optional<Audience> audience() {
    return Optional.empty();
  }

  /** Charts of its columns for the report. */
  default List<Chart> charts() {
    return List.of();
  }

  /**
   * Whether it is made for each part of a plan by itself, where the plan has parts: the rows of
   * each then stand under its name.
   */
  default boolean isByPart() {
    return false;
  }

  Table make(Plan plan, Facts facts);

  /**
   * The same in the form that it takes on sheets, narrower perhaps; under the same id.
   *
   * @param made what {@link #make} gave
   */
  default Table forSheet(Plan plan, Facts facts, Table made) {
    return made;
  }
}
