/**
 * Water in the root zone, day by day, after FAO-56. Start with {@link
 * yardloom.water.soilwater.formula.RootZone}.
 */
package yardloom.water.soilwater.formula;
