package yardloom.materials.model;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Volume;

/**
 * Compost in the pockets through which perennials are planted.
 *
 * @param plants plants in perennial beds
 */
public record Pockets(Derived<Integer> plants, Derived<Volume> compost) {}
