/**
 * Immutable records of the materials plugin and the keys it hangs on plans. Start with {@link
 * yardloom.facts.mulch.Surface}: ground that receives a stack of layers.
 */
package yardloom.materials.model;
