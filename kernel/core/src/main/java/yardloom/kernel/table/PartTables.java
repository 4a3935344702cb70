package yardloom.kernel.table;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.DeclaredReader;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Plan;

/** Tables of plans that are made in parts: each part under its name, with its own totals. */
public final class PartTables {
  private PartTables() {}

  /** What {@code maker} makes of the plan, or of each of its parts. */
  public static Table of(TableMaker maker, Plan plan, Facts facts) {
    List<PartOfPlan> parts = maker.isByPart() ? facts.all(PartOfPlan.FACT) : List.of();
    return parts.isEmpty() ? maker.make(plan, facts) : of(maker, parts);
  }

  private static Table of(TableMaker maker, List<PartOfPlan> parts) {
    Table.Builder all = null;
    Set<String> notes = new LinkedHashSet<>();
    for (PartOfPlan part : parts) {
      Table its =
          maker.make(part.plan(), DeclaredReader.of(part.facts(), maker.id(), maker.reads()));
      if (all == null) {
        Table.Builder first = Table.titled(its.id(), its.title());
        its.columns().forEach(first::column);
        all = first;
      }
      if (!its.isEmpty()) {
        all.heading(part.name());
        for (List<Cell> row : its.rows()) {
          all.row(row);
        }
        notes.addAll(its.notes());
      }
    }
    notes.forEach(all::note);
    return all.build();
  }
}
