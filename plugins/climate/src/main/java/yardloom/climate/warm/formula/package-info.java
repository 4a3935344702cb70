/**
 * Days on which the mean passes a limit. Start with {@link
 * yardloom.climate.warm.formula.WarmMonths}.
 */
package yardloom.climate.warm.formula;
