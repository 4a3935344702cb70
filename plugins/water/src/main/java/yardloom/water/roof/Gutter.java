package yardloom.water.roof;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.water.roof.formula.GutterFlow;

/**
 * A half-round gutter along a roof.
 *
 * @param roof that it drains, by name
 * @param fall rise over run
 */
public record Gutter(String roof, Length width, double fall) {
  /** The gutters of the plan. */
  public static final AttributeKey<Gutter> KEY = new AttributeKey<>("water.gutter", Gutter.class);

  static final Source RULE =
      Source.memory(
          "International Plumbing Code, semicircular roof gutters",
          "International Code Council",
          2012,
          "table 1106.6");

  /** That of a roof; a plan's own goes before that of a region it includes. */
  static Optional<Entry<Gutter>> of(Plan plan, Element.Roof roof) {
    return plan.attributes().all(KEY).stream()
        .filter(e -> e.value().roof().equals(roof.id().name()))
        .reduce((earlier, later) -> later);
  }

  /** What runs along a gutter to one downspout: the whole roof where the plan names none. */
  static Derived<Area> share(Plan plan, Element.Roof roof) {
    int downspouts =
        (int)
            plan.attributes().all(Downspout.KEY).stream()
                .filter(e -> e.value().roof().equals(roof.id().name()))
                .count();
    int shared = Math.max(1, downspouts);
    return Derived.by("plan area / downspouts, one at least", Downspout.RULE)
        .from("plan area", roof.shape().area(), roof.place())
        .from("downspouts, one at least", shared)
        .gives(roof.shape().area().div(shared));
  }

  /** The roof that it drains to one downspout. */
  Area drained(Length rainPerHour) {
    return GutterFlow.drained(width, fall, rainPerHour);
  }
}
