package yardloom.materials.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Choices;
import yardloom.materials.calc.CarbonKept;
import yardloom.materials.calc.CompostMix;
import yardloom.materials.model.HeapPlan;
import yardloom.materials.model.SawList;
import yardloom.materials.work.MaterialFacts;

/** Tables of hard goods, cut lists and the compost heap. */
public final class GoodsTables {
  private GoodsTables() {}

  /** All of them. */
  public static List<TableMaker> all() {
    return List.of(new Goods(), new Cuts(), new Heap());
  }

  /** Lumber, edging, pavers, posts and wire. */
  private static final class Goods implements TableMaker {
    @Override
    public String id() {
      return "materials-hard-goods";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(YardFacts.BILL);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Hard goods")
              .column(Column.text("item", "Item"))
              .column(Column.text("for", "For"))
              .column(Column.text("exact", "Exact"))
              .column(Column.text("order", "Order"))
              .column(Column.text("allowance", "Allowance"));
      for (BillLine line : facts.all(YardFacts.BILL)) {
        if (line.group() == BillGroup.HARD_GOODS) {
          table.row(
              Cell.text(line.item()),
              line.element().map(e -> Cell.text(e.toString())).orElse(Cell.BLANK),
              Amounts.cell(plan, line.exact()),
              Amounts.cell(plan, line.order()),
              Cell.text(line.allowance()));
        }
      }
      return table
          .note(
              "For beds of food use untreated rot-resistant wood, or ask which treatment is safe.")
          .note("Posts stand a third of their length in the ground; have utilities marked first.")
          .build();
    }
  }

  /** How to saw the boards. */
  private static final class Cuts implements TableMaker {
    @Override
    public String id() {
      return "materials-cut-list";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.SAW_LISTS);
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
      for (SawList list : facts.all(MaterialFacts.SAW_LISTS)) {
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

  /** Prunings and weeds that stay. */
  private static final class Heap implements TableMaker {
    @Override
    public String id() {
      return "materials-compost-heap";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.HEAP);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Prunings and weeds that stay")
              .column(Column.text("what", "What"))
              .column(Column.text("amount", "Amount"))
              .column(Column.of("mass", "Mass", Measure.MASS))
              .column(Column.text("note", "Where and how"));
      Optional<HeapPlan> found = facts.find(MaterialFacts.HEAP);
      if (found.isEmpty()) {
        return table.build();
      }
      HeapPlan heap = found.get();
      heap.parts().forEach(p -> part(plan, table, p));
      heap.partner().ifPresent(p -> part(plan, table, p));
      grade(plan, table, "C:N of what there is", heap.ratio(), true);
      grade(plan, table, "C:N of the mix", heap.mixedRatio(), true);
      grade(plan, table, "Moisture of the mix, percent", heap.mixedMoisture(), false);
      line(plan, table, "Side of a bay", heap.bay(), "a cube, 3 to 5 ft each way");
      line(plan, table, "Bays for a season", heap.bays(), "and one more to turn into");
      line(plan, table, "Finished compost, at least", heap.finishedLow(), "three quarters lost");
      line(plan, table, "Finished compost, at most", heap.finishedHigh(), "half lost");
      table.row(
          Cell.text("Carbon in soil after ten years, at least"),
          Cell.BLANK,
          Cell.of(heap.carbonLow()),
          Cell.text("one season's material"));
      table.row(
          Cell.text("Carbon in soil after ten years, at most"),
          Cell.BLANK,
          Cell.of(heap.carbonHigh()),
          Cell.text("one season's material"));
      return table
          .note("Keep seeding and rooting weeds out of a cold heap; sick plants go to the town.")
          .note(
              CarbonKept.SHARE.source().cite()
                  + ". How much stays depends on climate and soil and is not known for one garden;"
                  + " the way of the material to and from the yard is not counted.")
          .build();
    }

    private static void part(Plan plan, Table.Builder table, HeapPlan.Part part) {
      table.row(
          Cell.text(part.material()),
          Amounts.cell(plan, part.volume()),
          Cell.of(part.mass()),
          Cell.text(part.where()));
    }

    private static void grade(
        Plan plan, Table.Builder table, String what, Derived<Double> value, boolean ratio) {
      CompostMix.Grade grade =
          ratio ? CompostMix.gradeRatio(value.value()) : CompostMix.gradeMoisture(value.value());
      line(plan, table, what, value, Choices.text(grade));
    }

    private static void line(
        Plan plan, Table.Builder table, String what, Derived<?> value, String note) {
      table.row(Cell.text(what), Amounts.cell(plan, value), Cell.BLANK, Cell.text(note));
    }
  }
}
