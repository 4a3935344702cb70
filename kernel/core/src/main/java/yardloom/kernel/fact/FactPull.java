package yardloom.kernel.fact;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;

/**
 * Facts of a plan that are worked out when somebody wants them. Each is what running everything
 * gives; begin with {@link FactGraph#pull}.
 */
public final class FactPull {
  private final FactGraph graph;
  private final Plan plan;
  private final Again again;
  private final Results results;
  private final Set<String> done = new HashSet<>();

  FactPull(FactGraph graph, Plan plan, Again again) {
    this.graph = graph;
    this.plan = plan;
    this.again = again;
    results = graph.facts();
    again.over(plan, results);
  }

  /** The facts so far. */
  public Results results() {
    return results;
  }

  /** Lets those work who give {@code facts}, and before them whom they wait for, each once. */
  public void pull(Collection<? extends FactKey<?>> facts) {
    List<Calculator> needed =
        graph.neededFor(facts).stream().filter(c -> done.add(c.id())).toList();
    if (!needed.isEmpty()) {
      FactGraph.run(plan, again, results, needed, Hands.ONE);
    }
  }
}
