package yardloom.planting.care;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
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
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/** The list of losses: how many of each kind were planted, when to count, when to replant. */
public final class LossesTable implements TableMaker {
  private static final int ROOTED_DAYS = 45;

  @Override
  public String id() {
    return "losses";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CareAct.KEY, PlantPlaces.KEY, YardFacts.PLANTING_WINDOWS);
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
        Table.titled(id(), "List of losses")
            .column(Column.text("plant", "Plant"))
            .column(Column.of("planted", "Planted", Measure.COUNT))
            .column(Column.text("count-on", "Count on"))
            .column(Column.text("lost", "Lost"))
            .column(Column.text("again", "Replant from"));
    Map<String, Integer> counts = counts(facts.get(PlantPlaces.KEY));
    Map<String, PlantingWindow> windows = new TreeMap<>();
    facts.all(YardFacts.PLANTING_WINDOWS).forEach(w -> windows.put(w.plant(), w));
    Map<String, LocalDate> days = new TreeMap<>();
    for (CareAct act : facts.all(CareAct.KEY)) {
      if (act.task().act() == Act.PLANT) {
        act.plants().forEach(p -> days.put(p, act.when().from()));
      }
    }
    days.forEach(
        (plant, day) -> {
          LocalDate count = day.plusDays(ROOTED_DAYS);
          table.row(
              Cell.text(plant),
              Cell.number(counts.getOrDefault(plant, 0)),
              Cell.of(count),
              Cell.BLANK,
              windows.containsKey(plant) ? Cell.of(windows.get(plant).next(count)) : Cell.BLANK);
        });
    if (!days.isEmpty()) {
      table.note(
          "Ask the nursery for how long it replaces what did not take, and keep the bills. Sown"
              + " rows are sown again where they stay thin.");
    }
    return table.build();
  }

  /** How many of each kind are to be planted; of what is sown in drills, none one by one. */
  private static Map<String, Integer> counts(PlantPlaces places) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Planting p : places.plantings()) {
      if (!p.choice().stands()) {
        counts.merge(p.plant().name(), p.at().size(), Integer::sum);
      }
    }
    for (Planting.Specimen s : places.specimens()) {
      if (!s.tree().stands()) {
        counts.merge(s.plant().name(), 1, Integer::sum);
      }
    }
    return counts;
  }
}
