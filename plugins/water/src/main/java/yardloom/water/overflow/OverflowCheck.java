package yardloom.water.overflow;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;

/** Finds rain gardens for roofs that the plan does not have. */
public final class OverflowCheck implements Check {
  private static final Source NAMED = Source.commonPractice("a rain garden drains a roof");

  @Override
  public String id() {
    return "water.rain-garden";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  /** The roof that a garden names. */
  static Optional<Element.Roof> roof(Plan plan, OverflowGarden garden) {
    return plan.all(Element.Roof.class).stream()
        .filter(r -> r.id().name().equals(garden.roof()))
        .findFirst();
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return plan.attributes().all(OverflowGarden.KEY).stream()
        .filter(e -> roof(plan, e.value()).isEmpty())
        .map(e -> unknown(plan, e))
        .toList();
  }

  private Finding unknown(Plan plan, Entry<OverflowGarden> entry) {
    String name = entry.value().roof();
    List<String> roofs = plan.all(Element.Roof.class).stream().map(r -> r.id().name()).toList();
    return Finding.of(
            id(),
            Severity.WARNING,
            "there is no roof '" + name + "' for the rain garden, so it is not sized",
            roofs.isEmpty()
                ? "give the roof: roof('" + name + "', house.shape, surface: 'metal')"
                : "name one of " + String.join(", ", roofs) + "." + Nearest.hint(name, roofs),
            NAMED)
        .at(entry.place());
  }
}
