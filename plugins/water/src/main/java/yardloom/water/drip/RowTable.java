package yardloom.water.drip;

import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Where whoever lays dripline puts its rows, and how they lie to the plants. */
public final class RowTable implements TableMaker {
  @Override
  public String id() {
    return "drip-rows";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY, YardFacts.SOIL, YardFacts.STANDS);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.IF_ROOM;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "How the rows of dripline lie")
            .column(Column.text("bed", "Bed or tree"))
            .column(Column.of("rows", "Rows", Measure.COUNT))
            .column(Column.of("first", "First from edge or trunk", Measure.DEPTH))
            .column(Column.of("apart", "Then every", Measure.DEPTH))
            .column(Column.of("outlets", "Outlets every", Measure.DEPTH))
            .column(Column.of("reach", "Wets to each side", Measure.DEPTH))
            .column(Column.text("plant", "Plant farthest from a row"))
            .column(Column.of("farthest", "So far", Measure.DEPTH));
    List<DripRun> runs = facts.all(DripRun.KEY);
    for (DripRun run : runs) {
      RowPlaces places = RowPlaces.of(plan, run, facts);
      table.row(
          Cell.text(run.bed().name()),
          Cell.number(run.rows().size()),
          Cell.of(places.first()),
          places.apart().map(Cell::of).orElse(Cell.BLANK),
          Cell.of(run.choice().spacing()),
          Cell.of(places.reach()),
          places.farthest().map(f -> Cell.text(f.plant())).orElse(Cell.BLANK),
          places.farthest().map(f -> Cell.of(f.from())).orElse(Cell.BLANK));
    }
    if (!runs.isEmpty()) {
      table.note(
          "Rows lie by the bed, not by the plants: along its long side, or along its outline where"
              + " that is round. Set plants beside a row, not on it. A root ball farther from a row than"
              + " an outlet wets is watered by hand until its roots have grown there.");
    }
    return table.build();
  }
}
