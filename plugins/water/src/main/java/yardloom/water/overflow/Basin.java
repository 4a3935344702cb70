package yardloom.water.overflow;

import java.util.Optional;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.water.roof.Roofs;

/**
 * A hollow at its place in the yard that takes what a roof, or its full tank, lets go.
 *
 * @param drains the roof, by name
 * @param depth of water when it is full
 * @param storm rain of a day that it is to hold
 */
public record Basin(String name, Shape shape, String drains, Length depth, Length storm) {
  /** The basins of the plan. */
  public static final AttributeKey<Basin> KEY = new AttributeKey<>("water.basin", Basin.class);

  Optional<Element.Roof> roof(Plan plan) {
    return Roofs.called(plan, drains);
  }

  /** From the nearest building; empty without one. */
  Optional<Length> fromBuilding(Plan plan) {
    return plan.all(Element.Building.class).stream()
        .map(b -> b.shape().distance(shape))
        .min(Length::compareTo);
  }
}
