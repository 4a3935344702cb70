/**
 * The year of a turf, and which climates are dry. Start with {@link
 * yardloom.water.lawn.formula.TurfYear}.
 */
package yardloom.water.lawn.formula;
