package yardloom.water.tank.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import yardloom.kernel.unit.Volume;
import yardloom.water.tank.formula.TankBehaviour.Order;
import yardloom.water.tank.formula.TankBehaviour.Step;

/**
 * A tank in a year, or a row of years, that follows the same again, so that what the tank holds at
 * the start does not matter.
 *
 * <p>Steps are days of a measured series, or equal storms that each month is cut into. Few long
 * steps make the cautious order far too low and the hopeful one too high; many equal short ones
 * hide dry spells.
 *
 * <p>References: {@link TankBehaviour}; how months are cut is an assumption of whoever asks.
 *
 * @param steps in the order of time
 */
public record TankYear(List<Step> steps) {

  /**
   * Steps the same years twice and keeps the second time.
   *
   * @param inflows of the years, step by step
   * @param demands in the same steps
   */
  public static TankYear of(Order order, Volume size, List<Volume> inflows, List<Volume> demands) {
    List<Step> all = TankBehaviour.run(order, size, Volume.ZERO, twice(inflows), twice(demands));
    return new TankYear(all.subList(all.size() / 2, all.size()));
  }

  private static List<Volume> twice(List<Volume> steps) {
    List<Volume> all = new ArrayList<>(steps);
    all.addAll(steps);
    return all;
  }

  public Volume yield() {
    return sum(Step::yield);
  }

  public Volume spill() {
    return sum(Step::spill);
  }

  private Volume sum(Function<Step, Volume> part) {
    return steps.stream().map(part).reduce(Volume.ZERO, Volume::plus);
  }
}
