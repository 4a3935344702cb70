package yardloom.planting.catalogue;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.data.CsvRows;

/** The plants that plans may name. Immutable; names are compared without regard to case. */
public final class PlantCatalogue {
  private static final String FAO = "F56";
  private static final String STAND_IN = "F56S";
  private static final PlantCatalogue SHIPPED = read();

  private final Map<String, Plant> byName;

  private PlantCatalogue(Map<String, Plant> byName) {
    this.byName = byName;
  }

  /** The catalogue that comes with the plugin. */
  public static PlantCatalogue shipped() {
    return SHIPPED;
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

  private String hint(String name) {
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
    Map<String, Source> sources = sources();
    Map<String, Crop> crops = CropTables.read();
    Map<String, Plant> plants = new TreeMap<>();
    for (Map<String, String> row : CsvRows.of("plants.csv")) {
      Plant plant = new Row(row, sources, crops).plant();
      if (plants.put(key(plant.name()), plant) != null) {
        throw new IllegalStateException("plants.csv lists " + plant.name() + " twice");
      }
    }
    return new PlantCatalogue(plants);
  }

  /** The sources of all tables, by code. */
  public static Map<String, Source> sources() {
    Map<String, Source> sources = new TreeMap<>();
    for (Map<String, String> row : CsvRows.of("sources.csv")) {
      sources.put(
          row.get("code"),
          new Source(
              row.get("title"),
              row.get("publisher"),
              Integer.parseInt(row.get("year")),
              row.get("locator"),
              Standing.valueOf(row.get("standing").toUpperCase(Locale.ROOT))));
    }
    return sources;
  }

  private record Row(
      Map<String, String> cells, Map<String, Source> sources, Map<String, Crop> crops) {
    Plant plant() {
      boolean standsIn = cells.get("crop_stands_in").equals("yes");
      return new Plant(
          cells.get("name"),
          cells.get("botanical"),
          cells.get("family"),
          source("family_source"),
          Choices.parse(Plant.Form.class, cells.get("form")),
          Choices.parse(Plant.Season.class, cells.get("season")),
          Choices.parse(Plant.Start.class, cells.get("start")),
          range("in_row"),
          range("row"),
          range("spread"),
          range("height"),
          Choices.parse(Plant.Light.class, cells.get("light")),
          source("light_source"),
          crop(),
          standsIn,
          cited(standsIn ? STAND_IN : FAO),
          Optional.of(cells.get("juglone_source")).filter(c -> !c.isEmpty()).map(this::cited),
          cells.get("makes_juglone").equals("yes"),
          cells.get("harm").equals("yes"),
          cells.get("caution"),
          source("caution_source"));
    }

    private Crop crop() {
      Crop crop = crops.get(cells.get("crop"));
      if (crop == null) {
        throw new IllegalStateException(
            cells.get("name") + " names the crop \"" + cells.get("crop") + "\"");
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
      return Double.parseDouble(cells.get(column));
    }

    private Source source(String column) {
      return cited(cells.get(column));
    }

    private Source cited(String code) {
      Source source = sources.get(code);
      if (source == null) {
        throw new IllegalStateException(cells.get("name") + " cites \"" + code + "\"");
      }
      return source;
    }
  }
}
