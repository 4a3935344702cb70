package yardloom.water.soilwater;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.soilwater.formula.RootZone;
import yardloom.water.timetable.formula.SoilWater;

/** How dry the soil under each plant gets through the days of a measured series. */
public final class SoilWaterTable implements TableMaker {
  private static final String ID = "soil-water";
  private static final DataRow MULCH =
      DataTable.shipped(SoilWaterTable.class, "mulch-effect.csv")
          .row("cover", "organic mulch over all the ground");

  private static final Source BALANCE =
      Source.computed(
          "Crop evapotranspiration, Irrigation and Drainage Paper 56",
          "FAO (Allen, Pereira, Raes, Smith)",
          1998,
          "equations 82 to 88");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.STANDS,
        YardFacts.SOIL,
        YardFacts.DAILY_RAIN,
        YardFacts.DAILY_ET,
        MonthlyWeather.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table = columns();
    Optional<SoilDays> days = SoilDays.of(facts);
    if (days.isEmpty()) {
      return table.build();
    }
    List<Stand> stands = facts.all(YardFacts.STANDS);
    stands.forEach(stand -> table.row(row(stand, days.get())));
    if (!stands.isEmpty()) {
      notes(table, days.get());
      RootDepths.note(plan, stands).ifPresent(table::note);
    }
    return table.build();
  }

  private static Table.Builder columns() {
    return Table.titled(ID, "Soil water day by day")
        .column(Column.text("in", "Bed or tree"))
        .column(Column.text("plant", "Plant"))
        .column(Column.of("roots", "Roots, grown", Measure.DEPTH))
        .column(Column.of("held", "Water they reach", Measure.RAIN))
        .column(Column.of("easy", "Drawn easily", Measure.RAIN))
        .column(Column.of("use", "Use in a year, watered", Measure.RAIN))
        .column(Column.of("given", "Watering in a year, net", Measure.RAIN))
        .column(Column.of("waterings", "Waterings", Measure.COUNT))
        .column(Column.of("below", "Drains below the roots", Measure.RAIN))
        .column(Column.of("short", "Days short of water if not watered", Measure.COUNT))
        .column(Column.of("in-a-row", "Of them in a row", Measure.COUNT))
        .column(Column.text("first", "First of them"));
  }

  private static Cell[] row(Stand stand, SoilDays days) {
    RootZone.Sum watered = days.run(stand, true);
    RootZone.Sum alone = days.run(stand, false);
    double years = days.rain().years();
    Derived<Length> held =
        Derived.by("available share × root depth", BALANCE)
            .from("available share", days.soil().available())
            .from("root depth", days.rootDepth(stand), stand.place())
            .gives(SoilWater.total(days.soil().available().value(), 0, days.rootDepth(stand)));
    double easyShare = RootDepths.of(stand).easyShare();
    return new Cell[] {
      Cell.text(stand.in().name()),
      Cell.text(stand.plant()),
      Cell.of(days.rootDepth(stand)),
      Cell.of(held),
      Cell.of(
          Derived.by("water held × easy share", BALANCE)
              .from("water held", held)
              .from("easy share", easyShare)
              .gives(SoilWater.ready(held.value(), easyShare))),
      Cell.of(why(days, stand, "watered").gives(Length.millimetres(watered.useMm() / years))),
      Cell.of(
          why(days, stand, "watered").gives(Length.millimetres(watered.irrigationMm() / years))),
      Cell.number((int) Math.round(watered.waterings() / years)),
      Cell.of(
          why(days, stand, "watered").gives(Length.millimetres(watered.percolationMm() / years))),
      Cell.number((int) Math.round(alone.shortDays() / years)),
      Cell.number(alone.longestShort()),
      alone.firstShort() < 0
          ? Cell.text("")
          : Cell.of(days.rain().days().get(alone.firstShort()).date())
    };
  }

  private static Derived.Builder why(SoilDays days, Stand stand, String how) {
    return Derived.by("steps of the root zone, day by day, " + how, BALANCE)
        .from("daily rain", days.rain().station())
        .from("days with measured reference ET, share", days.measured())
        .from("area of " + stand.plant(), stand.placed().area(), stand.place());
  }

  private static void notes(Table.Builder table, SoilDays days) {
    table.note(
        String.format(
            Locale.ROOT,
            "Rain of %s, %s to %s; reference ET %s. Watered whenever the easily drawn water is used"
                + " up, then filled to field capacity, as a careful hand would: a drip timer gives"
                + " less and more often. Roots of annuals deepen with their growth. No run-off from"
                + " mulched level ground; rain under a fifth of a day's ET does not count"
                + " (FAO-56).",
            days.rain().station(),
            TableFormat.date(days.rain().days().get(0).date()),
            TableFormat.date(days.rain().days().get(days.rain().days().size() - 1).date()),
            days.measured() >= 1
                ? "of the same days"
                : days.measured() > 0
                    ? "of the same days where known, else the mean of the month"
                    : "as the mean of the month"));
    table.note(
        String.format(
            Locale.ROOT,
            "Mulch that covers the ground spares about %.0f %% of what evaporates from the soil,"
                + " that is %.3f of reference ET under grown plants and far more while they are"
                + " small; not taken off here (%s).",
            MULCH.number("evaporation_spared") * 100,
            MULCH.number("evaporation_spared") * MULCH.number("evaporation_kc"),
            MULCH.source().cite()));
  }
}
