package yardloom.planting.harvest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * What the plants of the catalogue bring, and when they first do.
 *
 * <p>A plant may have several rows, one for each source; its range spans them all. Figures in
 * bushels stand as pounds, with the bushel's weight recalled. Plants whose yield the sources give
 * in heads, fruit or cuts have none.
 */
public final class PlantYields {
  private static final SourceTable SOURCES = PlantCatalogue.sources();
  private static final Map<String, Yield> YIELDS = yields();
  private static final Map<String, First> FIRST =
      PlantCatalogue.byPlant(PlantYields.class, "first-harvest.csv", PlantYields::firstIn);

  private PlantYields() {}

  /**
   * When a plant is first picked.
   *
   * @param when in words, counted from planting
   */
  public record First(String when, Source source) {}

  /** By catalogue name; none where no mass is known. */
  public static Optional<Yield> of(Plant plant) {
    return plant.trait(Yield.class, YIELDS);
  }

  /** By catalogue name. */
  public static Optional<First> first(Plant plant) {
    return plant.trait(First.class, FIRST);
  }

  private static Map<String, Yield> yields() {
    Map<String, Yield> yields = new TreeMap<>();
    for (DataRow row : DataTable.shipped(PlantYields.class, "yields.csv").rows()) {
      Yield one =
          new Yield(
              Mass.pounds(row.number("low_lb")),
              Mass.pounds(row.number("high_lb")),
              Choices.parse(Yield.Per.class, row.text("per")),
              List.of(SOURCES.cited(row, "source")));
      yields.merge(PlantCatalogue.nameIn(row), one, PlantYields::both);
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

  private static First firstIn(DataRow row) {
    return new First(row.text("first"), SOURCES.cited(row, "source"));
  }
}
