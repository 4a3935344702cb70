package yardloom.planting.catalogue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import yardloom.facts.LightNeed;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;

/** The plants that plans may name. Immutable; names are compared without regard to case. */
public final class PlantCatalogue {
  /** Follows the code of a crop's source where that crop stands in for the plant. */
  private static final String STAND_IN = "S";

  /** On the plan, any number: plants of its own; a later one takes the place of an earlier. */
  public static final AttributeKey<Plant> OWN =
      new AttributeKey<>("planting.own-plant", Plant.class);

  private static final DataTable MULCH = DataTable.shipped(PlantCatalogue.class, "mulch-depth.csv");
  private static final SourceTable SOURCES = SourceTable.beside(PlantCatalogue.class);
  private static final Map<String, Crop> CROPS = CropTables.read();
  private static final PlantCatalogue SHIPPED = read();

  private final Map<String, Plant> byName;

  private PlantCatalogue(Map<String, Plant> byName) {
    this.byName = byName;
  }

  /** The catalogue that comes with the plugin. */
  public static PlantCatalogue shipped() {
    return SHIPPED;
  }

  /** The catalogue with the plants of a plan's own before it. */
  public static PlantCatalogue of(Plan plan) {
    return with(plan.attributes().all(OWN));
  }

  /** The same with the plants that a script has said so far. */
  public static PlantCatalogue of(Attributes.Builder said) {
    return with(said.all(OWN));
  }

  private static PlantCatalogue with(List<Entry<Plant>> own) {
    if (own.isEmpty()) {
      return SHIPPED;
    }
    Map<String, Plant> all = new TreeMap<>(SHIPPED.byName);
    own.forEach(e -> all.put(key(e.value().name()), e.value()));
    return new PlantCatalogue(all);
  }

