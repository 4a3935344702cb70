package yardloom.facts.work;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;

/**
 * Something to do.
 *
 * @param amount how much of it, a quantity or a count that the task's rate is for; nothing of it is
 *     no work
 * @param of the element it is for, where it is for one
 */
public record Job(WorkTask task, WorkPhase phase, Derived<?> amount, Optional<ElementId> of) {
  /** For the whole yard. */
  public Job(WorkTask task, WorkPhase phase, Derived<?> amount) {
    this(task, phase, amount, Optional.empty());
  }
}
