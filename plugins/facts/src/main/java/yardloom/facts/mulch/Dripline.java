package yardloom.facts.mulch;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Length;

/**
 * Dripline in one bed, a layer of its stack.
 *
 * @param length of all its tubes together
 */
public record Dripline(ElementId in, Derived<Length> length) {}
