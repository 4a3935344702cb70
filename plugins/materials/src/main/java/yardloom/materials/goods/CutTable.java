package yardloom.materials.goods;

import java.util.Set;
import java.util.StringJoiner;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.UnitSystem;

/** How to saw the boards. */
public final class CutTable implements TableMaker {
  @Override
  public String id() {
    return "materials-cut-list";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SawList.FACT);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Cut list")
            .column(Column.text("size", "Lumber"))
            .column(Column.of("stock", "Stock", Measure.LENGTH))
            .column(Column.of("boards", "Boards", Measure.COUNT))
            .column(Column.text("pieces", "Pieces from each board"))
            .column(Column.of("rest", "Rest", Measure.DEPTH))
            .column(Column.of("board-feet", "Board feet", Measure.RATIO));
    boolean proven = true;
    for (SawList list : facts.all(SawList.FACT)) {
      proven &= list.proven();
      for (SawList.Cut cut : list.cuts()) {
        table.row(
            Cell.text(list.size()),
            Cell.of(list.stock()),
            Cell.number(cut.boards()),
            Cell.text(pieces(cut, plan.info().units())),
            Cell.of(cut.rest()),
            Cell.BLANK);
      }
      table.row(
          Cell.text(list.size() + ", all"),
          Cell.of(list.stock()),
          Cell.of(list.boards()),
          Cell.text("kerf " + Say.fine(list.kerf(), plan.info().units()) + " between pieces"),
          Cell.BLANK,
          Cell.of(list.boardFeet()));
    }
    return table
        .note(
            proven
                ? "No list with less lumber exists. Board feet count nominal sizes."
                : "A list with less lumber may exist. Board feet count nominal sizes.")
        .build();
  }

  private static String pieces(SawList.Cut cut, UnitSystem units) {
    StringJoiner text = new StringJoiner(" + ");
    int n = 0;
    for (int i = 0; i < cut.pieces().size(); i++) {
      n++;
      boolean last =
          i + 1 == cut.pieces().size() || !cut.pieces().get(i + 1).equals(cut.pieces().get(i));
      if (last) {
        text.add(n + " × " + Say.fine(cut.pieces().get(i), units));
        n = 0;
      }
    }
    return text.toString();
  }
}
