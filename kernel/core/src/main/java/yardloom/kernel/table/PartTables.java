package yardloom.kernel.table;

import java.util.ArrayList;
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
    List<Table> each = parts.stream().map(of).toList();
    List<Column> columns = columns(each);
    Table widest =
        each.stream()
            .reduce((a, b) -> b.columns().size() > a.columns().size() ? b : a)
            .orElseThrow();
    Table.Builder all = Table.titled(widest.id(), widest.title());
    columns.forEach(all::column);
    Set<String> notes = new LinkedHashSet<>();
    for (int i = 0; i < each.size(); i++) {
      Table its = each.get(i);
      String name = parts.get(i).name();
      for (int row = 0; row < its.rows().size(); row++) {
        if (its.isHeading(row)) {
          all.heading(name + ": " + its.rows().get(row).get(0).value().orElseThrow());
        } else {
          if (row == 0) {
            all.heading(name);
          }
          all.row(under(columns, its, its.rows().get(row)));
        }
      }
      notes.addAll(its.notes());
    }
    notes.forEach(all::note);
    return all.build();
  }

  /**
   * The columns of all parts: one part may have some that another lacks, such as cost where only
   * one has prices. Each stands behind the one that it follows in its own table.
   */
  private static List<Column> columns(List<Table> tables) {
    List<Column> columns = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    for (Table table : tables) {
      int next = 0;
      for (Column column : table.columns()) {
        int known = ids.indexOf(column.id());
        if (known < 0) {
          columns.add(next, column);
          ids.add(next++, column.id());
        } else {
          next = known + 1;
        }
      }
    }
    return columns;
  }

  private static List<Cell> under(List<Column> columns, Table table, List<Cell> row) {
    if (columns.equals(table.columns())) {
      return row;
    }
    List<String> ids = table.columns().stream().map(Column::id).toList();
    return columns.stream()
        .map(c -> ids.indexOf(c.id()))
        .map(i -> i < 0 ? Cell.BLANK : row.get(i))
        .toList();
  }
}
