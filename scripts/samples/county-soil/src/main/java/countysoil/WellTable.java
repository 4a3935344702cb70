package countysoil;

import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** The distance of every bed to every well. */
public final class WellTable implements TableMaker {
  @Override
  public String id() {
    return "county-soil-wells";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Distance to wells")
            .column(Column.text("well", "Well"))
            .column(Column.text("bed", "Bed"))
            .column(Column.of("distance", "Distance", Measure.LENGTH))
            .column(Column.of("least", "Least", Measure.LENGTH));
    for (var entry : plan.attributes().all(CountySoilWords.Well.KEY)) {
      CountySoilWords.Well well = entry.value();
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        table.row(
            Cell.text(well.name()),
            Cell.text(bed.id().name()),
            Cell.of(Derived.given(bed.shape().distance(well.at()), "distance", bed.place())),
            Cell.of(Derived.given(well.distance(), "least distance", entry.place())));
      }
    }
    return table.build();
  }
}
