package yardloom.planting.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PlantingDay;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinned;
import yardloom.planting.placing.Thinning;

/** The schedule beside the planting plan, by key: what a nursery quotes from. */
public final class PlantSchedule implements TableMaker {
  @Override
  public String id() {
    return "plant-schedule";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY, YardFacts.PLANTING_DAYS, YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  /** One kind, over all beds. */
  private static final class Line {
    private final Plant plant;
    private int plants;
    private int standing;
    private final Set<Length> spacings = new TreeSet<>();
    private final Set<String> notes = new TreeSet<>();

    Line(Plant plant) {
      this.plant = plant;
    }

    void add(int count, boolean stands) {
      plants += stands ? 0 : count;
      standing += stands ? count : 0;
    }
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    PlantPlaces places = facts.get(PlantPlaces.KEY);
    Map<String, String> keys = PlantKeys.of(places);
    Map<String, Line> byKey = new TreeMap<>();
    for (Planting p : places.plantings()) {
      Line line = byKey.computeIfAbsent(keys.get(p.plant().name()), k -> new Line(p.plant()));
      line.add(p.at().size(), p.choice().stands());
      line.spacings.add(p.spacing());
      Thinning.of(p).ifPresent(t -> line.notes.add(thinned(p, t)));
    }
    for (Planting.Specimen s : places.specimens()) {
      Line line = byKey.computeIfAbsent(keys.get(s.plant().name()), k -> new Line(s.plant()));
      line.add(1, s.tree().stands());
      s.trained().ifPresent(t -> line.notes.add("trained as " + Choices.text(t.form())));
    }
    Table.Builder table = columns();
    Map<String, String> forms = forms(facts);
    UnitSystem units = plan.info().units();
    byKey.forEach((key, line) -> table.row(row(key, line, forms, units)));
    if (!byKey.isEmpty()) {
      table.note(
          "Counts are of plants to get; those that stand already are noted. Sizes are common"
              + " practice for a first planting: smaller plants root sooner and cost less. Add"
              + " spares as the nursery replaces none or some.");
    }
    return table.build();
  }

  private static Table.Builder columns() {
    return Table.titled("plant-schedule", "Plant schedule")
        .column(Column.text("key", "Key"))
        .column(Column.text("botanical", "Botanical name"))
        .column(Column.text("common", "Common name"))
        .column(Column.of("count", "Count", Measure.COUNT))
        .column(Column.text("stock", "Stock"))
        .column(Column.text("size", "Size"))
        .column(Column.text("spacing", "Spacing"))
        .column(Column.text("notes", "Notes"));
  }

  private static List<Cell> row(
      String key, Line line, Map<String, String> forms, UnitSystem units) {
    List<String> notes = new ArrayList<>(line.notes);
    if (line.standing > 0) {
      notes.add(line.standing + " stand already");
    }
    boolean gets = line.plants > 0;
    return List.of(
        Cell.text(key),
        Cell.text(line.plant.botanical()),
        Cell.text(line.plant.name()),
        Cell.number(line.plants),
        Cell.text(gets ? stock(line.plant, forms) : ""),
        Cell.text(gets ? size(line.plant, stock(line.plant, forms), units) : ""),
        Cell.text(String.join(", ", line.spacings.stream().map(s -> Say.depth(s, units)).toList())),
        Cell.text(String.join("; ", notes)));
  }

  private static String thinned(Planting p, Thinned t) {
    return "thinned to " + Thinning.kept(p, t).size() + " before season " + t.season();
  }

  /** As what each kind is planted, on its visit or else in its first days. */
  private static Map<String, String> forms(Facts facts) {
    Map<String, String> forms = new TreeMap<>();
    for (PlantingWindow w : facts.all(YardFacts.PLANTING_WINDOWS)) {
      forms.put(w.plant(), w.periods().get(0).how());
    }
    for (PlantingDay day : facts.all(YardFacts.PLANTING_DAYS)) {
      if (!day.how().isEmpty()) {
        forms.put(day.plant(), day.how());
      }
    }
    return forms;
  }

  private static String stock(Plant plant, Map<String, String> forms) {
    if (plant.start().isInDrills()) {
      return Choices.text(plant.start());
    }
    if (plant.season().isAnnual()) {
      return "seedlings";
    }
    return Optional.ofNullable(forms.get(plant.name())).orElse("potted");
  }

  /** Common practice; bare roots are sold by height or shoots, the rest by pot. */
  private static String size(Plant plant, String stock, UnitSystem units) {
    boolean us = units == UnitSystem.US;
    if (plant.start().isInDrills()) {
      return "by length of row";
    }
    boolean bare = stock.startsWith("bare");
    return switch (plant.form()) {
      case TREE -> bare ? (us ? "4 to 6 ft" : "1.2 to 1.8 m") : us ? "#5 pot" : "20 l pot";
      case SHRUB, VINE -> bare ? "2 or more shoots" : us ? "#1 pot" : "4 l pot";
      case ANNUAL -> us ? "cells or 2 in pots" : "cells or 5 cm pots";
      case HERB -> us ? "3 to 4 in pots" : "9 cm pots";
    };
  }
}
