package yardloom.soil.compost;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Choices;
import yardloom.soil.compost.formula.CarbonKept;
import yardloom.soil.compost.formula.CompostMix;

/** Prunings and weeds that stay. */
public final class HeapTable implements TableMaker {
  @Override
  public String id() {
    return "materials-compost-heap";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(HeapPlan.FACT);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Prunings and weeds that stay")
            .column(Column.text("what", "What"))
            .column(Column.text("amount", "Amount"))
            .column(Column.of("mass", "Mass", Measure.MASS))
            .column(Column.text("note", "Where and how"));
    Optional<HeapPlan> found = facts.find(HeapPlan.FACT);
    if (found.isEmpty()) {
      return table.build();
    }
    HeapPlan heap = found.get();
    heap.parts().forEach(p -> part(plan, table, p));
    heap.partner().ifPresent(p -> part(plan, table, p));
    grade(plan, table, "C:N of what there is", heap.found().ratio(), true);
    grade(plan, table, "C:N of the mix", heap.mixed().ratio(), true);
    grade(plan, table, "Moisture of the mix, percent", heap.mixed().moisture(), false);
    line(
        plan,
        table,
        "Side of a bay",
        heap.bays().side(),
        "a cube, 3 to 5 ft (0.9 to 1.5 m) each way");
    line(plan, table, "Bays for a season", heap.bays().count(), "and one more to turn into");
    line(
        plan,
        table,
        "Finished compost, at least",
        heap.season().finishedLow(),
        "three quarters lost");
    line(plan, table, "Finished compost, at most", heap.season().finishedHigh(), "half lost");
    table.row(
        Cell.text("Carbon in soil after ten years, at least"),
        Cell.BLANK,
        Cell.of(heap.season().carbonLow()),
        Cell.text("one season's material"));
    table.row(
        Cell.text("Carbon in soil after ten years, at most"),
        Cell.BLANK,
        Cell.of(heap.season().carbonHigh()),
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
