package yardloom.facts.mulch;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Length;

/**
 * Dripline in one bed or round one tree, a layer of its stack.
 *
 * @param in the bed, or the tree that it lies round
 * @param length of all its tubes together
 * @param rows where its tubes lie, each from the end at which it is fed; without the solid tube
 *     that joins them
 * @param outlets distance of the outlets along a row, the first half of it from the start
 */
public record Dripline(ElementId in, Derived<Length> length, List<Line> rows, Length outlets) {
  public Dripline {
    rows = List.copyOf(rows);
  }
}
