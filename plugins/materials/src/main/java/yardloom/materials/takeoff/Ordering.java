package yardloom.materials.takeoff;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/**
 * What to order for an exact quantity: allowance added, then rounded up to what is sold.
 *
 * <p>Bulk is sold by the half cubic yard or the half cubic metre, sheets by the piece. Nothing
 * exact orders nothing, also under a minimum load. The order is never below exact × (1 +
 * allowance).
 *
 * <p>References: common practice of bulk yards.
 */
public final class Ordering {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.commonPractice("bulk is sold by the half yard or half cubic metre");

  /** Said where no least load is asked for. */
  static final Derived<Volume> NO_MINIMUM =
      Derived.by("no minimum load", SOURCE).gives(Volume.ZERO);

  // 4.0 yards worked out as 4.000000000000001 must not become 4.5.
  private static final double EPS = 1e-9;

  /** What a truck takes more than its usual load (common practice; trucks differ by more). */
  private static final double HEAPED = 0.1;

  private Ordering() {}

  /** The least step in which bulk is sold where these units are used. */
  public static Volume step(UnitSystem units) {
    return units == UnitSystem.US ? Volume.cubicYards(0.5) : Volume.cubicMetres(0.5);
  }

  /** What to order where no least load is asked for. */
  public static Derived<Volume> bulk(
      Derived<Volume> exact, Derived<Double> allowance, UnitSystem units) {
    return bulk(exact, allowance, NO_MINIMUM, units);
  }

  public static Derived<Volume> bulk(
      Derived<Volume> exact, Derived<Double> allowance, Derived<Volume> least, UnitSystem units) {
    Volume step = step(units);
    Volume wanted = exact.value().times(1 + allowance.value());
    Volume rounded = step.times(Math.ceil(wanted.ratioTo(step) - EPS));
    Volume order = exact.value().si() == 0 ? Volume.ZERO : rounded.max(least.value()).max(wanted);
    return Derived.by(
            "order = exact × (1 + allowance), up to the next step, at least the minimum load",
            SOURCE)
        .from("exact", exact)
        .from("allowance", allowance)
        .from("step", step)
        .from("minimum load", least)
        .gives(order);
  }

  public static Derived<Integer> pieces(Derived<Integer> exact, Derived<Double> allowance) {
    return Derived.by("order = exact × (1 + allowance), rounded up", SOURCE)
        .from("exact", exact)
        .from("allowance", allowance)
        .gives((int) Math.ceil(exact.value() * (1 + allowance.value()) - EPS));
  }

  /**
   * Loads that bring {@code order} in trucks of {@code cubicYardsPerLoad}: whole ones, on which a
   * rest of up to {@link #HEAPED} of a load is heaped, since nobody sends a truck for that.
   */
  public static int loads(Volume order, double cubicYardsPerLoad) {
    double loads = order.cubicYards() / cubicYardsPerLoad;
    return loads > 0 ? (int) Math.max(1, Math.ceil(loads - HEAPED - EPS)) : 0;
  }
}
