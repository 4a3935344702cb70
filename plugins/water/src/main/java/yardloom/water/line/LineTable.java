package yardloom.water.line;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.drip.DripRun;

/** The runs of pipe of every zone: size, length, flow, speed, pressure at the end. */
public final class LineTable implements TableMaker {
  @Override
  public String id() {
    return "lines";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(ZoneLine.KEY, Trenches.KEY, DripRun.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Pipe from the head assembly to the beds")
            .column(Column.of("zone", "Zone", Measure.COUNT))
            .column(Column.of("run", "Run", Measure.COUNT))
            .column(Column.text("after", "After run"))
            .column(Column.text("feeds", "Feeds"))
            .column(Column.text("size", "Size"))
            .column(Column.of("bore", "Bore", Measure.DEPTH))
            .column(Column.of("carries", "Carries at most", Measure.FLOW))
            .column(Column.of("length", "Length", Measure.LENGTH))
            .column(Column.of("paved", "In sleeves", Measure.LENGTH))
            .column(Column.of("flow", "Flow", Measure.FLOW))
            .column(Column.of("speed", "Speed a second", Measure.LENGTH))
            .column(Column.of("end", "Pressure at the end", Measure.PRESSURE));
    boolean any = false;
    boolean fromMemory = false;
    for (ZoneLine zone : facts.all(ZoneLine.KEY)) {
      for (int r = 0; r < zone.runs().size(); r++) {
        row(table, zone, r, facts);
        fromMemory |= zone.runs().get(r).size().source().standing() == Source.Standing.MEMORY;
        any = true;
      }
    }
    if (any) {
      Trenches trenches = facts.get(Trenches.KEY);
      table.note(
          "Run 1 starts behind the zone's valve; zones share trenches. Widths: the narrowest that"
              + " keep water below 5 ft (1.5 m) a second, widened until outlets of a zone differ by"
              + " at most 10 percent; where rows alone differ by more than 9, until pipes add at most 1 percent"
              + " (common practice). Trenches in all: see the bill; "
              + trenches.trenches().size()
              + " pieces between forks."
              + (fromMemory
                  ? " Bores from memory: compare them with the tube you buy."
                  : " Bores as the plan gives them."));
    }
    return table.build();
  }

  private static void row(Table.Builder table, ZoneLine zone, int r, Facts facts) {
    ZoneLine.PipeRun run = zone.runs().get(r);
    table.row(
        Cell.number(zone.number()),
        Cell.number(r + 1),
        run.from() < 0 ? Cell.text("valve") : Cell.text(Integer.toString(run.from() + 1)),
        Cell.text(NameRuns.text(names(run.to(), facts))),
        Cell.text(run.size().name()),
        Cell.of(run.size().bore()),
        Cell.of(run.size().most()),
        Cell.of(run.way().length()),
        run.paved().metres() > 0 ? Cell.of(run.paved()) : Cell.BLANK,
        Cell.of(run.flow()),
        Cell.of(run.speed()),
        Cell.of(run.end()));
  }

  private static List<String> names(List<String> feeds, Facts facts) {
    Set<String> names = new LinkedHashSet<>();
    for (DripRun run : facts.all(DripRun.KEY)) {
      ElementId id = run.bed();
      if (run.feeds().keySet().stream().anyMatch(feeds::contains)) {
        names.add(id.name());
      }
    }
    return List.copyOf(names);
  }
}
