package yardloom.facts.mulch;

import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;

/**
 * Truckloads and weight of a bulk order, each as a range.
 *
 * @param item as the bill has it
 * @param phase when it is needed
 * @param each what a truck of the likely size holds
 * @param fewest loads if the largest trucks come
 * @param most loads if the smallest come
 * @param lightest dry
 * @param heaviest wet
 */
public record BulkLoads(
    String item,
    WorkPhase phase,
    Derived<Volume> order,
    Derived<Volume> each,
    Derived<Integer> fewest,
    Derived<Integer> likely,
    Derived<Integer> most,
    Derived<Mass> lightest,
    Derived<Mass> heaviest) {
  /** Nobody sends a truck for less (common practice). */
  public static final Volume LEAST = Volume.cubicYards(1);
}
