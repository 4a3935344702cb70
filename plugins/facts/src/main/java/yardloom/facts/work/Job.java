package yardloom.facts.work;

import java.util.Optional;
import yardloom.facts.region.Spread;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;

/**
 * Something to do.
 *
 * @param amount how much of it, a quantity or a count that the task's rate is for; nothing of it is
 *     no work
 * @param of the element it is for, where it is for one
 * @param pace a rate of its own, such as by size; empty where the task's holds
 * @param plant the kind that it plants, by its catalogue name, where it plants one
 */
public record Job(
    WorkTask task,
    WorkPhase phase,
    Derived<?> amount,
    Optional<ElementId> of,
    Optional<Pace> pace,
    Optional<String> plant) {
  /**
   * How long a part of the task takes that has a rate of its own.
   *
   * @param of the part, as tables call it after the task
   * @param hours of one person for one piece
   */
  public record Pace(String of, Spread hours) {}

  /** Nothing is planted. */
  public Job(
      WorkTask task,
      WorkPhase phase,
      Derived<?> amount,
      Optional<ElementId> of,
      Optional<Pace> pace) {
    this(task, phase, amount, of, pace, Optional.empty());
  }

  /** For the whole yard, at the task's rate. */
  public Job(WorkTask task, WorkPhase phase, Derived<?> amount) {
    this(task, phase, amount, Optional.empty(), Optional.empty());
  }

  /** How tables call it: the task, and the part of it that has a rate of its own. */
  public String title() {
    return task.title() + pace.map(p -> ": " + p.of()).orElse("");
  }
}
