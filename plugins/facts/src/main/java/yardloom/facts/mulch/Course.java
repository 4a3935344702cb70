package yardloom.facts.mulch;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * One layer of a stack over one surface.
 *
 * @param depth the depth as laid, away from tapered edges
 * @param volume the exact volume in place, without allowance
 */
public record Course(Material material, Derived<Length> depth, Derived<Volume> volume) {}
