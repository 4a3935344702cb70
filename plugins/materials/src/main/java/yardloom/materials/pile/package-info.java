/**
 * Where trucks tip, how large the heap is, and what stands in its way. Start with {@link
 * yardloom.materials.pile.PileCalculator}.
 */
package yardloom.materials.pile;
