package yardloom.water.need;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Water that drips from leaves in fog, as the plan says it; beneath trees a gauge in the open
 * misses it. It reaches the ground slowly, so all of it counts.
 *
 * @param months depths on the ground, January to December
 */
public record Fog(List<Length> months, Source source) {
  /** Said by {@code fogDrip}. */
  public static final AttributeKey<Fog> KEY = new AttributeKey<>("water.fog", Fog.class);

  public Fog {
    months = List.copyOf(months);
  }

  /** That of the plan, if it has any. */
  public static Optional<Entry<Fog>> of(Plan plan) {
    return plan.said(KEY);
  }

  /** The effective rain of a month with it. */
  static Derived<Length> with(Entry<Fog> fog, int month, Derived<Length> rain) {
    Length drip = fog.value().months().get(month);
    return Derived.by("effective rain + fog drip", fog.value().source())
        .from("effective rain", rain)
        .from("fog drip", drip, fog.place())
        .gives(rain.value().plus(drip));
  }
}
