package yardloom.planting.placing;

import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** What is planted densely and thinned later. */
public final class ThinningTable implements TableMaker {
  @Override
  public String id() {
    return "thinning";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Planted densely, thinned later")
            .column(Column.text("bed", "Where"))
            .column(Column.text("plant", "Plant"))
            .column(Column.of("planted", "Planted", Measure.COUNT))
            .column(Column.of("stay", "Thinned to", Measure.COUNT))
            .column(Column.of("apart", "Then apart", Measure.DEPTH))
            .column(Column.of("season", "Before season", Measure.COUNT));
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      Thinning.of(p)
          .ifPresent(
              t ->
                  table.row(
                      Cell.text(p.bed().id().name()),
                      Cell.text(p.plant().name()),
                      Cell.of(p.count()),
                      Cell.number(Thinning.kept(p, t).size()),
                      Cell.of(t.to()),
                      Cell.number(t.season())));
    }
    return table.build();
  }
}
