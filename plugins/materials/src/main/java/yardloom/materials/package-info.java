/**
 * Materials, soil and the work: what to gather, what to buy, what it weighs, who moves it, in which
 * order. Start with {@link yardloom.materials.MaterialsPlugin}.
 *
 * <p>Quantities are exact until a line of the bill says what is sold; facts stay in SI.
 */
package yardloom.materials;
