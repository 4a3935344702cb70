package yardloom.work.labour;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.TimeSpan;

/**
 * The work of one task.
 *
 * @param own the name of a task of the plan's own, or of a part of a task that has its own rate
 * @param phase the phase it belongs to
 * @param amount what is worked, a quantity or a count
 * @param low hours of one person if all goes well
 */
public record TaskLoad(
    WorkTask task,
    Optional<String> own,
    WorkPhase phase,
    Derived<?> amount,
    Derived<TimeSpan> low,
    Derived<TimeSpan> likely,
    Derived<TimeSpan> high) {
  /** Hours by task. */
  public static final FactKey<TaskLoad> FACT =
      FactKey.many("work.tasks", TaskLoad.class).called("tasks").byPart();

  /** How tables call it. */
  public String title() {
    return own.orElse(task.title());
  }

  /** Hours of several tasks together. */
  public record Sum(TimeSpan low, TimeSpan likely, TimeSpan high) {}

  /** The hours of all {@code tasks}; none give none. */
  public static Sum sum(List<TaskLoad> tasks) {
    return new Sum(
        sum(tasks, TaskLoad::low), sum(tasks, TaskLoad::likely), sum(tasks, TaskLoad::high));
  }

  private static TimeSpan sum(List<TaskLoad> tasks, Function<TaskLoad, Derived<TimeSpan>> of) {
    return tasks.stream().map(t -> of.apply(t).value()).reduce(TimeSpan.ZERO, TimeSpan::plus);
  }
}
