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
import yardloom.water.tank.TankPlan;

/**
 * What the tap gives, as the plan says it.
 *
 * @param through flow through the regulator, as it was measured
 * @param still pressure with the tap closed, by a gauge
 * @param tank the name of the tank whose water runs by its height alone, instead of a tap
 */
public record Supply(Optional<Flow> through, Optional<Pressure> still, Optional<String> tank) {
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
      Source.memory(
          "Rule of thumb: a line of 0.5 in (13 mm) carries 200 gph (757 L/h)",
          "drip handbooks",
          0,
          "");
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
    if (bucket.isPresent() && !isTank(plan)) {
      return Derived.by("share × volume / time", SHARE)
          .from("share", DESIGN_SHARE)
          .from("volume", bucket.get().value().volume(), bucket.get().place())
          .from("time", bucket.get().value().time(), bucket.get().place())
          .gives(bucket.get().value().flow().times(DESIGN_SHARE));
    }
    return Derived.by("no supply is given; half-inch line", RULE).gives(HALF_INCH_LINE);
  }

  /**
   * The pressure at the tap while so much runs, or that of a tank half full over the ground it
   * stands on; empty where neither is given.
   */
  public static Optional<Pressure> pressure(Plan plan, Flow flow) {
    Optional<TankPlan> tank = tank(plan);
    if (tank.isPresent()) {
      return tank.map(t -> t.pressure(t.body().height().times(0.5)));
    }
    Optional<Pressure> still = plan.said(KEY).flatMap(s -> s.value().still());
    Optional<Flow> open = plan.said(BUCKET).map(b -> b.value().flow());
    return still.map(p -> open.map(o -> TapCurve.at(flow, p, o)).orElse(p));
  }

  /** The most that ever stands there: a closed tap, a full tank. */
  public static Optional<Pressure> most(Plan plan) {
    return tank(plan).map(t -> t.pressure(t.body().height())).or(() -> pressure(plan, Flow.ZERO));
  }

  /** The tank of the plan from which water comes by its height alone. */
  public static Optional<TankPlan> tank(Plan plan) {
    return plan.said(KEY)
        .flatMap(s -> s.value().tank())
        .flatMap(
            name ->
                plan.attributes().all(TankPlan.KEY).stream()
                    .map(Entry::value)
                    .filter(t -> t.name().equals(name))
                    .findFirst());
  }

  /** Whether water comes from a tank by its height alone. */
  public static boolean isTank(Plan plan) {
    return tank(plan).isPresent();
  }

  /**
   * Whether the height of water in a tank alone says what flows, and the limit of a zone is no more
   * than a rule for the line.
   */
  public static boolean isByHeight(Plan plan) {
    return isTank(plan) && plan.said(KEY).flatMap(s -> s.value().through()).isEmpty();
  }

  /** What runs from the open tap into a bucket; empty where nobody has measured it. */
  public static Optional<Derived<Flow>> open(Plan plan) {
    return plan.said(BUCKET)
        .map(b -> Derived.given(b.value().flow(), "bucket test of the open tap", b.place()));
  }
}
