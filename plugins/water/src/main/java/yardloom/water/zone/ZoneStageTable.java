package yardloom.water.zone;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.need.DriplineDay;

/** Which zones begin or grow with which stage, and what is to be capped until later. */
public final class ZoneStageTable implements TableMaker {
  @Override
  public String id() {
    return "zones-by-stage";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Zone.KEY, YardFacts.PHASE_DAYS);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Zones by stage")
            .column(Column.text("stage", "Stage"))
            .column(Column.text("zone", "Zone"))
            .column(Column.text("what", "What happens"))
            .column(Column.text("beds", "Beds joined"))
            .column(Column.text("already", "Beds on it before"))
            .column(Column.text("later", "Capped until later"))
            .column(Column.text("from", "Water from"));
    for (PartOfPlan stage : facts.all(PartOfPlan.FACT)) {
      Optional<LocalDate> runs = DriplineDay.runs(stage.facts());
      for (Zone zone : facts.all(Zone.KEY)) {
        String now = names(stage.plan(), zone, PartTurn.NOW);
        if (!now.isEmpty()) {
          String before = names(stage.plan(), zone, PartTurn.DONE);
          table.row(
              Cell.text(stage.name()),
              Cell.text("zone " + zone.number()),
              Cell.text(before.isEmpty() ? "begins" : "grows"),
              Cell.text(now),
              Cell.text(before),
              Cell.text(names(stage.plan(), zone, PartTurn.LATER)),
              runs.map(Cell::of).orElse(Cell.BLANK));
        }
      }
    }
    return table
        .note(
            "The timetable is that of the whole yard. Its minutes nearly hold from the first stage on, since"
                + " each outlet gives the same at the same pressure; flow and pressure loss are"
                + " less until all beds of a zone are joined. Test each zone again when it grows.")
        .build();
  }

  private static String names(Plan plan, Zone zone, PartTurn turn) {
    List<String> names =
        zone.beds().stream().filter(bed -> turnOf(plan, bed) == turn).map(ElementId::name).toList();
    return names.isEmpty() ? "" : NameRuns.text(names);
  }

  private static PartTurn turnOf(Plan plan, ElementId bed) {
    return plan.element(bed).map(Element::turn).orElse(PartTurn.NOW);
  }
}
