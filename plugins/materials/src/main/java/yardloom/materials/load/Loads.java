package yardloom.materials.load;

import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;
import yardloom.materials.takeoff.Ordering;

/**
 * Truckloads and weight of a bulk order, each as a range.
 *
 * <p>Loads are whole: order divided by the truck's volume, rounded up, but a rest of up to a tenth
 * of a load is heaped on the others. Weight is volume times bulk density. No order gives no loads.
 *
 * <p>References: the rows of the shipped tables {@code load-size.csv} and {@code bulk-density.csv},
 * each with its source.
 */
public final class Loads {
  private Loads() {}

  /**
   * For trucks of {@code load} cubic yards and a {@code density} in pounds per cubic yard.
   *
   * @param item as the bill has it
   * @param phase when it is needed
   */
  public static BulkLoads of(
      String item, WorkPhase phase, Derived<Volume> order, Spread load, Spread density) {
    return new BulkLoads(
        item,
        phase,
        order,
        Derived.by("likely load", load.source()).gives(Volume.cubicYards(load.likely())),
        loads(order, load.high(), load),
        loads(order, load.likely(), load),
        loads(order, load.low(), load),
        weight(order, density.low(), density),
        weight(order, density.high(), density));
  }

  private static Derived<Integer> loads(Derived<Volume> order, double yd3, Spread load) {
    return Derived.by("loads = order / load − 0.1, rounded up, at least 1", load.source())
        .from("order", order)
        .from("load", Volume.cubicYards(yd3))
        .gives(Ordering.loads(order.value(), yd3));
  }

  private static Derived<Mass> weight(Derived<Volume> order, double lbYd3, Spread density) {
    return Derived.by("pounds = order in cu yd × pounds per cubic yard", density.source())
        .from("order", order)
        .from("pounds per cubic yard", lbYd3)
        .gives(Mass.pounds(order.value().cubicYards() * lbYd3));
  }
}
