package yardloom.water.calc.rain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import yardloom.kernel.unit.Volume;
import yardloom.water.calc.rain.TankBehaviour.Order;
import yardloom.water.calc.rain.TankBehaviour.Step;

/**
 * A tank in an average year that follows another such year, so that what the tank holds on the
 * first of January does not matter.
 *
 * <p>References: {@link TankBehaviour}.
 *
 * @param steps January to December
 */
public record TankYear(List<Step> steps) {

  /** Steps the months of two like years and keeps the second. */
  public static TankYear of(Order order, Volume size, List<Volume> inflows, List<Volume> demands) {
    int months = inflows.size();
    List<Volume> twoInflows = new ArrayList<>(inflows);
    twoInflows.addAll(inflows);
    List<Volume> twoDemands = new ArrayList<>(demands);
    twoDemands.addAll(demands);
    List<Step> all = TankBehaviour.run(order, size, Volume.ZERO, twoInflows, twoDemands);
    return new TankYear(all.subList(months, 2 * months));
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
