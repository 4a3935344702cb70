package yardloom.water.tank.formula;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.unit.Volume;

/**
 * A tank stepped through inflows and demands.
 *
 * <p>Within a step rain and use happen in an order that the step cannot know; three published
 * orders bracket it. With monthly steps they differ by a factor of two, with daily ones little:
 * reports name the order and the step. Whatever the order, start + inflows = yields + spills + end.
 *
 * <p>References: [1] D. Jenkins et al., 1978, yield after and before spillage, via A. Fewkes and D.
 * Butler, 2000 (from memory). [2] Vyas, arXiv 2404.13080, 2024, covered-tank balance (cap, then
 * draw).
 */
public final class TankBehaviour {

  /** Which comes first within a step. */
  public enum Order {
    /** Draw from what was there, then fill: the cautious one. */
    YIELD_AFTER_SPILL,
    /** Fill and draw, then spill: the hopeful one. */
    YIELD_BEFORE_SPILL,
    /** Fill to the brim, spill, then draw. */
    CAP_THEN_DRAW
  }

  /** One step: what was drawn, what ran over, what is left. */
  public record Step(Volume yield, Volume spill, Volume stored) {}

  private TankBehaviour() {}

  /**
   * Steps the tank.
   *
   * @throws IllegalArgumentException if the lists differ in length, or the tank or its start is
   *     negative or overfull
   */
  public static List<Step> run(
      Order order, Volume size, Volume start, List<Volume> inflows, List<Volume> demands) {
    if (inflows.size() != demands.size()) {
      throw new IllegalArgumentException(
          inflows.size() + " inflows, " + demands.size() + " demands");
    }
    if (start.litres() < 0 || start.compareTo(size) > 0) {
      throw new IllegalArgumentException("a tank of " + size + " cannot start with " + start);
    }
    List<Step> steps = new ArrayList<>();
    double stored = start.cubicMetres();
    for (int i = 0; i < inflows.size(); i++) {
      double inflow = inflows.get(i).cubicMetres();
      double demand = demands.get(i).cubicMetres();
      if (inflow < 0 || demand < 0) {
        throw new IllegalArgumentException("inflows and demands cannot be negative");
      }
      double yield = Math.min(demand, available(order, stored, inflow, size.cubicMetres()));
      double room =
          order == Order.YIELD_AFTER_SPILL ? size.cubicMetres() - yield : size.cubicMetres();
      double kept =
          order == Order.CAP_THEN_DRAW
              ? Math.min(stored + inflow, size.cubicMetres()) - yield
              : Math.min(stored + inflow - yield, room);
      double spill = Math.max(0, stored + inflow - yield - kept);
      steps.add(
          new Step(Volume.cubicMetres(yield), Volume.cubicMetres(spill), Volume.cubicMetres(kept)));
      stored = kept;
    }
    return List.copyOf(steps);
  }

  private static double available(Order order, double stored, double inflow, double size) {
    return switch (order) {
      case YIELD_AFTER_SPILL -> stored;
      case YIELD_BEFORE_SPILL -> stored + inflow;
      case CAP_THEN_DRAW -> Math.min(stored + inflow, size);
    };
  }
}
