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
 * @param found what there is by itself
 * @param partner what to add for a good mix, if something is missing
 * @param mixed the same with the partner
 */
public record HeapPlan(
    List<Part> parts, Mix found, Optional<Part> partner, Mix mixed, Bays bays, Season season) {
  /**
   * What a heap of it is like.
   *
   * @param ratio carbon to nitrogen
   * @param moisture percent of wet mass
   */
  public record Mix(Derived<Double> ratio, Derived<Double> moisture) {}

  /**
   * Where the mix rots.
   *
   * @param volume of the season's mix
   * @param side of a cube that holds a turn of the mix
   * @param count how many such bays hold the season
   */
  public record Bays(Derived<Volume> volume, Derived<Length> side, Derived<Integer> count) {}

  /**
   * What a season leaves, low and high.
   *
   * @param finishedLow finished compost
   * @param carbonLow carbon still in the soil after ten years
   */
  public record Season(
      Derived<Volume> finishedLow,
      Derived<Volume> finishedHigh,
      Derived<Mass> carbonLow,
      Derived<Mass> carbonHigh) {}

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
