package yardloom.water.head;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.head.formula.TapCurve;

/**
 * What the tap gives, as the plan says it.
 *
 * @param through flow through the regulator, as it was measured
 * @param still pressure with the tap closed, by a gauge or by the height of a tank's water
 * @param isTank whether that is the height of water in a tank
 */
public record Supply(Optional<Flow> through, Optional<Pressure> still, boolean isTank) {
  /** Said by {@code supply}. */
  public static final AttributeKey<Supply> KEY = new AttributeKey<>("water.supply", Supply.class);

  /** Said by {@code bucketTest}. */
  public static final AttributeKey<Bucket> BUCKET =
      new AttributeKey<>("water.bucket", Bucket.class);

  /** Share of what an open tap gives that zones may take. */
  private static final double DESIGN_SHARE = 0.75;

  /** What half-inch line carries. */
  private static final Flow HALF_INCH_LINE = Flow.gallonsPerHour(200);

  private static final Source RULE =
      Source.memory("Rule of thumb: half-inch line carries 200 gph", "drip handbooks", 0, "");
  private static final Source SHARE =
      Source.commonPractice("zones take at most 75 percent of what the open tap gives");

  /** Water that ran into a bucket from the open tap. */
  public record Bucket(Volume volume, TimeSpan time) {
    Flow flow() {
      return volume.per(time);
    }
  }

  /** How much all outlets of one zone may take together. */
  public static Derived<Flow> limit(Plan plan) {
    Optional<Entry<Supply>> supply = plan.said(KEY).filter(s -> s.value().through().isPresent());
    if (supply.isPresent()) {
      return Derived.given(
          supply.get().value().through().orElseThrow(), "supply", supply.get().place());
    }
    Optional<Entry<Bucket>> bucket = plan.said(BUCKET);
    if (bucket.isPresent()) {
      return Derived.by("share × volume / time", SHARE)
          .from("share", DESIGN_SHARE)
          .from("volume", bucket.get().value().volume(), bucket.get().place())
          .from("time", bucket.get().value().time(), bucket.get().place())
          .gives(bucket.get().value().flow().times(DESIGN_SHARE));
    }
    return Derived.by("no supply is given; half-inch line", RULE).gives(HALF_INCH_LINE);
  }

  /** The pressure at the tap while so much runs; empty where no pressure is given. */
  public static Optional<Pressure> pressure(Plan plan, Flow flow) {
    Optional<Pressure> still = plan.said(KEY).flatMap(s -> s.value().still());
    Optional<Flow> open = plan.said(BUCKET).map(b -> b.value().flow());
    return still.map(p -> open.map(o -> TapCurve.at(flow, p, o)).orElse(p));
  }

  /** Whether water comes from a tank by its height alone. */
  public static boolean isTank(Plan plan) {
    return plan.said(KEY).map(s -> s.value().isTank()).orElse(false);
  }
}
