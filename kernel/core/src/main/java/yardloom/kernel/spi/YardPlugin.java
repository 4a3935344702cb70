package yardloom.kernel.spi;

import java.util.List;
import java.util.Map;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;

/**
 * The one interface that a plugin implements. Everything but {@link #info} and {@link #spiLevel}
 * has an empty default, so a plugin overrides only what it offers.
 *
 * <p>Found through {@code META-INF/services/yardloom.kernel.spi.YardPlugin}. Implementations have a
 * public constructor without arguments and keep no state.
 */
public interface YardPlugin {
  PluginInfo info();

  /** Must return {@link Spi#LEVEL}. */
  int spiLevel();

  /** The words it adds to the plan language. */
  default List<Vocabulary> vocabularies() {
    return List.of();
  }

  default List<Calculator> calculators() {
    return List.of();
  }

  default List<Check> checks() {
    return List.of();
  }

  /** Layers of the site plan. */
  default List<Painter> painters() {
    return List.of();
  }

  default List<TableMaker> tables() {
    return List.of();
  }

  /** Who needs its tables first, where a table does not say so itself. */
  default Audience audience() {
    return Audience.CONTRACTOR;
  }

  /** Sheets of its own. */
  default List<SheetMaker> sheets() {
    return List.of();
  }

  /** Rows of data that plans may name, for the reader of lists. */
  default List<Catalogue> catalogues() {
    return List.of();
  }

  /**
   * The plan while each of its parts is made, by name and in the order in which they are made; none
   * where it is made at once.
   */
  default Map<String, Plan> parts(Plan plan) {
    return Map.of();
  }

  /** Cautions that this plan's work calls for. */
  default List<Caution> cautions(Plan plan, Facts facts) {
    return List.of();
  }
}
