package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.WettedGround;
import yardloom.water.line.BedHydraulics;
import yardloom.water.line.PeakWatering;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.WaterDemand;
import yardloom.water.zone.PeakNeed;

/** The dripline of each bed and how long it runs when plants are thirstiest. */
public final class IrrigationTable implements TableMaker {
  private static final String ID = "irrigation";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        DripRun.KEY,
        BedHydraulics.KEY,
        MonthlyWeather.KEY,
        YardFacts.SOIL,
        YardFacts.STANDS,
        WaterDemand.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.IF_ROOM;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    List<DripRun> runs = facts.all(DripRun.KEY);
    List<WaterDemand> demands = facts.all(WaterDemand.KEY);
    List<List<Cell>> rows = runs.stream().map(run -> row(run, facts)).toList();
    List<Cell> apart = runs.stream().map(run -> daysApart(run, demands, facts)).toList();
    boolean known = apart.stream().anyMatch(cell -> cell.value().isPresent());
    Table.Builder table = columns();
    if (known) {
      table.column(Column.of("days-apart", "Days apart at peak", Measure.DAYS));
    }
    boolean onContour = runs.stream().anyMatch(run -> run.on().contour().isPresent());
    if (onContour) {
      table.column(Column.of("falls", "Falls along the bed, rows on the contour", Measure.PERCENT));
    }
    for (int i = 0; i < rows.size(); i++) {
      List<Cell> cells = new ArrayList<>(rows.get(i));
      if (known) {
        cells.add(apart.get(i));
      }
      if (onContour) {
        cells.add(runs.get(i).on().contour().map(Cell::of).orElse(Cell.BLANK));
      }
      table.row(cells);
    }
    if (!runs.isEmpty()) {
      table.total(total(runs, facts, rows.get(0).size() + (known ? 1 : 0) + (onContour ? 1 : 0)));
      notes(table, known);
    }
    return table.build();
  }

  private static List<Cell> row(DripRun run, Facts facts) {
    BedHydraulics solved = BedHydraulics.of(run.bed(), facts);
    Optional<PeakWatering> peak = PeakWatering.of(run, solved, facts.all(WaterDemand.KEY));
    return List.of(
        Cell.text(run.bed().name()),
        Cell.of(run.on().area()),
        Cell.number(run.rows().size()),
        Cell.of(run.totals().length()),
        Cell.of(run.totals().outlets()),
        Cell.of(run.choice().emitter()),
        Cell.of(solved.outflow().flow()),
        Cell.of(solved.outflow().rate()),
        Cell.of(solved.evenness().variation()),
        facts
            .find(YardFacts.SOIL)
            .flatMap(s -> WettedGround.share(run, s))
            .map(Cell::of)
            .orElse(Cell.BLANK),
        peak.map(p -> Cell.text(Months.name(p.month()))).orElse(Cell.BLANK),
        peak.map(p -> Cell.of(p.weekly())).orElse(Cell.BLANK));
  }

  private static Cell daysApart(DripRun run, List<WaterDemand> demands, Facts facts) {
    return PeakNeed.of(run, demands)
        .flatMap(p -> WateringInterval.of(run, p.month(), facts))
        .map(Cell::of)
        .orElse(Cell.BLANK);
  }

  private static Cell[] total(List<DripRun> runs, Facts facts, int width) {
    Length length = Length.ZERO;
    Flow flow = Flow.ZERO;
    int outlets = 0;
    for (DripRun run : runs) {
      length = length.plus(run.totals().length().value());
      flow = flow.plus(BedHydraulics.of(run.bed(), facts).outflow().flow().value());
      outlets += run.totals().outlets().value();
    }
    Cell[] cells = new Cell[width];
    Arrays.fill(cells, Cell.BLANK);
    cells[0] = Cell.text("All at once");
    cells[3] = Cell.of(length);
    cells[4] = Cell.number(outlets);
    cells[6] = Cell.of(flow);
    return cells;
  }

  private static void notes(Table.Builder table, boolean daysApart) {
    table.note(
        "Flow is that of all outlets with what the tubes take, see pressure and flow of dripline."
            + " Run time: 7 days' net need in the peak month"
            + " at an efficiency of 0.81, the least that California's model ordinance asks of"
            + " drip; split it over several days, and watch the soil.");
    if (daysApart) {
      table.note(
          "Days apart: how long grown plants draw easily from the wetted soil that their roots"
              + " reach, without rain (FAO-56; depths as for days off after rain). Young plants need water more often.");
    }
  }

  private static Table.Builder columns() {
    return Table.titled(ID, "Drip irrigation by bed")
        .column(Column.text("bed", "Bed"))
        .column(Column.of("area", "Area", Measure.AREA))
        .column(Column.of("rows", "Rows", Measure.COUNT))
        .column(Column.of("length", "Dripline", Measure.LENGTH))
        .column(Column.of("outlets", "Outlets", Measure.COUNT))
        .column(Column.of("outlet-flow", "Outlet flow", Measure.SMALL_FLOW))
        .column(Column.of("flow", "Flow", Measure.FLOW))
        .column(Column.of("rate", "Applied per hour", Measure.RAIN))
        .column(Column.of("variation", "Flow variation", Measure.PERCENT))
        .column(Column.of("wetted", "Ground wetted", Measure.PERCENT))
        .column(Column.text("peak-month", "Peak month"))
        .column(Column.of("peak-hours", "Weekly run time at peak", Measure.HOURS));
  }
}
