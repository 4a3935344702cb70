package yardloom.sun.spot;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.TimeSpan;

/** The sunniest free ground for what the plan looks for, by rank. */
public final class SpotTable implements TableMaker {
  private static final Source ASKED = Source.plan("bestSpot");

  @Override
  public String id() {
    return "sun-best-ground";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SunSpots.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Sunniest free ground")
            .column(Column.text("crop", "For"))
            .column(Column.of("rank", "Rank", Measure.COUNT))
            .column(Column.of("area", "Area", Measure.AREA))
            .column(Column.of("least", "Least sun on it", Measure.HOURS))
            .column(Column.of("mean", "Mean sun on it", Measure.HOURS))
            .column(Column.text("class", "Light"));
    for (SunSpots.Search s : facts.find(SunSpots.KEY).map(SunSpots::searches).orElse(List.of())) {
      for (int i = 0; i < s.found().size(); i++) {
        SunSpots.Found f = s.found().get(i);
        table.row(
            Cell.text(s.crop()),
            Cell.number(i + 1),
            Cell.of(
                Derived.by("connected free ground, blocks of 1.2 m and wider", ASKED)
                    .from("wanted", s.area(), s.place())
                    .gives(f.ground().area())),
            hours("least of its cells", f.leastHours(), s),
            hours("mean of its cells", f.meanHours(), s),
            Cell.text(f.lightClass().name()));
      }
    }
    table.note(
        "Rank by the highest hours that the darkest part of the place still has, mean day of the"
            + " season. Free: inside setbacks, not kept out, not within the clearance of a buried"
            + " line, not built, paved or bed, 1 m off trunks. Before digging have buried lines"
            + " marked.");
    return table.build();
  }

  private static Cell hours(String how, double hours, SunSpots.Search search) {
    return Cell.of(
        Derived.by("direct sun a day in the season, " + how, ASKED)
            .from("wanted", search.area(), search.place())
            .gives(TimeSpan.hours(hours)));
  }
}
