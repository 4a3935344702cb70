package yardloom.program.output;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Volume;

/**
 * Which volumes behind the tables are of water, and so told in gallons or litres, not in cubic
 * yards or metres: those of tables that show water, and those that a flow goes with.
 */
final class WaterVolumes {
  private static final Set<Measure> WATER = Set.of(Measure.WATER, Measure.SMALL_WATER);

  private final Map<Derived<?>, Boolean> flows = new IdentityHashMap<>();
  private final Set<Derived<?>> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<Volume> found = new ArrayList<>();

  private WaterVolumes() {}

  static List<Volume> of(List<Table> tables) {
    WaterVolumes all = new WaterVolumes();
    for (Table table : tables) {
      boolean isWater = table.columns().stream().map(Column::measure).anyMatch(WATER::contains);
      for (List<Cell> row : table.rows()) {
        for (Cell cell : row) {
          cell.why().filter(why -> isWater || all.hasFlow(why)).ifPresent(all::add);
        }
      }
    }
    return all.found;
  }

  private void add(Derived<?> why) {
    if (seen.add(why)) {
      add(why.value());
      for (Derived.Input input : why.inputs()) {
        if (input.value() instanceof Derived<?> inner) {
          add(inner);
        } else {
          add(input.value());
        }
      }
    }
  }

  private void add(Object value) {
    if (value instanceof Volume volume) {
      found.add(volume);
    }
  }

  private boolean hasFlow(Derived<?> why) {
    Boolean known = flows.get(why);
    if (known == null) {
      known =
          why.value() instanceof Flow
              || why.inputs().stream()
                  .anyMatch(
                      i ->
                          i.value() instanceof Flow
                              || i.value() instanceof Derived<?> inner && hasFlow(inner));
      flows.put(why, known);
    }
    return known;
  }
}
