package yardloom.planting.stock;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/**
 * Plants that are ordered beyond those of the plan, against losses: a share of each kind in beds,
 * rounded up once for the kind and not in each bed. Trees and what is sown by row have none.
 */
public final class Spares {
  /** The share, as the plan says it. */
  public static final AttributeKey<Double> KEY =
      new AttributeKey<>("planting.spares", Double.class);

  private static final double SLACK = 1e-9;
  private static final Source RULE =
      Source.commonPractice("spares are rounded up over all beds of a kind");

  private final Optional<Entry<Double>> share;
  private final Map<String, Integer> counted = new TreeMap<>();

  private Spares(Optional<Entry<Double>> share) {
    this.share = share;
  }

  /** Those of a plan, with nothing counted yet. */
  public static Spares of(Plan plan) {
    return new Spares(plan.attributes().all(KEY).stream().findFirst());
  }

  /** Empty where the plan asks for none. */
  public Optional<Double> share() {
    return share.map(Entry::value);
  }

  /** What so many plants of a kind and form, in all beds, are ordered as. */
  public int order(int plants) {
    return plants + up(plants);
  }

  /**
   * What the next bed of a kind and form orders: its plants, and what the rounded spares grow by.
   * Empty where the plan asks for none.
   */
  public Optional<Derived<Integer>> next(String kindAndForm, Derived<Integer> plants) {
    if (share.isEmpty()) {
      return Optional.empty();
    }
    int before = counted.getOrDefault(kindAndForm, 0);
    int after = before + plants.value();
    counted.put(kindAndForm, after);
    return Optional.of(
        Derived.by("plants + up((before + plants) × spares) − up(before × spares)", RULE)
            .from("plants", plants)
            .from("before, in other beds", before)
            .from("spares", share.get().value(), share.get().place())
            .gives(plants.value() + up(after) - up(before)));
  }

  private int up(int plants) {
    return (int) Math.ceil(plants * share().orElse(0.0) - SLACK);
  }
}
