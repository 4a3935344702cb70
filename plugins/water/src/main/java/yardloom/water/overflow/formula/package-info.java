/**
 * Runoff of a storm by curve number, and a planted hollow that takes it in. Unit types at the
 * boundary. Start with {@link yardloom.water.overflow.formula.RainGarden}.
 */
package yardloom.water.overflow.formula;
