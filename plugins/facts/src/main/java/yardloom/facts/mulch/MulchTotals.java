package yardloom.facts.mulch;

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
 */
public record MulchTotals(
    Derived<Area> ground,
    Derived<Area> beds,
    Derived<Area> sheeted,
    Derived<Integer> sheets,
    Derived<Volume> compost,
    Derived<Volume> chips) {}
