package yardloom.planting.harvest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.data.CsvRows;

/**
 * What the plants of the catalogue bring, and when they first do.
 *
 * <p>A plant may have several rows, one for each source; its range spans them all. Figures in
 * bushels stand as pounds, with the bushel's weight recalled. Plants whose yield the sources give
 * in heads, fruit or cuts have none.
 */
public final class PlantYields {
  private static final Map<String, Source> SOURCES = PlantCatalogue.sources();
  private static final Map<String, Yield> YIELDS = yields();
  private static final Map<String, First> FIRST = first();

  private PlantYields() {}

  /**
   * When a plant is first picked.
   *
   * @param when in words, counted from planting
   */
  public record First(String when, Source source) {}

  /** By catalogue name; none where no mass is known. */
  public static Optional<Yield> of(String plant) {
    return Optional.ofNullable(YIELDS.get(plant));
  }

  /** By catalogue name. */
  public static Optional<First> first(String plant) {
    return Optional.ofNullable(FIRST.get(plant));
  }

  private static Map<String, Yield> yields() {
    Map<String, Yield> yields = new TreeMap<>();
    for (Map<String, String> row : CsvRows.of("yields.csv")) {
      Yield one =
          new Yield(
              Mass.pounds(Double.parseDouble(row.get("low_lb"))),
              Mass.pounds(Double.parseDouble(row.get("high_lb"))),
              Choices.parse(Yield.Per.class, row.get("per")),
              List.of(cited(row)));
      yields.merge(plant(row), one, PlantYields::both);
    }
    return yields;
  }

  private static Yield both(Yield a, Yield b) {
    if (a.per() != b.per()) {
      throw new IllegalStateException("yields.csv counts one plant by " + a.per() + ", " + b.per());
    }
    List<Source> sources = new ArrayList<>(a.sources());
    sources.addAll(b.sources());
    return new Yield(a.low().min(b.low()), a.high().max(b.high()), a.per(), sources);
  }

  private static Map<String, First> first() {
    Map<String, First> first = new TreeMap<>();
    for (Map<String, String> row : CsvRows.of("first-harvest.csv")) {
      first.put(plant(row), new First(row.get("first"), cited(row)));
    }
    return first;
  }

  private static String plant(Map<String, String> row) {
    return PlantCatalogue.shipped().plant(row.get("plant")).name();
  }

  private static Source cited(Map<String, String> row) {
    Source source = SOURCES.get(row.get("source"));
    if (source == null) {
      throw new IllegalStateException(row.get("plant") + " cites \"" + row.get("source") + "\"");
    }
    return source;
  }
}
