package yardloom.facts;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;

/**
 * Where mulch meets lawn that stays, and an edge is cut or held.
 *
 * @param length of the whole edge
 */
public record LawnEdge(Derived<Length> length) {}
