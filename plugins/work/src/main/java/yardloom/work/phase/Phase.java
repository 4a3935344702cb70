package yardloom.work.phase;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.plan.Plan;

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
  private static final String IN_PLAN = "plan:";
  private static final String NOT_IN_PLAN = "no:";
  private static final String FOLLOWS = "after:";
  private static final String PLANTED_IN = "in:";

  public Phase {
    after = List.copyOf(after);
    steps = List.copyOf(steps);
    tools = List.copyOf(tools);
    cautions = List.copyOf(cautions);
  }

  /** How tables and sheets of a plan call it. */
  public String title(Plan plan) {
    return id.title(plan);
  }

  /**
   * The same with those texts only that hold where {@code tasks} are done: one that begins with
   * names of tasks, as in {@code [set_posts;hang_gate] Bring …}, where any of them is. {@code
   * plan:} before a task asks for it in any phase of the plan, {@code no:} that it is in none, and
   * {@code after:} before a phase that this one waits for it. {@code in:} asks for some place of a
   * plant in such {@code ground}. What stands with a plus between must all hold.
   */
  Phase doing(Set<WorkTask> tasks, Set<WorkTask> ofPlan, Set<PlantedGround> ground) {
    return new Phase(
        id,
        after,
        leastDays,
        holding(steps, tasks, ofPlan, ground),
        holding(tools, tasks, ofPlan, ground),
        holding(cautions, tasks, ofPlan, ground));
  }

  private List<String> holding(
      List<String> texts, Set<WorkTask> tasks, Set<WorkTask> ofPlan, Set<PlantedGround> ground) {
    List<String> held = new ArrayList<>();
    for (String text : texts) {
      int end = text.startsWith("[") ? text.indexOf(']') : -1;
      boolean holds =
          end < 0
              || Arrays.stream(text.substring(1, end).split(";"))
                  .anyMatch(
                      all ->
                          Arrays.stream(all.split("\\+"))
                              .allMatch(name -> holds(name, tasks, ofPlan, ground)));
      if (holds) {
        held.add(text.substring(end + 1).strip());
      }
    }
    return held;
  }

  private boolean holds(
      String name, Set<WorkTask> tasks, Set<WorkTask> ofPlan, Set<PlantedGround> ground) {
    if (name.startsWith(PLANTED_IN)) {
      return ground.contains(
          PlantedGround.valueOf(name.substring(PLANTED_IN.length()).toUpperCase(Locale.ROOT)));
    }
    if (name.startsWith(FOLLOWS)) {
      return after.contains(
          WorkPhase.valueOf(name.substring(FOLLOWS.length()).toUpperCase(Locale.ROOT)));
    }
    if (name.startsWith(IN_PLAN)) {
      return ofPlan.contains(task(name.substring(IN_PLAN.length())));
    }
    return name.startsWith(NOT_IN_PLAN)
        ? !ofPlan.contains(task(name.substring(NOT_IN_PLAN.length())))
        : tasks.contains(task(name));
  }

  private static WorkTask task(String name) {
    return WorkTask.valueOf(name.toUpperCase(Locale.ROOT));
  }

  /** The same that takes {@code days} at least. */
  public Phase atLeast(int days) {
    return new Phase(id, after, Math.max(leastDays, days), steps, tools, cautions);
  }

  /** The same waiting for {@code others}. */
  public Phase after(List<WorkPhase> others) {
    return new Phase(id, others, leastDays, steps, tools, cautions);
  }
}
