package yardloom.water.tank;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.Volume;
import yardloom.water.pipe.formula.Water;
import yardloom.water.tank.formula.TankBehaviour.Order;

/**
 * A tank, or several that stand linked in a row, as the plan has it.
 *
 * @param at the middle of the first one
 * @param roof the roof that fills it, by name
 * @param each what one holds
 * @param count of linked tanks
 * @param width across, or diameter
 * @param depth front to back, the same as the width where it is round
 * @param height of the water when full
 * @param stand its foot above the ground
 * @param serves names of beds and trees; all where empty
 * @param otherUse what is drawn each day for something else
 * @param firstFlush depth over the roof that is led past it after a dry day
 * @param screened share that screen and filter let through
 * @param order of use and rain within a day
 * @param cost of all with stand and screen, in the plan's currency
 */
public record TankPlan(
    String name,
    Point at,
    String roof,
    Volume each,
    int count,
    Length width,
    Length depth,
    boolean isRound,
    Length height,
    Length stand,
    List<String> serves,
    Volume otherUse,
    Length firstFlush,
    double screened,
    Order order,
    Optional<Double> cost) {
  /** The tanks of the plan. */
  public static final AttributeKey<TankPlan> KEY = new AttributeKey<>("water.tank", TankPlan.class);

  /** Outlets sit a little above the foot, so that mud stays in the tank (common practice). */
  public static final Length OUTLET = Length.inches(4);

  public TankPlan {
    serves = List.copyOf(serves);
  }

  public Volume size() {
    return each.times(count);
  }

  /** What water of that depth in it presses with at the ground it stands on. */
  public Pressure pressure(Length depth) {
    return Water.pressure(stand.plus(depth));
  }

  /** What lies in all of them between two depths of water. */
  public Volume between(Length low, Length high) {
    return size().times(high.minus(low).ratioTo(height));
  }

  /** The ground that each one stands on, in a row to the right. */
  public List<Shape> feet() {
    return java.util.stream.IntStream.range(0, count).mapToObj(this::foot).toList();
  }

  private Shape foot(int i) {
    double x = at.x().metres() + i * width.metres() * 1.05;
    return isRound
        ? Shape.circle(Point.metres(x, at.y().metres()), width.times(0.5))
        : Shape.rectangle(
            Point.metres(x - width.metres() / 2, at.y().metres() - depth.metres() / 2),
            width,
            depth);
  }
}
