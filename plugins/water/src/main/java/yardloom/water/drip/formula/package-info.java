/**
 * Rows in an outline, depth of an hour, and how even outlets are. Start with {@link
 * yardloom.water.drip.formula.DripLayout}.
 */
package yardloom.water.drip.formula;