  /**
   * The plant called {@code name}.
   *
   * @throws PlanException (UNKNOWN_WORD) without a place, naming the nearest known plant
   */
  public Plant plant(String name) {
    Plant found = byName.get(key(name));
    if (found == null) {
      String hint = hint(name);
      String rest = hint.isEmpty() ? " It has " + String.join(", ", names()) + "." : hint;
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD, "the catalogue has no plant '" + name + "'." + rest);
    }
    return found;
  }

  /** Kinds come first: who writes `pepper` means the sweet one rather than peppermint. */
  private String hint(String name) {
    List<String> kinds = Nearest.sharingAWord(name, names());
    if (!kinds.isEmpty() && Nearest.to(name, kinds).isEmpty()) {
      return " Did you mean "
          + kinds.stream().map(k -> "`" + k + "`").collect(Collectors.joining(" or "))
          + "?";
    }
    Optional<String> variant =
        byName.values().stream()
            .map(Plant::name)
            .filter(n -> key(n).contains(key(name)))
            .findFirst();
    return variant
        .map(n -> " Did you mean `" + n + "`?")
        .orElseGet(() -> Nearest.hint(name, names()));
  }

  private List<String> names() {
    return byName.values().stream().map(Plant::name).toList();
  }

  /** All plants by name. */
  public Collection<Plant> all() {
    return java.util.Collections.unmodifiableCollection(byName.values());
  }

  private static String key(String name) {
    return name.trim().toLowerCase(Locale.ROOT);
  }

  private static PlantCatalogue read() {
    Map<String, Plant> plants = new TreeMap<>();
    for (DataRow row : DataTable.shipped(PlantCatalogue.class, "plants.csv").rows()) {
      Plant plant = new Row(row).plant();
      if (plants.put(key(plant.name()), plant) != null) {
        throw new IllegalStateException("plants.csv lists " + plant.name() + " twice");
      }
    }
    return new PlantCatalogue(plants);
  }

  /** The sources of all tables of plants, by code. */
  public static SourceTable sources() {
    return SOURCES;
  }

  /**
   * What a table beside a class says of each plant, by catalogue name; a later row of a plant takes
   * the place of an earlier one.
   *
   * @throws PlanException (UNKNOWN_WORD) if its column {@code plant} names none of the catalogue
   */
  public static <T> Map<String, T> byPlant(
      Class<?> beside, String table, Function<DataRow, T> reader) {
    Map<String, T> found = new TreeMap<>();
    for (DataRow row : DataTable.shipped(beside, table).rows()) {
      found.put(nameIn(row), reader.apply(row));
    }
    return found;
  }

  /** The same of tables with several rows for a plant, in their order. */
  public static <T> Map<String, List<T>> listsByPlant(
      Class<?> beside, String table, Function<DataRow, T> reader) {
    Map<String, List<T>> found = new TreeMap<>();
    for (DataRow row : DataTable.shipped(beside, table).rows()) {
      found.computeIfAbsent(nameIn(row), k -> new ArrayList<>()).add(reader.apply(row));
    }
    return found;
  }

  /** The catalogue name of the plant that a row's column {@code plant} names. */
  public static String nameIn(DataRow row) {
    return SHIPPED.plant(row.text("plant")).name();
  }

  /**
   * How deep chips may lie by how a kind grows: woody, spreading from below, low, or an annual.
   *
   * @throws PlanException (UNKNOWN_WORD) for another group
   */
  public static Plant.Borne borne(String group) {
    DataRow row = MULCH.row("mulch", group);
    return new Plant.Borne(
        group, Length.inches(row.number("most_in")), SOURCES.cited(row, "source"));
  }

  /**
   * The crop of that name in the tables of what crops draw from the soil.
   *
   * @throws PlanException (UNKNOWN_WORD) for another, with all that there are
   */
  public static Crop crop(String name) {
    Crop crop = CROPS.get(name);
    if (crop == null) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "no crop is called '" + name + "'; crops are " + String.join(", ", CROPS.keySet()));
    }
    return crop;
  }

  /**
   * The group of planting times of that name, as the kinds of the catalogue have it.
   *
   * @throws PlanException (UNKNOWN_WORD) for another, with all that there are
   */
  public static String windowGroup(String group) {
    Set<String> groups =
        SHIPPED.byName.values().stream()
            .map(p -> p.growth().window())
            .collect(Collectors.toCollection(TreeSet::new));
    if (!groups.contains(group)) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "no kinds are planted as '" + group + "'; groups are " + String.join(", ", groups));
    }
    return group;
  }

  private record Row(DataRow cells) {
    Plant plant() {
      return new Plant(
          cells.text("name"),
          cells.text("botanical"),
          new Plant.Family(cells.text("family"), source("family_source")),
          growth(),
          new Plant.Size(range("in_row"), range("row"), range("spread"), range("height")),
          new Plant.Light(
              Choices.parse(LightNeed.Amount.class, cells.text("light")), source("light_source")),
          draw(),
          new Plant.Juglone(
              Optional.of(cells.text("juglone_source"))
                  .filter(c -> !c.isEmpty())
                  .map(SOURCES::source),
              cells.text("makes_juglone").equals("yes")),
          new Plant.Caution(
              cells.text("harm").equals("yes"), cells.text("caution"), source("caution_source")),
          borne(cells.text("mulch")),
          Optional.empty());
    }

    private Plant.Growth growth() {
      return new Plant.Growth(
          Choices.parse(Plant.Form.class, cells.text("form")),
          Choices.parse(Plant.Season.class, cells.text("season")),
          Choices.parse(Plant.Start.class, cells.text("start")),
          cells.text("window"));
    }

    private Plant.Draw draw() {
      boolean standsIn = cells.text("crop_stands_in").equals("yes");
      Crop crop = crop();
      return new Plant.Draw(
          crop, standsIn, SOURCES.source(standsIn ? crop.source() + STAND_IN : crop.source()));
    }

    private Crop crop() {
      Crop crop = CROPS.get(cells.text("crop"));
      if (crop == null) {
        throw new IllegalStateException(
            cells.text("name") + " names the crop \"" + cells.text("crop") + "\"");
      }
      return crop;
    }

    private SizeRange range(String column) {
      return new SizeRange(
          Length.inches(number(column + "_low_in")),
          Length.inches(number(column + "_high_in")),
          source(column + "_source"));
    }

    private double number(String column) {
      return cells.number(column);
    }

    private Source source(String column) {
      return SOURCES.cited(cells, column);
    }
  }
}
