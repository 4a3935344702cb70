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
 * @param cost of all with stand and screen, in the plan's currency
 */
public record TankPlan(
    String name, Point at, Body body, Filling filling, Drawing drawing, Optional<Double> cost) {
  /**
   * What is set up.
   *
   * @param each what one holds
   * @param count of linked tanks
   * @param width across, or diameter
   * @param depth front to back, the same as the width where it is round
   * @param height of the water when full
   * @param stand its foot above the ground
   */
  public record Body(
      Volume each,
      int count,
      Length width,
      Length depth,
      boolean isRound,
      Length height,
      Length stand) {}

  /**
   * What runs in.
   *
   * @param roof the roof that fills it, by name
   * @param firstFlush depth over the roof that is led past it after a dry day
   * @param screened share that screen and filter let through
   */
  public record Filling(String roof, Length firstFlush, double screened) {}

  /**
   * What is taken out.
   *
   * @param serves names of beds and trees; all where empty
   * @param otherUse what is drawn each day for something else
   * @param order of use and rain within a day
   */
  public record Drawing(List<String> serves, Volume otherUse, Order order) {
    public Drawing {
      serves = List.copyOf(serves);
    }
  }

  /** The tanks of the plan. */
  public static final AttributeKey<TankPlan> KEY = new AttributeKey<>("water.tank", TankPlan.class);

  /** Outlets sit a little above the foot, so that mud stays in the tank (common practice). */
  public static final Length OUTLET = Length.inches(4);

  public Volume size() {
    return body.each().times(body.count());
  }

  /** What water of that depth in it presses with at the ground it stands on. */
  public Pressure pressure(Length depth) {
    return Water.pressure(body.stand().plus(depth));
  }

  /** What lies in all of them between two depths of water. */
  public Volume between(Length low, Length high) {
    return size().times(high.minus(low).ratioTo(body.height()));
  }

  /** The ground that each one stands on, in a row to the right. */
  public List<Shape> feet() {
    return java.util.stream.IntStream.range(0, body.count()).mapToObj(this::foot).toList();
  }

  private Shape foot(int i) {
    double x = at.x().metres() + i * body.width().metres() * 1.05;
    return body.isRound()
        ? Shape.circle(Point.metres(x, at.y().metres()), body.width().times(0.5))
        : Shape.rectangle(
            Point.metres(
                x - body.width().metres() / 2, at.y().metres() - body.depth().metres() / 2),
            body.width(),
            body.depth());
  }
}
