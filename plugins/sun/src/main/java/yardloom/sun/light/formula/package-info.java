/**
 * How much photosynthetic light do direct sun and the seen part of the sky bring in a day? Start
 * with {@link yardloom.sun.light.formula.LightOfDays}.
 */
package yardloom.sun.light.formula;
