package yardloom.work.phase;

import java.util.List;
import yardloom.facts.work.WorkPhase;

/**
 * A step of the work.
 *
 * @param after phases that must be done before
 * @param leastDays days it takes even without work, such as waiting for the utility marks
 * @param steps what the crew does, one sentence each; small lengths stand as {@code {4 in}}
 * @param tools what the crew brings
 * @param cautions what can hurt someone, one sentence each
 */
public record Phase(
    WorkPhase id,
    List<WorkPhase> after,
    int leastDays,
    List<String> steps,
    List<String> tools,
    List<String> cautions) {
  public Phase {
    after = List.copyOf(after);
    steps = List.copyOf(steps);
    tools = List.copyOf(tools);
    cautions = List.copyOf(cautions);
  }

  /** How tables and sheets call it. */
  public String title() {
    return id.title();
  }

  /** The same waiting for {@code others}. */
  public Phase after(List<WorkPhase> others) {
    return new Phase(id, others, leastDays, steps, tools, cautions);
  }
}
