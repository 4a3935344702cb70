package yardloom.water.tank;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Volume;

/**
 * What tanks of growing size make of the water of one roof, or of all roofs, for what they serve.
 *
 * @param tank of the plan; empty where it has none yet
 * @param yield what comes into a tank in a mean year, after first flush and screen
 * @param need gross need of what it serves in a year
 * @param points by growing size
 * @param knee where more size begins to bring little
 * @param how rain and order, for notes
 * @param years how many were run
 */
public record TankCurve(
    Optional<TankPlan> tank,
    Volume yield,
    Volume need,
    List<Point> points,
    Point knee,
    String how,
    int years) {
  public static final FactKey<TankCurve> KEY =
      FactKey.many("water.tank-curve", TankCurve.class).called("what tanks bring");

  /** That of the tank; empty where the plan has none yet. */
  public String name() {
    return tank.map(TankPlan::name).orElse("");
  }

  /** The size of the plan among the points, if it has one. */
  public Optional<Point> own() {
    return tank.flatMap(t -> points.stream().filter(p -> p.size().equals(t.size())).findFirst());
  }

  /**
   * One size.
   *
   * @param used in a mean year
   * @param dry share of the need that is met in the driest of ten years, the worst of fewer
   * @param usual in the middle one
   * @param wet in the wettest of ten, the best of fewer
   * @param overflow in a mean year
   * @param emptyDays on which it gives less than is asked, in a mean year
   */
  public record Point(
      Volume size,
      Volume used,
      double dry,
      double usual,
      double wet,
      Volume overflow,
      double emptyDays) {}
}
