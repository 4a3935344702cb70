package yardloom.water.roof;

import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;

/**
 * A downspout at its place.
 *
 * @param roof that it drains, by name
 * @param section inside
 */
public record Downspout(Point at, String roof, Area section) {
  /** The downspouts of the plan. */
  public static final AttributeKey<Downspout> KEY =
      new AttributeKey<>("water.downspout", Downspout.class);

  static final Source RULE =
      Source.commonPractice("1 sq in of downspout drains 1,200 sq ft at 1 in/h, after SMACNA");

  /** All downspouts of a roof together. */
  public static Area section(Plan plan, String roof) {
    return plan.attributes().all(KEY).stream()
        .filter(e -> e.value().roof().equals(roof))
        .map(e -> e.value().section())
        .reduce(Area.ZERO, Area::plus);
  }
}
