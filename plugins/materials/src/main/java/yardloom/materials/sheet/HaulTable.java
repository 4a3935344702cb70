package yardloom.materials.sheet;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.materials.model.Haul;
import yardloom.materials.work.MaterialFacts;

/** Barrow trips and ways from the heap to every surface. */
public final class HaulTable implements TableMaker {
  @Override
  public String id() {
    return "materials-barrows";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(MaterialFacts.HAULS);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    List<Haul> hauls = facts.all(MaterialFacts.HAULS);
    Table.Builder table =
        Table.titled(id(), "Barrow trips")
            .column(Column.text("to", "To"))
            .column(Column.text("material", "Material"))
            .column(Column.of("volume", "Volume", Measure.VOLUME))
            .column(Column.of("trips", "Trips", Measure.COUNT))
            .column(Column.of("way", "One way", Measure.LENGTH))
            .column(Column.of("walk", "Walk in all", Measure.LENGTH));
    int trips = 0;
    Length walk = Length.ZERO;
    for (Haul h : hauls) {
      trips += h.trips().value();
      walk = walk.plus(h.walk().value());
      table.row(
          Cell.text(h.to().title()),
          Cell.text(h.material().title()),
          Cell.of(h.volume()),
          Cell.of(h.trips()),
          Cell.of(h.oneWay()),
          Cell.of(h.walk()));
    }
    if (!hauls.isEmpty()) {
      table.total(
          Cell.text("all"), Cell.BLANK, Cell.BLANK, Cell.number(trips), Cell.BLANK, Cell.of(walk));
    }
    if (hauls.isEmpty()) {
      return table.build();
    }
    return table
        .note("Level barrows; ways run from the heap to the middle of each surface.")
        .build();
  }
}
