package yardloom.planting.list;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/** How many of each plant are to be got; not what stands already. */
public final class PlantList implements TableMaker {
  private static final Source SUM = Source.commonPractice("sum over beds and new trees");

  @Override
  public String id() {
    return "plant-list";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    PlantPlaces layout = facts.get(PlantPlaces.KEY);
    Map<String, Plant> kinds = layout.toPlant();
    Map<String, Count> counts = new TreeMap<>();
    kinds.keySet().forEach(name -> counts.put(name, new Count()));
    for (Planting p : layout.plantings()) {
      if (!p.choice().stands()) {
        counts.get(p.plant().name()).add(p.bed().id().name(), p.at().size(), p.place());
      }
    }
    for (Planting.Specimen s : layout.specimens()) {
      if (!s.tree().stands()) {
        counts.get(s.plant().name()).add(s.tree().id().toString(), 1, s.place());
      }
    }
    Table.Builder table =
        Table.titled(id(), "Plants to get")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("botanical", "Botanical name"))
            .column(Column.text("family", "Family"))
            .column(Column.of("count", "Count", Measure.COUNT));
    kinds.forEach(
        (name, plant) ->
            table.row(
                Cell.text(name + drills(plant)),
                Cell.text(plant.botanical()),
                Cell.text(family(plant)),
                Cell.of(counts.get(name).total())));
    if (!kinds.isEmpty()) {
      if (kinds.values().stream().anyMatch(p -> p.growth().start().isInDrills())) {
        table.note("Seed and sets: as many plants stand once thinned; get them by length of row.");
      }
      table.note("New trees are counted; what stands already is not bought.");
    }
    return table.build();
  }

  private static String drills(Plant plant) {
    return plant.growth().start().isInDrills() ? ", " + Choices.text(plant.growth().start()) : "";
  }

  private static String family(Plant plant) {
    boolean recalled = plant.family().source().standing() == Standing.MEMORY;
    return plant.family().name() + (recalled ? " *" : "");
  }

  /** Of one kind, place by place. */
  private static final class Count {
    private final Derived.Builder why = Derived.by("sum over beds and new trees", SUM);
    private int sum;

    void add(String in, int pieces, SourceRef place) {
      sum += pieces;
      why.from(in, pieces, place);
    }

    Derived<Integer> total() {
      return why.gives(sum);
    }
  }
}
