package yardloom.facts.mulch;

import yardloom.facts.region.Spread;

/**
 * What a bulk material weighs, as delivered.
 *
 * @param poundsPerCubicYard more than nothing
 */
public record BulkDensity(Material material, Spread poundsPerCubicYard) {}
