package yardloom.facts.work;

import yardloom.kernel.fact.Derived;

/**
 * Something to do.
 *
 * @param amount how much of it, a quantity or a count that the task's rate is for; nothing of it is
 *     no work
 */
public record Job(WorkTask task, WorkPhase phase, Derived<?> amount) {}
