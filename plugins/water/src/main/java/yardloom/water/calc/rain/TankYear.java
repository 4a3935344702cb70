package yardloom.water.calc.rain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import yardloom.kernel.unit.Volume;
import yardloom.water.calc.rain.TankBehaviour.Order;
import yardloom.water.calc.rain.TankBehaviour.Step;

/**
 * A tank in an average year that follows another such year, so that what the tank holds on the
 * first of January does not matter.
 *
 * <p>Each month is cut into equal storms with equal use between them. Few long steps make the
 * cautious order far too low and the hopeful one too high; many short ones hide dry spells.
 *
 * <p>References: {@link TankBehaviour}; the number of storms is an assumption of whoever asks.
 *
 * @param steps January to December, storm by storm
 */
public record TankYear(List<Step> steps) {

  /**
   * Steps the storms of two like years and keeps the second.
   *
   * @param storms storms in each month, at least 1
   */
  public static TankYear of(
      Order order, Volume size, List<Volume> inflows, List<Volume> demands, int storms) {
    if (storms < 1) {
      throw new IllegalArgumentException(storms + " storms in a month");
    }
    List<Step> all =
        TankBehaviour.run(order, size, Volume.ZERO, cut(inflows, storms), cut(demands, storms));
    return new TankYear(all.subList(all.size() / 2, all.size()));
  }

  private static List<Volume> cut(List<Volume> months, int storms) {
    List<Volume> steps = new ArrayList<>();
    for (int year = 0; year < 2; year++) {
      for (Volume month : months) {
        steps.addAll(Collections.nCopies(storms, month.div(storms)));
      }
    }
    return steps;
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
