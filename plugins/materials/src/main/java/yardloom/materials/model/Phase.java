package yardloom.materials.model;

import java.util.List;

/**
 * A step of the work.
 *
 * @param after ids of the phases that must be done before
 * @param leastDays days it takes even without work, such as waiting for the utility marks
 * @param groups groups of the bill that are needed in it
 * @param steps what the crew does, one sentence each; small lengths stand as {@code {4 in}}
 * @param tools what the crew brings
 * @param cautions what can hurt someone, one sentence each
 */
public record Phase(
    String id,
    String title,
    List<String> after,
    int leastDays,
    List<String> groups,
    List<String> steps,
    List<String> tools,
    List<String> cautions) {
  public Phase {
    after = List.copyOf(after);
    groups = List.copyOf(groups);
    steps = List.copyOf(steps);
    tools = List.copyOf(tools);
    cautions = List.copyOf(cautions);
  }
}
