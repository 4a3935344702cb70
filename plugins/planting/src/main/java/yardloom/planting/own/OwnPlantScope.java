package yardloom.planting.own;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.vocab.Scope;

/** The block in which a plant of one's own is described: it fills a row as a table has it. */
public final class OwnPlantScope extends Scope {
  /** The cells that the block has filled so far, each with its place in the script. */
  static final class Said {
    private final Map<String, String> cells = new HashMap<>();
    private final Map<String, SourceRef> places = new HashMap<>();

    DataRow row(SourceRef place) {
      return new DataRow(cells, place, places);
    }
  }

  private final Said said;

  OwnPlantScope(Said said, SourceRef place) {
    super(place);
    this.said = said;
  }

  /** Fills a cell; one of which nothing is said stays empty. */
  void says(String column, Object value) {
    if (value != null) {
      said.cells.put(column, value.toString());
      said.places.put(column, place());
    }
  }

  /** Fills a cell with a quantity in the unit of the column. */
  <T> void says(String column, T value, ToDoubleFunction<T> unit) {
    says(column, value == null ? null : unit.applyAsDouble(value));
  }

  @Override
  public OwnPlantScope at(SourceRef newPlace) {
    return new OwnPlantScope(said, newPlace);
  }
}
