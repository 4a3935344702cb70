package yardloom.planting.placing;

import yardloom.kernel.unit.Length;

/**
 * A kind of a bed that is planted densely and thinned later.
 *
 * @param to the distance of those that stay, both ways
 * @param season of the garden before which the others go
 */
public record Thinned(String plant, Length to, int season) {}
