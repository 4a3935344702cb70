package yardloom.work.labour;

import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.TimeSpan;

/**
 * The work of one task.
 *
 * @param phase the phase it belongs to
 * @param amount what is worked, a quantity or a count
 * @param low hours of one person if all goes well
 */
public record TaskLoad(
    String task,
    WorkPhase phase,
    Derived<?> amount,
    Derived<TimeSpan> low,
    Derived<TimeSpan> likely,
    Derived<TimeSpan> high) {
  /** Hours by task. */
  public static final FactKey<TaskLoad> FACT =
      FactKey.many("materials.tasks", TaskLoad.class).called("tasks");
}
