package yardloom.planting.list;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinned;
import yardloom.planting.placing.Thinning;
import yardloom.planting.stock.Spares;
import yardloom.planting.stock.StockForm;
import yardloom.planting.stock.StockPlan;
import yardloom.planting.suit.rule.Variety;
import yardloom.planting.turn.TurnPlan;

/** The schedule beside the planting plan, by key: what a nursery quotes from. */
public final class PlantSchedule implements TableMaker {
  @Override
  public String id() {
    return "plant-schedule";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY, StockPlan.KEY, TurnPlan.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  /** One kind as bought in one form, over all beds. */
  private static final class Line {
    private final Plant plant;
    private final Optional<StockForm> stock;
    private int plants;
    private int inBeds;
    private int standing;
    private final Set<Length> spacings = new TreeSet<>();
    private final Set<String> notes = new TreeSet<>();
    private final Map<String, Integer> varieties = new TreeMap<>();

    Line(Plant plant, Optional<StockForm> stock) {
      this.plant = plant;
      this.stock = stock;
    }

    void inBed(int count, boolean stands, Optional<Variety> variety) {
      inBeds += stands ? 0 : count;
      add(count, stands, variety);
    }

    /** What the nursery is asked for: spares of what stands in beds, unless it is sown. */
    int order(Spares spares) {
      boolean isSown = stock.filter(StockForm::isInDrills).isPresent();
      return isSown ? plants : plants - inBeds + spares.order(inBeds);
    }

    /** Plants of several varieties at once are shared out among them by the nursery. */
    void add(int count, boolean stands, Optional<Variety> variety) {
      if (stands) {
        standing += count;
        return;
      }
      plants += count;
      variety.ifPresent(v -> varieties.merge(String.join(" and ", v.names()), count, Integer::sum));
    }
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    PlantPlaces places = facts.get(PlantPlaces.KEY);
    TurnPlan turns = facts.get(TurnPlan.KEY);
    Map<String, String> keys = PlantKeys.of(places);
    StockPlan stock = facts.get(StockPlan.KEY);
    UnitSystem units = plan.info().units();
    Map<String, Map<String, Line>> byKey = new TreeMap<>();
    for (Planting p : places.plantings()) {
      Optional<StockForm> form =
          Optional.of(stock.of(p)).filter(f -> !p.choice().stands() && !p.at().isEmpty());
      Line line = line(byKey, keys.get(p.plant().name()), p.plant(), form, units);
      line.inBed(p.at().size(), p.choice().stands(), Variety.of(p.bed(), p.plant().name()));
      line.spacings.add(p.spacing());
      if (p.at().isEmpty()) {
        // Else a nursery reads a count of 0 as a slip, and the planter looks for the plants.
        line.notes.add("no room in " + p.bed().id().name() + ": none to get for it");
      }
      Thinning.of(p).ifPresent(t -> line.notes.add(thinned(p, t)));
      p.follows()
          .ifPresent(
              f ->
                  line.notes.add(
                      p.at().size()
                          + " after "
                          + f.before().plant().name()
                          + turns
                              .of(p)
                              .map(t -> ", " + TableFormat.day(MonthDay.from(t.planted())))
                              .orElse("")));
    }
    for (Planting.Specimen s : places.specimens()) {
      Optional<StockForm> form = Optional.of(stock.of(s)).filter(f -> !s.tree().stands());
      Line line = line(byKey, keys.get(s.plant().name()), s.plant(), form, units);
      line.add(1, s.tree().stands(), Variety.of(s.tree(), s.plant().name()));
      s.trained().ifPresent(t -> line.notes.add("trained as " + Choices.text(t.form())));
    }
    Spares spares = Spares.of(plan);
    Table.Builder table = columns(spares);
    byKey.forEach(
        (key, lines) -> lines.values().forEach(line -> table.row(row(key, line, units, spares))));
    if (!byKey.isEmpty()) {
      table.note(
          "Counts are of plants to get; those that stand already are noted. Forms that the plan"
              + " does not say are usual for a first planting: smaller plants root sooner and cost"
              + " less. "
              + (spares.share().isEmpty()
                  ? "Add spares as the nursery replaces none or some."
                  : "Orders have the spares of the plan; those are not planted."));
    }
    return table.build();
  }

  private static Table.Builder columns(Spares spares) {
    Table.Builder table =
        Table.titled("plant-schedule", "Plant schedule")
            .column(Column.text("key", "Key"))
            .column(Column.text("botanical", "Botanical name"))
            .column(Column.text("common", "Common name"))
            .column(Column.of("count", "Count", Measure.COUNT));
    if (spares.share().isPresent()) {
      table.column(Column.of("order", "Order", Measure.COUNT));
    }
    return table
        .column(Column.text("stock", "Stock"))
        .column(Column.text("size", "Size"))
        .column(Column.text("spacing", "Spacing"))
        .column(Column.text("notes", "Notes"));
  }

  private static Line line(
      Map<String, Map<String, Line>> byKey,
      String key,
      Plant plant,
      Optional<StockForm> stock,
      UnitSystem units) {
    return byKey
        .computeIfAbsent(key, k -> new TreeMap<>())
        .computeIfAbsent(stock.map(f -> f.name(units)).orElse(""), name -> new Line(plant, stock));
  }

  private static List<Cell> row(String key, Line line, UnitSystem units, Spares spares) {
    List<String> notes = new ArrayList<>();
    line.varieties.forEach((name, count) -> notes.add(count + " " + name));
    notes.addAll(line.notes);
    if (line.standing > 0) {
      notes.add(line.standing + " stand already");
    }
    line.stock.filter(f -> f.holds() > 1).ifPresent(f -> notes.add("sold by " + f.holds()));
    List<Cell> cells =
        new ArrayList<>(
            List.of(
                Cell.text(key),
                Cell.text(line.plant.botanical()),
                Cell.text(line.plant.name()),
                Cell.number(line.plants)));
    if (spares.share().isPresent()) {
      cells.add(Cell.number(line.order(spares)));
    }
    cells.addAll(
        List.of(
            Cell.text(line.stock.map(StockForm::kind).orElse("")),
            Cell.text(line.stock.map(f -> size(f, units)).orElse("")),
            Cell.text(
                String.join(", ", line.spacings.stream().map(s -> Say.depth(s, units)).toList())),
            Cell.text(String.join("; ", notes))));
    return cells;
  }

  private static String thinned(Planting p, Thinned t) {
    return "thinned to " + Thinning.kept(p, t).size() + " before season " + t.season();
  }

  private static String size(StockForm stock, UnitSystem units) {
    return stock.isInDrills() ? "by length of row" : stock.size(units);
  }
}
