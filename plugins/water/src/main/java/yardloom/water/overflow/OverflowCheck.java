package yardloom.water.overflow;

import java.util.List;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;
import yardloom.water.roof.Roofs;

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

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return plan.attributes().all(OverflowGarden.KEY).stream()
        .filter(e -> Roofs.called(plan, e.value().roof()).isEmpty())
        .map(e -> unknown(plan, e))
        .toList();
  }

  private Finding unknown(Plan plan, Entry<OverflowGarden> entry) {
    String name = entry.value().roof();
    List<String> roofs = Roofs.names(plan);
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
