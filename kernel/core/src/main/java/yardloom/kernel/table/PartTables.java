package yardloom.kernel.table;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import yardloom.kernel.fact.DeclaredReader;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Plan;

/** Tables of plans that are made in parts: each part under its name, with its own totals. */
public final class PartTables {
  private PartTables() {}

  /** What {@code maker} makes of the plan, or of each of its parts. */
  public static Table of(TableMaker maker, Plan plan, Facts facts) {
    List<PartOfPlan> parts = parts(maker, facts);
    return parts.isEmpty() ? maker.make(plan, facts) : joined(parts, p -> made(maker, p));
  }

  /** The same in the form that it takes on sheets. */
  public static Table forSheet(TableMaker maker, Plan plan, Facts facts) {
    return forSheet(maker, plan, facts, of(maker, plan, facts));
  }

  /**
   * The same for whoever has the table already.
   *
   * @param table what {@link #of} made
   */
  public static Table forSheet(TableMaker maker, Plan plan, Facts facts, Table table) {
    List<PartOfPlan> parts = parts(maker, facts);
    return parts.isEmpty()
        ? maker.forSheet(plan, facts, table)
        : joined(parts, p -> maker.forSheet(p.plan(), declared(maker, p), made(maker, p)));
  }

  private static List<PartOfPlan> parts(TableMaker maker, Facts facts) {
    return maker.isByPart() ? facts.all(PartOfPlan.FACT) : List.of();
  }

  private static Table made(TableMaker maker, PartOfPlan part) {
    return maker.make(part.plan(), declared(maker, part));
  }

  private static Facts declared(TableMaker maker, PartOfPlan part) {
    return DeclaredReader.of(part.facts(), maker.id(), maker.reads());
  }

  /** Their rows, each part's under its name; headings within a part name it too. */
  private static Table joined(List<PartOfPlan> parts, Function<PartOfPlan, Table> of) {
    Set<String> notes = new LinkedHashSet<>();
    Table.Builder all = null;
    for (PartOfPlan part : parts) {
      Table its = of.apply(part);
      if (all == null) {
        Table.Builder first = Table.titled(its.id(), its.title());
        its.columns().forEach(first::column);
        all = first;
      }
      for (int row = 0; row < its.rows().size(); row++) {
        if (its.isHeading(row)) {
          all.heading(part.name() + ": " + its.rows().get(row).get(0).value().orElseThrow());
        } else {
          if (row == 0) {
            all.heading(part.name());
          }
          all.row(its.rows().get(row));
        }
      }
      notes.addAll(its.notes());
    }
    notes.forEach(all::note);
    return all.build();
  }
}
