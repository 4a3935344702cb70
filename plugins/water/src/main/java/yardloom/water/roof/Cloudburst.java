package yardloom.water.roof;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * The rain that gutters and downspouts must carry.
 *
 * @param perHour depth of rain in an hour of it
 * @param source who says so
 */
public record Cloudburst(Length perHour, Source source) {
  /** The cloudburst of the yard. */
  public static final AttributeKey<Cloudburst> KEY =
      new AttributeKey<>("water.cloudburst", Cloudburst.class);

  private static final Source RULE =
      Source.commonPractice(
          "no local rain is given; 12 in/h, at which a square inch of downspout drains 100 square"
              + " feet");
  private static final Length OF_THE_RULE = Length.inches(12);

  /** That of the plan, or the hard one that the trade's rule is made for. */
  static Derived<Length> of(Plan plan) {
    return plan.said(KEY)
        .map(Cloudburst::given)
        .orElseGet(() -> Derived.by("of the trade rule", RULE).gives(OF_THE_RULE));
  }

  private static Derived<Length> given(Entry<Cloudburst> entry) {
    return Derived.by("cloudburst", entry.value().source())
        .from("cloudburst", entry.value().perHour(), entry.place())
        .gives(entry.value().perHour());
  }
}
