package yardloom.climate.frost;

import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Winter chill and summer warmth of the weather record. */
public final class WarmthTable implements TableMaker {
  @Override
  public String id() {
    return "chill-and-warmth";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(ColdAndWarmth.KEY);
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.SUN);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Winter chill and warmth of a usual year")
            .column(Column.of("lowest", "Lowest of a year", Measure.TEMPERATURE))
            .column(Column.text("zone", "Zone"))
            .column(Column.of("below-45", "Hours below 45 °F (7 °C)", Measure.COUNT))
            .column(Column.of("between", "Hours 32 to 45 °F (0 to 7 °C)", Measure.COUNT))
            .column(Column.of("utah", "Utah chill units", Measure.COUNT))
            .column(Column.of("gdd", "Degree days above 50 °F (10 °C)", Measure.COUNT))
            .column(Column.of("gdd-86-50", "by the 86/50 method", Measure.COUNT));
    facts
        .find(ColdAndWarmth.KEY)
        .ifPresent(
            c ->
                table
                    .row(
                        Cell.of(c.meanLowest()),
                        Cell.of(c.zone()),
                        Cell.of(c.chillHours().map(Math::rint)),
                        Cell.of(c.chillHoursAboveFreezing().map(Math::rint)),
                        Cell.of(c.utahUnits().map(Math::rint)),
                        Cell.of(c.degreeDays().map(Math::rint)),
                        Cell.of(c.modifiedDegreeDays().map(Math::rint)))
                    .note(
                        "Means over "
                            + c.years()
                            + " complete years of "
                            + c.source()
                            + ". Chill from November to February (south: May to August), hours"
                            + " drawn as cosine waves between each day's extremes (common practice,"
                            + " no source). Degree days in °F over the whole year."));
    return table.build();
  }
}
