package yardloom.facts.mulch;

import java.util.List;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Volume;

/**
 * What all surfaces take together, exact; nothing where there is none.
 *
 * @param ground all surfaces
 * @param beds surfaces of beds
 * @param sheeted surfaces with cardboard
 * @param sheets pieces of cardboard
 * @param lifts compost and chips by the phase in which they are laid, in the order of the phases;
 *     together they are the compost and the chips
 */
public record MulchTotals(
    Derived<Area> ground,
    Derived<Area> beds,
    Derived<Area> sheeted,
    Derived<Integer> sheets,
    Derived<Volume> compost,
    Derived<Volume> chips,
    List<Lift> lifts) {
  public MulchTotals {
    lifts = List.copyOf(lifts);
  }

  /** What all surfaces take of one material in one phase; more than nothing. */
  public record Lift(Material material, WorkPhase phase, Derived<Volume> volume) {}
}
