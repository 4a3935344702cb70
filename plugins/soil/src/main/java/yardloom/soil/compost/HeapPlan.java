package yardloom.soil.compost;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;

/**
 * How a season's prunings and weeds are kept in the yard.
 *
 * @param ratio carbon to nitrogen of what there is
 * @param moisture percent of wet mass
 * @param partner what to add for a good mix, if something is missing
 * @param mixedRatio carbon to nitrogen with the partner
 * @param bay side of a cube that holds a turn of the mix
 * @param bays how many such bays hold the season
 * @param finished finished compost, low and high
 * @param carbonKept carbon still in the soil after ten years, low and high
 */
public record HeapPlan(
    List<Part> parts,
    Derived<Double> ratio,
    Derived<Double> moisture,
    Optional<Part> partner,
    Derived<Double> mixedRatio,
    Derived<Double> mixedMoisture,
    Derived<Volume> mixVolume,
    Derived<Length> bay,
    Derived<Integer> bays,
    Derived<Volume> finishedLow,
    Derived<Volume> finishedHigh,
    Derived<Mass> carbonLow,
    Derived<Mass> carbonHigh) {
  /** What becomes of prunings and weeds. */
  public static final FactKey<HeapPlan> FACT =
      FactKey.one("soil.heap", HeapPlan.class).called("compost heap");

  public HeapPlan {
    parts = List.copyOf(parts);
  }

  /**
   * One material of the mix.
   *
   * @param where where it goes
   */
  public record Part(String material, Derived<Volume> volume, Derived<Mass> mass, String where) {}
}
