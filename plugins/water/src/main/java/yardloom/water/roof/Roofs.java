package yardloom.water.roof;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** The roofs of a plan by the names that words for their water use. */
public final class Roofs {
  private Roofs() {}

  /** Empty if the plan has no roof of that name. */
  public static Optional<Element.Roof> called(Plan plan, String name) {
    return plan.all(Element.Roof.class).stream()
        .filter(r -> r.id().name().equals(name))
        .findFirst();
  }

  /** In the order of the plan. */
  public static List<String> names(Plan plan) {
    return plan.all(Element.Roof.class).stream().map(r -> r.id().name()).toList();
  }
}
