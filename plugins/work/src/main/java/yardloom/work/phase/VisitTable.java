package yardloom.work.phase;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.TimeSpan;
import yardloom.work.labour.KindHours;
import yardloom.work.labour.WorkSettings;

/** On which days the crew plants what. */
public final class VisitTable implements TableMaker {
  @Override
  public String id() {
    return "planting-visits";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.NURSERY);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantingVisit.FACT, KindHours.FACT);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Visits to plant")
            .column(Column.of("visit", "Visit", Measure.COUNT))
            .column(Column.text("date", "Date"))
            .column(Column.of("hours", "Hours", Measure.HOURS))
            .column(Column.of("days", "Days of the crew", Measure.COUNT))
            .column(Column.text("kinds", "What, and as what"));
    List<PlantingVisit> visits = facts.all(PlantingVisit.FACT);
    Map<String, Double> byKind = KindHours.byKind(facts.all(KindHours.FACT));
    CrewDays days = new CrewDays(WorkSettings.of(plan));
    for (PlantingVisit visit : visits) {
      double hours = visit.hours(byKind);
      table.row(
          Cell.number(visit.number()),
          Cell.of(visit.date()),
          Cell.of(TimeSpan.hours(hours)),
          Cell.number(days.whole(hours)),
          Cell.text(
              visit.kinds().entrySet().stream()
                  .map(k -> k.getKey() + " (" + k.getValue() + ")")
                  .collect(Collectors.joining(", "))));
    }
    if (!visits.isEmpty()) {
      table.note(
          "As few visits as plant every kind within its days, see When to plant; second sowings are"
              + " the household's. Hours are likely ones of one person for planting and watering in;"
              + " the phases have those of their first visit, the others come on top of them.");
    }
    return table.build();
  }
}
