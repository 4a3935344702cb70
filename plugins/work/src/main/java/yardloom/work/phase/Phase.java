package yardloom.work.phase;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;

/**
 * A step of the work.
 *
 * @param after phases that must be done before
 * @param leastDays days it takes even without work, such as waiting for the utility marks
 * @param steps what the crew does, one sentence each; small lengths stand as {@code {4 in}}, and
 *     tasks that a text is for in front, see {@link #doing}
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

  /**
   * The same with those texts only that hold where {@code tasks} are done: one that begins with
   * names of tasks, as in {@code [set_posts;hang_gate] Bring …}, where any of them is.
   */
  public Phase doing(Set<WorkTask> tasks) {
    return new Phase(
        id,
        after,
        leastDays,
        holding(steps, tasks),
        holding(tools, tasks),
        holding(cautions, tasks));
  }

  private static List<String> holding(List<String> texts, Set<WorkTask> tasks) {
    List<String> held = new ArrayList<>();
    for (String text : texts) {
      int end = text.startsWith("[") ? text.indexOf(']') : -1;
      boolean holds =
          end < 0
              || Arrays.stream(text.substring(1, end).split(";"))
                  .map(name -> WorkTask.valueOf(name.toUpperCase(Locale.ROOT)))
                  .anyMatch(tasks::contains);
      if (holds) {
        held.add(text.substring(end + 1).strip());
      }
    }
    return held;
  }

  /** The same waiting for {@code others}. */
  public Phase after(List<WorkPhase> others) {
    return new Phase(id, others, leastDays, steps, tools, cautions);
  }
}
